import { Button } from "@fluentui/react-components";
import { DocumentSearch20Regular } from "@fluentui/react-icons";
import { useRef } from "react";
import type { JobCheck } from "../../../job";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { compareAgain, compareWithFile } from "../../session/record-work";
import { ChangeList } from "./change-list";

/** What is otherwise in the open workbook than in an older file. */
export function ComparePanel({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { session, state } = useSession();
  const picker = useRef<HTMLInputElement>(null);
  const { comparison } = state.record;
  const busy = state.busy !== "";
  return (
    <section className={shared.panel}>
      <h3 className={shared.subheading}>Compare with an older file</h3>
      <p className={shared.text}>
        Lists what was typed, computed and found otherwise since. The file is read here and goes
        nowhere.
      </p>
      <div className={shared.line}>
        <Button
          icon={<DocumentSearch20Regular />}
          disabledFocusable={busy}
          onClick={() => picker.current?.click()}
        >
          Choose an older file
        </Button>
      </div>
      <input
        ref={picker}
        type="file"
        accept=".xlsx"
        hidden
        aria-label="Older file"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file) void compareWithFile(session, file);
          target.value = "";
        }}
      />
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
    </section>
  );
}
