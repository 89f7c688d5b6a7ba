import { crc32, inflateRawSync } from "node:zlib";
import { checkJob, type JobCheck, serialOf } from "../job";
import { type HostZip, Workbook, WorkbookError } from "../workbook";
import { toJobFile } from "./job-file";
import { FileError, readFileBytes } from "./read-file";

/** One file of a call: its check, or why there is none. */
export type FileCheck =
  | { readonly file: string; readonly check: JobCheck }
  | { readonly file: string; readonly unreadable: string };

/** The system's own code, several times faster than script; room for all bytes at once spares a copy. */
const zip: HostZip = {
  inflate: (packed, size) =>
    inflateRawSync(packed, { chunkSize: size + 64, maxOutputLength: Math.max(1, size) }),
  crc32: (bytes) => crc32(bytes),
};

/** Checks one file. A file that cannot be read is told of, never thrown. */
export async function checkFile(file: string, today: Date): Promise<FileCheck> {
  try {
    const workbook = Workbook.open(await readFileBytes(file), {}, zip);
    const serial = serialOf(today) - (workbook.date1904 ? 1462 : 0);
    return { file, check: checkJob(toJobFile(workbook), serial) };
  } catch (error) {
    if (error instanceof FileError || error instanceof WorkbookError)
      return { file, unreadable: error.message };
    throw new Error(`${file}: ${(error as Error).message}`, { cause: error });
  }
}
