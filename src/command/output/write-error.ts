import { InputError } from "../../cells";
/** A file or stream that could not be written; the message is one line that says why. */
export class WriteError extends InputError {}

/** The one line for an error of the system. */
export function writeErrorOf(target: string, error: unknown): WriteError {
  const { code = "", message } = error as NodeJS.ErrnoException;
  const why = reasons[code] ?? `cannot be written (${code || message})`;
  return new WriteError(`${target}: ${why}`);
}

const mayNot = "cannot be written: you have no right to write there, choose another folder";
const isFull = "cannot be written: the disk is full. What was there is as it was";
const reasons: Readonly<Record<string, string>> = {
  ENOENT: "cannot be written: there is no such folder",
  ENOTDIR: "cannot be written: there is no such folder",
  EACCES: mayNot,
  EPERM: mayNot,
  EROFS: "cannot be written: the disk is read-only, choose another folder",
  ENOSPC: isFull,
  EDQUOT: isFull,
  EFBIG: "cannot be written: it is larger than the system lets a file be",
  EBUSY: "cannot be written: another program holds it, close it there",
  ENAMETOOLONG: "cannot be written: its name is too long",
};
