import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { BudgetView } from "../../model/trace-budget";
import { useShared } from "../../parts/styles";
import { Subscripts } from "./sum-block";

const useStyles = makeStyles({
  off: { fontWeight: tokens.fontWeightRegular },
  table: { "& .number": { whiteSpace: "nowrap" } },
});

/** Why a result may be off, cause by cause. */
export function BudgetTable({ budget }: { budget: BudgetView }) {
  const styles = useStyles();
  const shared = useShared();
  const { unit, lines } = budget;
  return (
    <table className={mergeClasses(shared.table, styles.table)}>
      <caption className={shared.unseen}>The spread, cause by cause</caption>
      <thead>
        <tr>
          <th scope="col">Cause, standard spread</th>
          <th scope="col" className="number">
            {unit === "" ? "Effect" : `Effect (${unit})`}
          </th>
          <th scope="col" className="number">
            Share
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ label, off, does, share }) => (
          <tr key={label}>
            <th scope="row">
              {label}
              <div className={mergeClasses(shared.muted, styles.off)}>
                <Subscripts text={off} />
              </div>
            </th>
            <td className="number">{does}</td>
            <td className="number">{share}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
