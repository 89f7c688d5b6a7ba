import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { count } from "../../model/announce";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  list: {
    margin: 0,
    paddingLeft: tokens.spacingHorizontalXL,
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalXS,
  },
  summary: { cursor: "pointer" },
});

/** What the reading met on its way: hidden rows, protected sheets. */
export function ReadingNotes() {
  const styles = useStyles();
  const { state } = useSession();
  if (state.notes.length === 0) return null;
  return (
    <details>
      <summary className={styles.summary}>
        {count(state.notes.length, "note")} on the reading
      </summary>
      <ul className={styles.list}>
        {state.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </details>
  );
}

/** The mends that were applied, latest first, each with its way back. */
export function AppliedMends() {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  if (state.applied.length === 0) return null;
  return (
    <details>
      <summary className={styles.summary}>{count(state.applied.length, "mend")} applied</summary>
      <ul className={styles.list}>
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
