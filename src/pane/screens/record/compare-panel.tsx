import { Button } from "@fluentui/react-components";
import { DocumentSearch20Regular } from "@fluentui/react-icons";
import type { JobCheck } from "../../../job";
import { FilePicker } from "../../parts/file-picker";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { compareAgain, compareWithFile } from "../../session/record-work";
import { ChangeList } from "./change-list";

/** What is otherwise in the open workbook than in an older file. */
export function ComparePanel({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { session, state } = useSession();
  const { comparison } = state.record;
  const busy = state.busy !== "";
  return (
    <Panel title="Compare with an older file">
      <p className={shared.text}>
        Lists what was typed, computed and found otherwise since. The file is read here and goes
        nowhere.
      </p>
      <div className={shared.line}>
        <FilePicker
          icon={<DocumentSearch20Regular />}
          label="Older file"
          accept=".xlsx"
          busy={busy}
          onFile={(file) => void compareWithFile(session, file)}
        >
          Choose an older file
        </FilePicker>
      </div>
      {comparison ? (
        <>
          {comparison.check === check ? null : (
            <div className={shared.spread}>
              <span>The workbook has changed since.</span>
              <Button
                size="small"
                disabledFocusable={busy}
                onClick={() => void compareAgain(session)}
              >
                Compare again
              </Button>
            </div>
          )}
          <ChangeList comparison={comparison} />
        </>
      ) : null}
    </Panel>
  );
}
