import { makeStyles, Select } from "@fluentui/react-components";
import { type FitView, fieldsFor } from "../../model/fit-view";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  table: { tableLayout: "fixed" },
  heading: { width: "33%", overflowWrap: "anywhere" },
});

interface HeadingTableProps {
  readonly view: FitView;
  readonly busy: boolean;
  readonly onChoose: (heading: string, field: string) => void;
}

/** Each heading of a sheet in its order, and what it was taken for. */
export function HeadingTable({ view, busy, onChoose }: HeadingTableProps) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <table className={`${shared.table} ${styles.table}`}>
      <thead>
        <tr>
          <th scope="col" className={styles.heading}>
            Heading
          </th>
          <th scope="col">Taken for</th>
        </tr>
      </thead>
      <tbody>
        {view.rows.map((row) => (
          <tr key={row.cell}>
            <td className={row.field === "" ? shared.quiet : undefined}>
              {row.heading}{" "}
              <span className={shared.quiet}>
                {row.cell}
                {row.unitAssumed ? `, in ${row.unit} as the job` : ""}
                {row.chosen ? ", your choice" : ""}
              </span>
            </td>
            <td>
              <Select
                size="small"
                className={shared.narrow}
                aria-label={`${row.heading} is taken for`}
                disabled={busy}
                value={row.field}
                onChange={(_, data) => onChoose(row.heading, data.value)}
              >
                <option value="">not used</option>
                {fieldsFor(view.layout, row.heading).map((field) => (
                  <option key={field.key} value={field.key}>
                    {field.title}
                  </option>
                ))}
              </Select>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
