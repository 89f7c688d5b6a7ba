import type { SheetKind } from "../columns";
import type { FindingKind } from "../findings";
import type { FanRows, Job, Table } from "../read";
import type { Report, Words } from "../report";
import { aboutRow } from "./about";
import type { Check, CheckContext } from "./check";

/** Tells what is found of the row that is looked at, at the cell of one of its fields. */
export type Say = (kind: FindingKind, key: string, words: Words, about?: string) => void;

/** Looks at one row. */
export type Look = (i: number, say: Say) => void;

/** A check of each row of a sheet; `begin` gives what looks at a row, or nothing where none is to be looked at. */
export const eachRow =
  (
    kind: SheetKind,
    begin: (table: Table, job: Job, context: CheckContext) => Look | undefined,
  ): Check =>
  (job, report, context) => {
    const table = job.tables[kind];
    if (table) go(table, report, aboutRow(table), begin(table, job, context));
  };

/** The same for each reading of a fan. */
export const eachFan =
  (begin: (fans: FanRows, job: Job, context: CheckContext) => Look | undefined): Check =>
  (job, report, context) => {
    const { fans } = job;
    if (fans) go(fans.table, report, (i) => fans.label(i), begin(fans, job, context));
  };

function go(table: Table, report: Report, about: (i: number) => string, look?: Look): void {
  if (!look) return;
  let i = 0;
  const say: Say = (kind, key, words, own = about(i)) => report.at(kind, table, key, i, own, words);
  for (; i < table.length; i++) look(i, say);
}
