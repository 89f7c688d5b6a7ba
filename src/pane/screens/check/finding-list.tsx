import { Button } from "@fluentui/react-components";
import { type FocusEvent, useEffect, useMemo, useRef } from "react";
import type { Finding } from "../../../job";
import { countOf } from "../../model/announce";
import { findingKey, firstOf, type GroupBy, groupFindings } from "../../model/finding-groups";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { FindingItem, FindingWords } from "./finding-item";

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly by: GroupBy;
  readonly most: number;
  readonly onMore: () => void;
}

/** The findings under their headings, a page at a time. */
export function FindingList({ findings, by, most, onMore }: FindingListProps) {
  const shared = useShared();
  const { session, state } = useSession();
  const list = useRef<HTMLDivElement>(null);
  const focused = useRef(-1);

  const remember = (event: FocusEvent) => {
    const item = event.target.closest("li");
    focused.current = item ? [...(list.current?.querySelectorAll("li") ?? [])].indexOf(item) : -1;
  };
  // A mended finding goes away with the focus on it: the next one takes the focus over.
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks again whenever findings change
  useEffect(() => {
    if (focused.current < 0 || document.activeElement !== document.body) return;
    const buttons = list.current?.querySelectorAll<HTMLElement>("[data-go]") ?? [];
    const next = buttons[Math.min(focused.current, buttons.length - 1)];
    if (next) next.focus();
    else list.current?.focus();
  }, [findings]);

  const groups = useMemo(() => firstOf(groupFindings(findings, by), most), [findings, by, most]);
  const left = findings.length - most;
  const seen = new Map<string, number>();
  const keyOf = (finding: Finding) => {
    const key = findingKey(finding);
    const times = seen.get(key) ?? 0;
    seen.set(key, times + 1);
    return `${key} ${times}`;
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only remembers where the focus was
    <div ref={list} tabIndex={-1} className={shared.stack} onFocus={remember}>
      {groups.map((group) => (
        <section key={group.key} className={shared.group}>
          <div className={shared.groupHead}>
            <h3 className={shared.subheading}>{group.title}</h3>
            <span className={shared.muted}>
              {group.isKind ? countOf(group.worst, group.total) : group.place}
            </span>
          </div>
          {group.shared ? (
            <div className={shared.groupHead}>
              <FindingWords {...group.shared} />
            </div>
          ) : null}
          <ul className={shared.plainList}>
            {group.findings.map((finding) => (
              <FindingItem
                key={keyOf(finding)}
                finding={finding}
                about={group.isKind}
                told={group.shared !== undefined}
                busy={state.busy !== ""}
                dateOffset={state.check?.job.file.dateOffset ?? 0}
                onGo={() => void session.goTo(finding.sheet, finding.cell)}
                onApply={() => void session.apply(finding)}
              />
            ))}
          </ul>
        </section>
      ))}
      {left > 0 ? <Button onClick={onMore}>Show more ({left} not shown)</Button> : null}
    </div>
  );
}
