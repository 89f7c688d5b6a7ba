import { Button, Spinner } from "@fluentui/react-components";
import { type ReactNode, useEffect } from "react";
import type { JobCheck } from "../../job";
import { useSession } from "./session-context";
import { useShared } from "./styles";

/** Shows its content once the workbook has been read, which it asks for where it has not. */
export function NeedCheck({ children }: { children: (check: JobCheck) => ReactNode }) {
  const shared = useShared();
  const { session, state } = useSession();
  const { check, problem, busy } = state;
  const isDue = !check && problem === "" && busy === "";
  useEffect(() => {
    if (isDue) void session.check();
  }, [session, isDue]);
  if (check) return children(check);
  return (
    <div className={shared.screen}>
      {problem === "" ? (
        <Spinner size="small" label="Reading the workbook" />
      ) : (
        <div>
          <Button appearance="primary" onClick={() => void session.check()}>
            Read the workbook again
          </Button>
        </div>
      )}
    </div>
  );
}
