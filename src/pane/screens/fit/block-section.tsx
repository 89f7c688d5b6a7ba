import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useId } from "react";
import { unitsOfRole, withAnswer } from "../../../job";
import { habitsInWords } from "../../../reading";
import { count } from "../../model/announce";
import {
  type FirmGroup,
  type RoleView,
  roleViews,
  withoutRole,
  withRole,
} from "../../model/firm-view";
import { Choice } from "../../parts/choice";
import { Fold } from "../../parts/fold";
import { useShared } from "../../parts/styles";
import type { AnswerProps } from "./answer-props";
import { BlockPicture } from "./block-picture";

const useStyles = makeStyles({
  row: {
    display: "grid",
    gridTemplateColumns: "minmax(76px, 26%) minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalS,
    alignItems: "center",
  },
  reason: { gridColumn: 2, overflowWrap: "anywhere" },
});

/** What may stand in a select beside the lines. */
const undo = "\u0000as read";
/** The sign that pressures of an exhaust fan have, in the words of the reader's habit. */
const signs = { room: "positive: room against box", box: "negative: box against room" } as const;

interface BlockProps extends AnswerProps {
  readonly group: FirmGroup;
  /** The first of its sheet shows the whole sheet; those after it are opened when asked for. */
  readonly isFirst: boolean;
}

/** One layout of a firm's sheets: which line was taken for what and why, each to be corrected. */
export function BlockSection({ group, isFirst, job, busy, onAnswers }: BlockProps) {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const { block, sheets, readings } = group;
  const { choices } = job.fit;
  const { found, absent } = roleViews(block);
  const choose = (view: RoleView, line: string) =>
    onAnswers(
      line === undo ? withoutRole(choices, block, view) : withRole(choices, block, view, line),
    );
  const say = (field: string, word: string, means: string) =>
    onAnswers(withAnswer(choices, { sheet: "", heading: "", field, word, means }));
  const row = (view: RoleView) => (
    <div key={view.role} className={styles.row}>
      <span>
        {view.role}
        {view.unit ? <span className={shared.muted}> {view.unit}</span> : null}
      </span>
      <Choice
        size="small"
        aria-label={`${view.role} stands in`}
        disabled={busy}
        value={view.line}
        options={[
          { value: "", words: "none" },
          ...(view.isChosen ? [{ value: undo, words: "as Fanrow reads it" }] : []),
          ...view.candidates.map(({ name }) => name),
        ]}
        onChoose={(line) => choose(view, line)}
      />
      <p className={`${shared.muted} ${styles.reason}`}>{view.reason}</p>
    </div>
  );
  const { sign, units: known } = block.habits;
  const unitless = found.filter(({ role }) => !known[role] && unitsOfRole(role).length > 0);
  const names =
    sheets.length > 2 ? `${sheets[0]} and ${sheets.length - 1} more` : sheets.join(", ");
  const title = `${group.name === "" ? names : `${names}, ${group.name}`}: ${count(readings, "reading")}, ${block.layout}`;
  const details = (
    <>
      {unitless.map(({ role }) => (
        <div key={role} className={styles.row}>
          <span>unit of {role}</span>
          <Choice
            size="small"
            aria-label={`unit of ${role}`}
            disabled={busy}
            value=""
            options={[{ value: "", words: "not known" }, ...unitsOfRole(role)]}
            onChoose={(unit) => say(role, "unit", unit)}
          />
        </div>
      ))}
      {found.map(row)}
      {sign ? (
        <div className={styles.row}>
          <span>sign</span>
          <Choice
            size="small"
            aria-label="sign of pressures"
            disabled={busy}
            value={sign.value}
            options={Object.entries(signs).map(([value, words]) => ({ value, words }))}
            onChoose={(means) => say("pressure", "sign", means)}
          />
          <p className={`${shared.muted} ${styles.reason}`}>{sign.because}</p>
        </div>
      ) : null}
      <Fold title="What the sheet keeps to">
        <ul className={shared.plainList}>
          {habitsInWords(block).map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      </Fold>
      {absent.length > 0 ? (
        <Fold title={`Not in a column: ${absent.map(({ role }) => role).join(", ")}`}>
          {absent.map(row)}
        </Fold>
      ) : null}
    </>
  );
  if (!isFirst) return <Fold title={title}>{details}</Fold>;
  return (
    <section className={shared.stack} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        {title}
      </h3>
      <BlockPicture job={job} sheet={block.sheet} />
      {details}
      <div>
        <Button
          size="small"
          appearance="subtle"
          disabledFocusable={busy}
          onClick={() =>
            onAnswers([
              ...choices.filter((each) => !sheets.includes(each.sheet) || each.heading !== ""),
              ...sheets.map((sheet) => ({ sheet, heading: "", field: "" })),
            ])
          }
        >
          No fans here
        </Button>
      </div>
    </section>
  );
}
