import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { JobCheck } from "../../../job";
import { count } from "../../model/announce";
import { type FitDraft, ownUnitOf, withDraft } from "../../model/fit-draft";
import { fittedSheets, withChoice } from "../../model/fit-view";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { FirmSection } from "./firm-section";
import { OtherSheet } from "./other-sheet";
import { SheetSection } from "./sheet-section";

const useStyles = makeStyles({
  bar: {
    position: "sticky",
    bottom: 0,
    padding: `${tokens.spacingVerticalS} 0`,
    backgroundColor: tokens.colorNeutralBackground1,
    borderTop: `1px solid ${tokens.colorNeutralStroke1}`,
  },
});

/** Which heading stands for which field, and its correction. */
export function FitScreen({ check }: { check: JobCheck }) {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const [draft, setDraft] = useState<FitDraft>([]);
  const { job } = check;
  const ownUnit = ownUnitOf(job.settings.system);

  const choose = (sheet: string, heading: string, field: string) =>
    setDraft(withChoice(draft, sheet, heading, field));
  const save = async () => {
    const all = draft.reduce(
      (kept, { sheet, heading, field }) => withChoice(kept, sheet, heading, field),
      [...job.fit.choices],
    );
    await session.saveFit(all);
    if (session.state.problem === "") setDraft([]);
  };
  return (
    <div className={shared.screen}>
      <p className={shared.text}>
        What each heading was taken for. Correct it where it is wrong: the workbook keeps your
        choices on its Fit sheet. Delete a row there to forget one.
      </p>
      <FirmSection job={job} />
      {fittedSheets(job).map((found) => (
        <SheetSection
          key={found.sheet}
          view={withDraft(found, draft, ownUnit)}
          onChoose={(heading, field) => choose(found.sheet, heading, field)}
        />
      ))}
      {job.firm ? null : <OtherSheet job={job} draft={draft} onChoose={choose} />}
      {draft.length > 0 ? (
        <div className={`${styles.bar} ${shared.spread}`}>
          <span>{count(draft.length, "change")} not saved</span>
          <span className={shared.line}>
            <Button onClick={() => setDraft([])}>Discard</Button>
            <Button
              appearance="primary"
              disabledFocusable={state.busy !== ""}
              onClick={() => void save()}
            >
              Save and check
            </Button>
          </span>
        </div>
      ) : null}
    </div>
  );
}
