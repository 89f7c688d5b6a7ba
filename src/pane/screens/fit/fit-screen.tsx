import { useState } from "react";
import { type FitChoice, type JobCheck, readFirmFile, withFirms } from "../../../job";
import { fittedSheets, withChoice } from "../../model/fit-view";
import { FilePicker } from "../../parts/file-picker";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { FirmSection } from "./firm-section";
import { SheetSection } from "./sheet-section";

/** How the workbook was read, and its correction: the workbook keeps each answer and is read again. */
export function FitScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { session, state } = useSession();
  const [problem, setProblem] = useState("");
  const { job } = check;
  const { choices } = job.fit;
  const busy = state.busy !== "";
  const save = (answers: readonly FitChoice[]) => void session.saveFit(answers);
  const take = async (file: File) => {
    try {
      const taken = readFirmFile(await file.text());
      setProblem("");
      save(withFirms(choices, taken));
    } catch (error) {
      setProblem(`${file.name} ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  return (
    <div className={shared.screen}>
      <div className={shared.spread}>
        <span className={shared.text}>
          {job.noFans === ""
            ? "What was taken for what. Correct it where it is wrong."
            : job.noFans}
        </span>
        <FilePicker
          size="small"
          label="Firm's file"
          accept=".json"
          busy={busy}
          onFile={(file) => void take(file)}
        >
          Use a firm's file
        </FilePicker>
      </div>
      {problem === "" ? null : <p role="alert">{problem}</p>}
      <FirmSection job={job} busy={busy} onAnswers={save} />
      {fittedSheets(job).map((found) => (
        <SheetSection
          key={found.sheet}
          view={found}
          busy={busy}
          onChoose={(heading, field) => save(withChoice(choices, found.sheet, heading, field))}
        />
      ))}
    </div>
  );
}
