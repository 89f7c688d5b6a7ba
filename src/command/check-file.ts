import { inflateRawSync } from "node:zlib";
import { checkJob, type JobCheck, serialOf } from "../job";
import { type HostInflate, Workbook, WorkbookError } from "../workbook";
import { toJobFile } from "./job-file";
import { FileError, readFileBytes } from "./read-file";

/** One file of a call: its check, or why there is none. */
export type FileCheck =
  | { readonly file: string; readonly check: JobCheck }
  | { readonly file: string; readonly unreadable: string };

/** The system's own inflate is several times faster than one in script. */
const inflate: HostInflate = (packed, size) =>
  inflateRawSync(packed, { maxOutputLength: Math.max(1, size) });

/** Checks one file. A file that cannot be read is told of, never thrown. */
export async function checkFile(file: string, today: Date): Promise<FileCheck> {
  try {
    const workbook = Workbook.open(await readFileBytes(file), {}, inflate);
    const serial = serialOf(today) - (workbook.date1904 ? 1462 : 0);
    return { file, check: checkJob(toJobFile(workbook), serial) };
  } catch (error) {
    if (error instanceof FileError || error instanceof WorkbookError)
      return { file, unreadable: error.message };
    throw new Error(`${file}: ${(error as Error).message}`, { cause: error });
  }
}
