import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { ArgumentView } from "../../model/trace-calls";
import { useShared } from "../../parts/styles";
import { CellList, PlaceButton } from "./place-button";

const useStyles = makeStyles({
  // What an argument means takes the whole width below it: a pane has no room for a column.
  table: {
    "& tbody > tr:first-child > *": {
      borderBottom: "none",
      paddingBottom: 0,
      verticalAlign: "baseline",
    },
    "& tr > :first-child": { paddingLeft: 0 },
    "& tr > :last-child": { paddingRight: 0 },
  },
  heading: { color: tokens.colorNeutralForeground1 },
});

interface ArgumentTableProps {
  /** Of the function. */
  readonly name: string;
  readonly of: readonly ArgumentView[];
}

/** What went into a call, argument by argument. */
export function ArgumentTable({ name, of }: ArgumentTableProps) {
  const styles = useStyles();
  const shared = useShared();
  if (of.length === 0) return null;
  return (
    <div className={shared.scroll}>
      <table className={mergeClasses(shared.table, styles.table)}>
        <caption className={shared.unseen}>Arguments of {name}</caption>
        <thead>
          <tr>
            <th scope="col">Argument</th>
            <th scope="col">From</th>
            <th scope="col" className="number">
              Value
            </th>
          </tr>
        </thead>
        {of.map((each, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a repeated argument has one name
          <tbody key={i}>
            <tr>
              <th scope="row">{each.name}</th>
              <td>
                {each.from ? <PlaceButton target={each.from} label={each.words} /> : each.given}
              </td>
              <td className="number">{each.value}</td>
            </tr>
            <tr>
              <td colSpan={3} className={shared.quiet}>
                {each.words === "" ? null : (
                  <>
                    <span className={styles.heading}>{each.words}</span>:{" "}
                  </>
                )}
                {each.meaning}
                <CellList cells={each.cells} />
              </td>
            </tr>
          </tbody>
        ))}
      </table>
    </div>
  );
}
