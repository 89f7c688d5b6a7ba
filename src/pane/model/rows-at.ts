import { dwellingRow, type Job } from "../../job";

/** The fan and the dwelling that a place of the workbook is about, as rows of their tables. */
interface RowsAt {
  readonly fan: number | undefined;
  readonly dwelling: number | undefined;
}

/** A fan's row is about its dwelling too; a place elsewhere is about neither. */
export function rowsAt(job: Job, sheet: string, row: number, col?: number): RowsAt {
  const { fans, tables } = job;
  const { dwellings } = tables;
  const fan = fans?.table.readingsAt(sheet, row, col)[0];
  if (fans && fan !== undefined)
    return { fan, dwelling: dwellingRow(job, fans.table.text("dwelling", fan)) };
  return { fan, dwelling: dwellings?.readingsAt(sheet, row, col)[0] };
}

/** "Lot 07, B1"; a room without a fan by its room: "Lot 07, Kitchen". */
export function fanName({ fans }: Job, i: number): string {
  if (!fans) return "";
  if (!fans.isAbsent(i)) return fans.label(i);
  const { table } = fans;
  const room = table.text("room", i) || table.text("roomKind", i);
  return [table.text("dwelling", i), room].filter((part) => part !== "").join(", ");
}
