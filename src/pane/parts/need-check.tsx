import { Button } from "@fluentui/react-components";
import type { ReactNode } from "react";
import type { JobCheck } from "../../job";
import { useSession } from "./session-context";
import { useShared } from "./styles";

/** Shows its content once the workbook has been checked, and offers the check before. */
export function NeedCheck({ children }: { children: (check: JobCheck) => ReactNode }) {
  const shared = useShared();
  const { session, state } = useSession();
  if (state.check) return children(state.check);
  return (
    <div className={shared.screen}>
      <p className={shared.text}>This needs the workbook to have been read once.</p>
      <div>
        <Button
          appearance="primary"
          disabledFocusable={state.busy !== ""}
          onClick={() => void session.check()}
        >
          Check the workbook
        </Button>
      </div>
    </div>
  );
}
