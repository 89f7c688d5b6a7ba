import { writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { leftInWords, plainCopy, valuesCopy } from "../plain-copy";
import { Workbook, WorkbookError } from "../workbook";
import { FileError, readFileBytes } from "./read-file";

/** "plain": native formulas in place of ours. "values": no formulas at all. */
export type CopyKind = "plain" | "values";

/** Writes a copy of a workbook that needs no add-in; says what was done, or why it could not be. */
export async function writeCopy(
  kind: CopyKind,
  file: string,
  out: string,
): Promise<{ readonly said: string } | { readonly complaint: string }> {
  if (resolve(file) === resolve(out))
    return { complaint: `${out}: name another file: the copy never replaces its original` };
  let bytes: Uint8Array;
  let said: string;
  try {
    const original = await readFileBytes(file);
    if (kind === "values") {
      bytes = valuesCopy(original);
      said = `${out}: values only, no formulas`;
    } else {
      const { workbook, replaced, left } = plainCopy(Workbook.open(original));
      bytes = workbook.save();
      said = [`${out}: ${replaced} formulas are native now`, ...leftInWords(left)].join("\n  ");
    }
  } catch (error) {
    if (error instanceof FileError || error instanceof WorkbookError)
      return { complaint: `${file}: ${error.message}` };
    throw error;
  }
  try {
    await writeFile(out, bytes);
  } catch (error) {
    return { complaint: `${out}: cannot be written (${(error as NodeJS.ErrnoException).code})` };
  }
  return { said };
}
