import { mergeClasses } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { useShared } from "./styles";

interface TableProps<Row> {
  /** Of those who do not see that the table belongs to what stands above it. */
  readonly caption: string;
  /** The first cell of a row is its heading. */
  readonly columns: readonly {
    readonly title: ReactNode;
    readonly isNumber?: boolean;
    readonly cell: (row: Row) => ReactNode;
  }[];
  readonly rows: readonly Row[];
  readonly className?: string | undefined;
  readonly rowClass?: (row: Row) => string | undefined;
}

/** Rows of one kind, which stand in a fixed order. */
export function Table<Row>({ caption, columns, rows, className, rowClass }: TableProps<Row>) {
  const shared = useShared();
  const looks = columns.map(({ isNumber }) => (isNumber ? "number" : undefined));
  return (
    <table className={mergeClasses(shared.table, className)}>
      <caption className={shared.unseen}>{caption}</caption>
      <thead>
        <tr>
          {columns.map(({ title }, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the columns stand in a fixed order
            <th key={at} scope="col" className={looks[at]}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: and so do the rows
          <tr key={i} className={rowClass?.(row)}>
            {columns.map(({ cell }, at) =>
              at === 0 ? (
                <th key="heading" scope="row">
                  {cell(row)}
                </th>
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={at} className={looks[at]}>
                  {cell(row)}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
