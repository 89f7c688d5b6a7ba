import { open, stat } from "node:fs/promises";
import { basename } from "node:path";
import { InputError } from "../cells";
import { defaultLimits } from "../workbook";

/** A file that could not be read; the message is one line that says why and how to mend it. */
export class FileError extends InputError {}

/** The bytes of a workbook file. */
export async function readFileBytes(path: string): Promise<Uint8Array> {
  if (basename(path).startsWith("~$"))
    throw new FileError(
      "is the note that a spreadsheet program leaves beside an open workbook: name the workbook itself",
    );
  try {
    const about = await stat(path);
    if (about.isDirectory()) throw new FileError("is a folder: name the workbooks in it");
    if (!about.isFile()) throw new FileError("is no plain file: name a workbook");
    if (about.size > defaultLimits.fileBytes)
      throw new FileError(
        `is ${Math.round(about.size / 2 ** 20)} MB: workbooks of up to ${defaultLimits.fileBytes / 2 ** 20} MB are read`,
      );
    const file = await open(path, "r");
    try {
      return await file.readFile();
    } finally {
      await file.close();
    }
  } catch (error) {
    if (error instanceof FileError) throw error;
    throw new FileError(reasonOf((error as NodeJS.ErrnoException).code ?? ""));
  }
}

function reasonOf(code: string): string {
  switch (code) {
    case "ENOENT":
    case "ENOTDIR":
      return "was not found: check the name and the folder";
    case "EACCES":
    case "EPERM":
      return "may not be read: ask for permission, or copy it to a folder of your own";
    case "EBUSY":
    case "ETXTBSY":
    case "EAGAIN":
      return "is locked by another program: close it there, or check a copy";
    case "ENAMETOOLONG":
      return "has too long a name";
    default:
      return `could not be read (${code || "unknown reason"})`;
  }
}
