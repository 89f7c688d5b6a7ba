import { once } from "../../cells";
import type { Field, Values } from "../columns";
import { Columns, definedAs, type Job, type Table } from "../read";
import { factsOf } from "./facts";

/**
 * What a computed column should hold, row by row, by its definition. Each rests on its neighbours
 * as they are stored, so that one slip is found once; a neighbour that the sheet does not have is
 * worked out.
 */
export function expectedIn(job: Job, table: Table, field: Field): Values {
  return definedAs(table.layout.kind, field.key, storedIn(job)) ?? [];
}

/** The columns of a job as they are stored; those that its sheets do not have are worked out. */
export const storedIn = once((job: Job): Columns => {
  const { column, dwellings } = factsOf(job);
  const stored: Columns = new Columns(job, (kind, key) => {
    const table = job.tables[kind];
    if (table?.has(key)) return undefined;
    if (key === "deficits" && !dwellings.asksForDeficits())
      return new Array<number>(table?.length ?? 0).fill(0);
    return column(kind, key) ?? definedAs(kind, key, stored);
  });
  return stored;
});
