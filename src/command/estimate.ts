import { basename, extname } from "node:path";
import { InputError } from "../cells";
import { findEdition } from "../editions";
import type { Job } from "../job";
import { estimateRows, jobWorkbook } from "../new-job";
import { type Look, readNamed } from "./check-file";

/**
 * An estimate as a new job workbook, of lists of lots and plans, a catalogue of fans and a list of
 * openings, each in a file of its own or all in one; with what had to be taken for granted.
 */
export async function makeEstimate(
  files: readonly string[],
  wanted: string | undefined,
  look: Look,
): Promise<{ readonly bytes: Uint8Array; readonly said: readonly string[] }> {
  const jobs: Job[] = [];
  for (const file of files) jobs.push(await readNamed(file, look));
  const edition = wanted === undefined ? undefined : findEdition(wanted);
  const made = estimateRows(jobs, basename(files[0] ?? "", extname(files[0] ?? "")), edition);
  if (!made)
    throw new InputError(
      `${files.join(", ")}: no list of lots was recognised: give it headings such as Lot, Plan, Phase, Floor area, Bedrooms, Baths`,
    );
  const said = made.unused.map(
    (i) =>
      `${files[i]}: nothing was taken from it; a catalogue has headings such as Model, Rated flow, Cost, a list of openings Box, Opening, Area`,
  );
  return { bytes: jobWorkbook(made.rows).save(), said: [...said, ...made.said] };
}
