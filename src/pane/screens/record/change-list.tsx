import { Button, makeStyles, mergeClasses, ToggleButton, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { codeKinds, codesExplained, provenanceOf } from "../../../job";
import { count } from "../../model/announce";
import {
  type ChangeSort,
  type ChangeView,
  changeSorts,
  countSorts,
  firstChanges,
  groupChanges,
} from "../../model/changes-view";
import { GoItem } from "../../parts/go-item";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import type { Comparison } from "../../session/record-state";

const useStyles = makeStyles({
  sorts: {
    display: "flex",
    flexWrap: "wrap",
    gap: tokens.spacingHorizontalXS,
  },
  sort: { minWidth: 0, paddingLeft: "6px", paddingRight: "6px", whiteSpace: "nowrap" },
  pair: {
    display: "grid",
    gridTemplateColumns: "auto minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalS,
    margin: 0,
    "& dt": { color: tokens.colorNeutralForeground2 },
    "& dd": { margin: 0, overflowWrap: "anywhere" },
  },
});

const page = 60;

/** Which of the three codes differ, and what a code stands for. */
function codesCompared({ codes: old, check }: Comparison): string {
  const now = provenanceOf(check.job).codes;
  const told = codeKinds.map((kind) =>
    old[kind] === now[kind]
      ? `${kind} ${now[kind]} as before`
      : `${kind} ${old[kind]}, now ${now[kind]}`,
  );
  return `Codes: ${told.join("; ")}. ${codesExplained}`;
}

/** The changes since an older file, by sheet and row. */
export function ChangeList({ comparison }: { comparison: Comparison }) {
  const styles = useStyles();
  const shared = useShared();
  const { session } = useSession();
  const [chosen, setChosen] = useState<readonly ChangeSort[]>([]);
  const [most, setMost] = useState(page);
  const { changes, fileName, check } = comparison;
  const counts = useMemo(() => countSorts(changes), [changes]);
  const groups = useMemo(
    () => groupChanges(changes, check.job, chosen),
    [changes, check.job, chosen],
  );
  const shown = groups.reduce((sum, group) => sum + group.changes.length, 0);
  const codes = useMemo(() => codesCompared(comparison), [comparison]);
  if (changes.length === 0)
    return (
      <div className={shared.stack}>
        <p className={shared.text}>Nothing differs from {fileName}.</p>
        <p className={shared.muted}>{codes}</p>
      </div>
    );
  const toggle = (sort: ChangeSort) => {
    setMost(page);
    setChosen(chosen.includes(sort) ? chosen.filter((entry) => entry !== sort) : [...chosen, sort]);
  };
  return (
    <div className={shared.stack}>
      <p className={shared.text}>
        {count(changes.length, "change")} since {fileName}
      </p>
      <p className={shared.muted}>{codes}</p>
      <fieldset className={mergeClasses(shared.bare, styles.sorts)} aria-label="Show only">
        {changeSorts
          .filter((sort) => counts[sort] > 0)
          .map((sort) => (
            <ToggleButton
              key={sort}
              size="small"
              className={mergeClasses(styles.sort, chosen.includes(sort) && shared.pressed)}
              checked={chosen.includes(sort)}
              onClick={() => toggle(sort)}
            >
              {counts[sort]} {sort}
            </ToggleButton>
          ))}
      </fieldset>
      {firstChanges(groups, most).map((group) => (
        <section key={group.key} className={shared.group}>
          <div className={shared.groupHead}>
            <h4 className={shared.subheading}>{group.title}</h4>
            <span className={shared.muted}>{group.place}</span>
          </div>
          <ul className={shared.plainList}>
            {group.changes.map((change) => (
              <GoItem
                key={change.key}
                title={change.title}
                place={change.cell}
                onGo={
                  change.cell === ""
                    ? undefined
                    : () => void session.goTo(change.sheet, change.cell)
                }
              >
                <WasAndIs change={change} />
              </GoItem>
            ))}
          </ul>
        </section>
      ))}
      {shown > most ? (
        <Button onClick={() => setMost(most + page)}>Show more ({shown - most} not shown)</Button>
      ) : null}
    </div>
  );
}

/** What stood there and what stands there, or what a finding says. */
function WasAndIs({ change }: { change: ChangeView }) {
  const styles = useStyles();
  const shared = useShared();
  const { before, after, note } = change;
  return (
    <>
      {before !== "" && after !== "" ? (
        <dl className={styles.pair}>
          <dt>was</dt>
          <dd>{before}</dd>
          <dt>is</dt>
          <dd>{after}</dd>
        </dl>
      ) : before + after === "" ? null : (
        <p className={shared.text}>{before + after}</p>
      )}
      {note === "" ? null : <p className={shared.muted}>{note}</p>}
    </>
  );
}
