import {
  Button,
  Checkbox,
  Field,
  Link,
  MessageBar,
  MessageBarBody,
  makeStyles,
  ProgressBar,
  Select,
  tokens,
} from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { JobCheck } from "../../../job";
import { count } from "../../model/announce";
import {
  admissions,
  paperCount,
  provedBoxes,
  type RecordChoice,
  sheetsOf,
} from "../../model/record-choice";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { writeRecords } from "../../session/record-work";
import { useDwellings } from "./use-dwellings";

const useStyles = makeStyles({
  sheet: { minHeight: "24px", textAlign: "start" },
  select: { minWidth: 0 },
  // As close as its own sign lets it be to what stands above and below.
  check: { marginLeft: "-8px" },
  bar: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
});

/** Writes the records to print and sign, each to a sheet of its own. */
export function WritePanel({ check }: { check: JobCheck }) {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const dwellings = useDwellings(check);
  const boxes = useMemo(() => provedBoxes(check), [check]);
  const [choice, setChoice] = useState<RecordChoice>({
    job: true,
    dwellings: "all",
    proofs: true,
    papers: false,
  });
  const admitted = admissions(check);
  const homes = dwellings?.length ?? 0;
  const papers = paperCount(check);
  const sheets = sheetsOf(choice, { dwellings: homes, proofs: boxes, papers });
  const { progress, busy } = state;
  return (
    <Panel title="Write the records">
      <p className={shared.text}>
        Sheets to print and sign. Those written before are written anew in their place.
      </p>
      {admitted.length > 0 ? (
        <MessageBar intent="warning" layout="multiline" politeness="polite">
          <MessageBarBody className={styles.bar}>
            {admitted.join(" ")} The records will say so.
          </MessageBarBody>
        </MessageBar>
      ) : null}
      <Checkbox
        className={styles.check}
        label="Record of the job"
        checked={choice.job}
        onChange={(_, data) => setChoice({ ...choice, job: data.checked === true })}
      />
      {homes > 0 ? (
        <Field label="Record of a dwelling">
          <Select
            className={styles.select}
            value={dwellingValue(choice)}
            onChange={(_, data) =>
              setChoice({ ...choice, dwellings: dwellingsOf(data.value, dwellings) })
            }
          >
            <option value="all">one for each ({homes})</option>
            <option value="none">none</option>
            {dwellings?.map((name, i) => (
              <option key={name} value={String(i)}>
                {name}
              </option>
            ))}
          </Select>
        </Field>
      ) : null}
      {boxes > 0 ? (
        <Checkbox
          className={styles.check}
          label={`Proof of each box (${boxes})`}
          checked={choice.proofs}
          onChange={(_, data) => setChoice({ ...choice, proofs: data.checked === true })}
        />
      ) : null}
      {papers > 0 ? (
        <Checkbox
          className={styles.check}
          label={`To take along: card of each box, form for the readings (${papers})`}
          checked={choice.papers}
          onChange={(_, data) => setChoice({ ...choice, papers: data.checked === true })}
        />
      ) : null}
      <div>
        <Button
          appearance="primary"
          disabledFocusable={busy !== "" || dwellings === undefined || sheets === 0}
          onClick={() => void writeRecords(session, choice)}
        >
          Write {count(sheets, "sheet")}
        </Button>
      </div>
      {busy === "Writing" && progress ? (
        <div className={shared.tight}>
          <ProgressBar aria-label="Writing" value={progress.done} max={progress.total} />
          <span className={shared.muted}>
            {progress.done} of {progress.total} sheets written
          </span>
        </div>
      ) : null}
      <Written />
    </Panel>
  );

  function dwellingValue({ dwellings: chosen }: RecordChoice): string {
    if (chosen === "all" || chosen === "none") return chosen;
    const at = dwellings?.indexOf(chosen.name) ?? -1;
    return at < 0 ? "all" : String(at);
  }
}

function dwellingsOf(
  value: string,
  names: readonly string[] | undefined,
): RecordChoice["dwellings"] {
  if (value === "all" || value === "none") return value;
  const name = names?.[Number(value)];
  return name === undefined ? "all" : { name };
}

/** The sheets that were written last, each with the way to it. */
function Written() {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const { written } = state.record;
  if (written.length === 0) return null;
  return (
    <details open={written.length <= 4}>
      <summary className={shared.summary}>{count(written.length, "sheet")} written</summary>
      <ul className={shared.plainList}>
        {written.map((name) => (
          <li key={name}>
            <Link
              as="button"
              className={styles.sheet}
              onClick={() => void session.goTo(name, "A1")}
            >
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </details>
  );
}
