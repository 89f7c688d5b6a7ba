import { WorkbookError } from "../error";
import { megabytes } from "../limits";
import type { Limits } from "../types";

const oleHeader = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

function startsWith(bytes: Uint8Array, head: readonly number[]): boolean {
  return bytes.length >= head.length && head.every((byte, at) => bytes[at] === byte);
}

/** Looks for an ASCII word written as UTF-16LE, the way compound files name their streams. */
function holdsWideWord(bytes: Uint8Array, word: string): boolean {
  const wide = [...word].flatMap((char) => [char.charCodeAt(0), 0]);
  for (
    let at = bytes.indexOf(wide[0] as number);
    at >= 0;
    at = bytes.indexOf(wide[0] as number, at + 1)
  ) {
    if (wide.every((byte, offset) => bytes[at + offset] === byte)) return true;
  }
  return false;
}

/** Refuses what cannot be a zip package, saying what it seems to be. */
export function refuseOtherFiles(bytes: Uint8Array, limits: Limits): void {
  if (bytes.length === 0) {
    throw new WorkbookError("truncated", "The file is empty. Copy or download it again.");
  }
  if (bytes.length > limits.fileBytes) {
    throw new WorkbookError(
      "too-large",
      `The file has ${megabytes(bytes.length)}; at most ${megabytes(limits.fileBytes)} are read.`,
    );
  }
  if (startsWith(bytes, oleHeader)) {
    if (holdsWideWord(bytes, "EncryptedPackage")) {
      throw new WorkbookError(
        "password",
        "The workbook is protected by a password. Open it in a spreadsheet program and save a copy without the password.",
      );
    }
    throw new WorkbookError(
      "old-xls",
      "This is an old binary file (.xls). Open it in a spreadsheet program and save it as .xlsx.",
    );
  }
  if (!startsWith(bytes, [0x50, 0x4b])) {
    throw new WorkbookError(
      "not-xlsx",
      "This is not an .xlsx workbook. If it is a table of another kind, open it in a spreadsheet program and save it as .xlsx.",
    );
  }
}
