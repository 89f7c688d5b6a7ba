import { InputError } from "../cells";
import { fieldCopy } from "../field";
import { readJob } from "../job";
import { leftInWords, plainCopy, valuesCopy } from "../plain-copy";
import { Workbook } from "../workbook";
import { named } from "./check-file";
import { toJobFile } from "./job-file";
import { type Guard, writeFileSafely } from "./output";
import { readWorkbookFile } from "./read-workbook";

/** "plain": native formulas in place of ours. "values": no formulas. "field": for a phone. */
export const copyKinds = ["plain", "values", "field"] as const;
export type CopyKind = (typeof copyKinds)[number];

/** Writes a copy of a workbook that needs no add-in; says in lines what was done. */
export async function writeCopy(
  kind: CopyKind,
  file: string,
  out: string,
  guard: Guard,
): Promise<readonly string[]> {
  const { bytes, said } = await named(file, async () => {
    const read = await readWorkbookFile(file);
    const made = { values, plain, field }[kind](read.bytes);
    return { ...made, said: [...made.said, ...read.said] };
  });
  await writeFileSafely(out, bytes, guard);
  const [first = "", ...rest] = said;
  return [`${out}: ${first}`, ...rest];
}

function values(original: Uint8Array) {
  const { bytes, left } = valuesCopy(original);
  return { bytes, said: ["values only, no formulas", ...leftInWords(left)] };
}

function field(original: Uint8Array) {
  const job = readJob(toJobFile(Workbook.open(original)));
  if (!job.fans) throw new InputError("holds no fans to take along");
  const fans = job.fans.length;
  return {
    bytes: fieldCopy(job).save(),
    said: [`${fans} fans to take along; bring the readings back with --bring`],
  };
}

function plain(original: Uint8Array) {
  const { workbook, replaced, left } = plainCopy(Workbook.open(original));
  return {
    bytes: workbook.save(),
    said: [`${replaced} formulas are native now`, ...leftInWords(left)],
  };
}
