import { mergeClasses } from "@fluentui/react-components";
import { type Clause, clauseText } from "../../model/marks";
import { useShared } from "../../parts/styles";

interface WorkingProps {
  /** Sums and words, a line each. */
  readonly lines: readonly string[];
  readonly clauses: readonly Clause[];
}

/** The way to a number, and where the rule stands. */
export function Working({ lines, clauses }: WorkingProps) {
  const shared = useShared();
  return (
    <>
      {lines.length === 0 ? null : (
        <div className={mergeClasses(shared.figure, shared.sum)}>
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
