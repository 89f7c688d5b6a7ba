import { Button, makeStyles, Spinner, tokens } from "@fluentui/react-components";
import { ArrowUndo16Regular, ErrorCircle20Filled } from "@fluentui/react-icons";
import { useSession } from "./session-context";

const useStyles = makeStyles({
  line: {
    display: "flex",
    alignItems: "center",
    justifyContent: "space-between",
    gap: tokens.spacingHorizontalS,
    minHeight: "40px",
    boxSizing: "border-box",
    flexShrink: 0,
    padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalM}`,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    fontSize: tokens.fontSizeBase200,
    backgroundColor: tokens.colorNeutralBackground2,
  },
  words: { minWidth: 0 },
  problem: {
    display: "flex",
    alignItems: "center",
    gap: tokens.spacingHorizontalS,
    color: tokens.colorStatusDangerForeground1,
  },
  icon: { flexShrink: 0 },
  undo: { flexShrink: 0 },
});

/** What was done last, or why it could not be; always there, so that nothing jumps. */
export function StatusLine() {
  const styles = useStyles();
  const { session, state } = useSession();
  const { busy, problem, message, applied } = state;
  const last = applied.at(-1);
  return (
    <footer className={styles.line}>
      <div className={styles.words}>
        <div role="alert">
          {problem === "" ? null : (
            <span className={styles.problem}>
              <ErrorCircle20Filled className={styles.icon} aria-hidden />
              {problem}
            </span>
          )}
        </div>
        <div role="status">{problem === "" && busy === "" ? message : ""}</div>
        {busy === "" ? null : <Spinner size="extra-tiny" label={`${busy}…`} />}
      </div>
      {last ? (
        <Button
          size="small"
          className={styles.undo}
          icon={<ArrowUndo16Regular />}
          disabledFocusable={busy !== ""}
          aria-label={`Undo: ${last.words}`}
          onClick={() => void session.undo()}
        >
          Undo
        </Button>
      ) : null}
    </footer>
  );
}
