import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, extname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { CsvError, workbookOfCsv } from "../csv";
import { recovered } from "./converted";
import { FileError, readFileBytes } from "./read-file";

const textTables = new Set([".csv", ".tsv", ".txt"]);
/**
 * What LibreOffice turns into .xlsx where it is installed, each by its own filter: left to guess, it
 * takes a damaged file for text.
 */
const converted: Readonly<Record<string, string>> = {
  ".ods": "calc8",
  ".fods": "OpenDocument Spreadsheet Flat XML",
  ".xls": "MS Excel 97",
  ".xlsb": "Calc MS Excel 2007 Binary",
};
/** Turning a large workbook takes a while, but not for ever. */
const longestConversion = 120_000;

interface ReadFile {
  readonly bytes: Uint8Array;
  /** What is to be told of how it was read. */
  readonly said: readonly string[];
}

/**
 * The bytes of a workbook, whatever kind of table the file is: .xlsx as it stands, text tables as
 * one sheet, .ods and .xls through LibreOffice. Rejects with a FileError that says how to mend it.
 */
export async function readWorkbookFile(path: string): Promise<ReadFile> {
  const kind = extname(path).toLowerCase();
  const filter = converted[kind];
  if (filter !== undefined) return recovered(await convert(path, filter), kind);
  const bytes = await readFileBytes(path);
  if (!textTables.has(kind)) return { bytes, said: [] };
  try {
    return { bytes: workbookOfCsv(bytes, basename(path)).save(), said: [] };
  } catch (error) {
    if (error instanceof CsvError) throw new FileError(error.message);
    throw error;
  }
}

async function convert(path: string, filter: string): Promise<Uint8Array> {
  // Says at once what is wrong with the file itself.
  await readFileBytes(path);
  const folder = await mkdtemp(join(tmpdir(), "fanrow-read-"));
  try {
    const profile = pathToFileURL(join(folder, "profile")).href;
    await promisify(execFile)(
      "soffice",
      [
        `-env:UserInstallation=${profile}`,
        ...[
          "--headless",
          `--infilter=${filter}`,
          "--convert-to",
          "xlsx:Calc MS Excel 2007 XML",
          "--outdir",
          folder,
        ],
        resolve(path),
      ],
      { timeout: longestConversion },
    );
    const made = (await readdir(folder)).find((name) => name.endsWith(".xlsx"));
    if (made === undefined) throw new FileError("LibreOffice could not read it: save it as .xlsx");
    return new Uint8Array(await readFile(join(folder, made)));
  } catch (error) {
    if (error instanceof FileError) throw error;
    const isAbsent = (error as NodeJS.ErrnoException).code === "ENOENT";
    throw new FileError(
      isAbsent
        ? "is read through LibreOffice, which is not installed here: install it, or save the file as .xlsx"
        : "LibreOffice did not finish with it: save it as .xlsx",
    );
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
