import { Button } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { type FitChoice, isSameQuestion, type JobCheck, readFirmFile } from "../../../job";
import { fittedSheets, withChoice } from "../../model/fit-view";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { FirmSection } from "./firm-section";
import { SheetSection } from "./sheet-section";

/** How the workbook was read, and its correction: the workbook keeps each answer and is read again. */
export function FitScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { session, state } = useSession();
  const picker = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState("");
  const { job } = check;
  const { choices } = job.fit;
  const busy = state.busy !== "";
  const save = (answers: readonly FitChoice[]) => void session.saveFit(answers);
  const take = async (file: File) => {
    try {
      const taken = readFirmFile(await file.text());
      setProblem("");
      save([
        ...choices,
        ...taken.filter((each) => !choices.some((own) => isSameQuestion(own, each))),
      ]);
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
        <Button size="small" disabledFocusable={busy} onClick={() => picker.current?.click()}>
          Use a firm's file
        </Button>
      </div>
      <input
        ref={picker}
        type="file"
        accept=".json"
        hidden
        aria-label="Firm's file"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file) void take(file);
          target.value = "";
        }}
      />
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
