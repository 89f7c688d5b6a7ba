import { Button } from "@fluentui/react-components";
import { count } from "../../model/announce";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

/** What the reading met on its way: hidden rows, protected sheets. */
export function ReadingNotes() {
  const shared = useShared();
  const { state } = useSession();
  if (state.notes.length === 0) return null;
  return (
    <details>
      <summary className={shared.summary}>
        {count(state.notes.length, "note")} on the reading
      </summary>
      <ul className={shared.bullets}>
        {state.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </details>
  );
}

/** The mends that were applied, latest first, each with its way back. */
export function AppliedMends() {
  const shared = useShared();
  const { session, state } = useSession();
  if (state.applied.length === 0) return null;
  return (
    <details>
      <summary className={shared.summary}>{count(state.applied.length, "mend")} applied</summary>
      <ul className={shared.bullets}>
        {state.applied.toReversed().map(({ key, words }) => (
          <li key={key}>
            <div className={shared.spread}>
              <span>{words}</span>
              <Button
                size="small"
                aria-label={`Undo: ${words}`}
                disabledFocusable={state.busy !== ""}
                onClick={() => void session.undo(key)}
              >
                Undo
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </details>
  );
}
