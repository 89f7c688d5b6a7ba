import { worksheetFunctions } from "../../functions";
import { cellName } from "../cells";
import { type Brought, bringIn } from "../field";
import { readJob } from "../job";
import { SheetModel } from "../sheet";
import { Workbook } from "../workbook";
import { named } from "./check-file";
import { toJobFile } from "./job-file";
import type { Options } from "./options";
import { type Guard, writeFileSafely } from "./output";
import { readWorkbookFile } from "./read-workbook";

type Wish = NonNullable<Options["bring"]>;

/**
 * Places what was typed in a field copy into a new copy of the job; says in lines what was placed,
 * what differs and what could not be placed. `open` counts the last two.
 */
export async function bringFile(
  file: string,
  { copy, into, preferCopy }: Wish,
  guard: Guard,
): Promise<{ readonly said: readonly string[]; readonly open: number }> {
  const [job, typed] = [await opened(file), await opened(copy)];
  const found = bringIn(readJob(toJobFile(job)), readJob(toJobFile(typed)));
  const written = [...found.fresh, ...(preferCopy ? found.differing : [])];
  const model = new SheetModel(job, worksheetFunctions);
  for (const { sheet, row, col, value } of written) model.set(sheet, row, col, value);
  await writeFileSafely(into, job.save(), guard);
  const kept = preferCopy ? [] : found.differing;
  const said = [
    `${into}: ${written.length} values placed, ${found.same} in the job already`,
    ...kept.map((each) => `${differs(each)}; kept as in the job (--prefer-copy takes the copy's)`),
    ...(preferCopy ? found.differing.map((each) => `${differs(each)}; taken from the copy`) : []),
    ...found.left.map(({ fan, what, why }) => `${fan}: ${what} not placed, since ${why}`),
  ];
  return { said, open: kept.length + found.left.length };
}

const opened = (file: string) =>
  named(file, async () => Workbook.open((await readWorkbookFile(file)).bytes));

function differs({ fan, heading, sheet, row, col, told }: Brought): string {
  return `${fan}: ${heading} is ${told.value} in the copy, ${told.before} in ${sheet}!${cellName(row, col)}`;
}
