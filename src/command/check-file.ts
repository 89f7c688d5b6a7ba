import { setFlagsFromString } from "node:v8";
import { crc32, inflateRawSync } from "node:zlib";
import { auditFormulas } from "../audit";
import { InputError, offsetOf, serialOf } from "../cells";
import { checkJob, type JobCheck, type JobFile, readJob } from "../job";
import { type HostZip, Workbook } from "../workbook";
import { toJobFile } from "./job-file";
import { readWorkbookFile } from "./read-workbook";

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

const largeFile = 8e6;

/** A workbook as read, with today as a serial number of its own. */
interface OpenedFile {
  readonly job: JobFile;
  readonly today: number;
}

/** What a file is read with: the day, and a firm's answers where it gave some. */
export interface Look {
  readonly today: Date;
  readonly answers?: JobFile["answers"];
}

/** Opens one file for a check; rejects with an InputError that does not name the file. */
export async function openFile(file: string, { today, answers }: Look): Promise<OpenedFile> {
  const { bytes, said } = await readWorkbookFile(file);
  // A job of 100,000 rows: a heap that grows in small steps takes 40 % less memory and a third more time.
  if (bytes.length > largeFile) setFlagsFromString("--heap-growing-percent=12");
  const workbook = Workbook.open(bytes, {}, zip);
  return {
    job: { ...toJobFile(workbook), said, ...(answers && { answers }) },
    today: serialOf(today) - offsetOf(workbook.date1904),
  };
}

/** Checks one file. A file that cannot be read is told of, never thrown. */
export async function checkFile(file: string, look: Look): Promise<FileCheck> {
  try {
    const opened = await openFile(file, look);
    return { file, check: checkJob(opened.job, opened.today, auditFormulas) };
  } catch (error) {
    return { file, unreadable: error instanceof InputError ? error.message : faultIn(error) };
  }
}

/** Reads from a file; what is wrong there is told with the file's name. */
export async function named<T>(file: string, read: () => T | Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (error) {
    throw error instanceof InputError ? new InputError(`${file}: ${error.message}`) : error;
  }
}

/** Reads one file as a job; rejects with an InputError that names it. */
export const readNamed = (file: string, look: Look) =>
  named(file, async () => readJob((await openFile(file, look)).job));

/** How a fault of ours is told: the other files are checked all the same. */
export const faultWords = "the check itself failed on this file";

function faultIn(error: unknown): string {
  return `${faultWords} (${String(error)}): nothing in it was checked, please report it`;
}
