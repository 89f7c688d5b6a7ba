import { Button, makeStyles, mergeClasses } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import type { Finding } from "../../../job";
import { acceptedBy } from "../../model/acceptance";
import { findingKey, placeOf, titleOf } from "../../model/finding-groups";
import { GoItem, useAbove } from "../../parts/go-item";
import { useSession } from "../../parts/session-context";
import { SeverityIcon } from "../../parts/severity-icon";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  take: { alignSelf: "start" },
});

const page = 30;

/** The findings that someone took as they are, each with why, who, when and the way back. */
export function AcceptedFold({ findings, all }: { findings: readonly Finding[]; all: number }) {
  const styles = useStyles();
  const shared = useShared();
  const { above } = useAbove();
  const { session, state } = useSession();
  const [most, setMost] = useState(page);
  const summary = useRef<HTMLElement>(null);
  const took = useRef(false);
  // A finding that was taken back goes away with the focus on it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks again whenever findings change
  useEffect(() => {
    if (!took.current) return;
    took.current = false;
    if (document.activeElement === document.body) summary.current?.focus();
  }, [findings]);
  if (all === 0) return null;
  const { dateOffset = 0 } = state.check?.job.file ?? {};
  const left = findings.length - most;
  return (
    <details>
      <summary ref={summary} className={shared.summary}>
        {all} accepted
      </summary>
      {findings.length === 0 ? (
        <p className={shared.muted}>None of them fits this search.</p>
      ) : null}
      <ul className={shared.plainList}>
        {findings.slice(0, most).map((finding) => (
          <GoItem
            key={findingKey(finding)}
            title={titleOf(finding)}
            place={placeOf(finding)}
            icon={<SeverityIcon severity={finding.severity} said />}
            onGo={() => void session.goTo(finding.sheet, finding.cell)}
            actions={
              <Button
                size="small"
                className={mergeClasses(above, styles.take)}
                disabledFocusable={state.busy !== ""}
                aria-label={`Take back, ${placeOf(finding)}`}
                onClick={() => {
                  took.current = true;
                  void session.withdraw(finding);
                }}
              >
                Take back
              </Button>
            }
          >
            <p className={shared.text}>
              {finding.about === "" ? "" : `${finding.about}: `}
              {finding.what}
            </p>
            {finding.accepted ? (
              <p className={shared.text}>
                Accepted by {acceptedBy(finding.accepted, dateOffset)}: {finding.accepted.reason}
              </p>
            ) : null}
          </GoItem>
        ))}
      </ul>
      {left > 0 ? (
        <Button onClick={() => setMost(most + page)}>Show more ({left} not shown)</Button>
      ) : null}
    </details>
  );
}
