import { Button, MessageBar, MessageBarActions, MessageBarBody } from "@fluentui/react-components";
import { DismissRegular } from "@fluentui/react-icons";
import type { Desk } from "../desk";
import { useDesk } from "./use-desk";

/** Lines about what went wrong or was done, over the foot of the grid so that nothing moves. */
export function Notices({ desk }: { desk: Desk }) {
  useDesk(desk);
  return (
    <section className="desk-notices" aria-label="Messages" aria-live="polite">
      {desk.messages.list.map(({ id, kind, text, choices }) => (
        <MessageBar key={id} intent={kind} layout="multiline">
          <MessageBarBody>{text}</MessageBarBody>
          <MessageBarActions
            containerAction={
              <Button
                appearance="transparent"
                size="small"
                aria-label="Dismiss"
                icon={<DismissRegular />}
                onClick={() => desk.messages.dismiss(id)}
              />
            }
          >
            {choices.map(({ label, run }) => (
              <Button key={label} size="small" onClick={run}>
                {label}
              </Button>
            ))}
          </MessageBarActions>
        </MessageBar>
      ))}
    </section>
  );
}
