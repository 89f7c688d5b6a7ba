import { makeStyles, tokens } from "@fluentui/react-components";
import { type Clause, clauseText } from "../../model/marks";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  sum: {
    margin: 0,
    padding: tokens.spacingVerticalS,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: "Cambria Math, STIX Two Math, Cambria, Georgia, serif",
    fontSize: tokens.fontSizeBase300,
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalS,
  },
});

interface WorkingProps {
  /** Sums and words, a line each. */
  readonly lines: readonly string[];
  readonly clauses: readonly Clause[];
}

/** The way to a number, and where the rule stands. */
export function Working({ lines, clauses }: WorkingProps) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <>
      {lines.length === 0 ? null : (
        <div className={styles.sum}>
          {lines.map((line) => (
            <span key={line}>{line}</span>
          ))}
        </div>
      )}
      {clauses.map((clause) => (
        <p key={clauseText(clause)} className={shared.muted}>
          {clauseText(clause)}
        </p>
      ))}
    </>
  );
}
