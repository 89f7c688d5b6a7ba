import { InputError } from "../../cells";
import { csvOf, workbookOfCsv } from "../../csv";
import { Workbook } from "../../workbook";
import { type Desk, messageOf } from "../desk";
import type { WorkbookHost } from "../host";
import type { KeptJob } from "../keep/kept";
import { type Opened, openedOf, writeBack } from "../keep/opened-file";
import { type CopyKind, copyName, download, kindName } from "./download";
import { demoFile, fetchFile, type GivenFile, givenPath } from "./given";

/** Reasons told of one copy; the rest are counted. */
const mostReasons = 3;

/** A file that was read and can take the place of the open one. */
interface ReadyFile {
  readonly open: () => void;
}

/** Opens and saves the workbook of a desk. A file that cannot be read leaves the open job as it is. */
export class Files {
  /** How to write back to the open file; null where the browser cannot. */
  opened: Opened | null = null;
  private saved: () => void = () => {};

  constructor(
    private readonly host: WorkbookHost,
    private readonly desk: Desk,
  ) {}

  /** Reads files that were picked or dropped; says of each that cannot be read why. */
  async read(list: readonly File[]): Promise<ReadyFile | null> {
    let ready: ReadyFile | null = null;
    for (const file of list) {
      const read = await this.attempt(file.name, async () => {
        const bytes = new Uint8Array(await file.arrayBuffer());
        return this.prepare({ name: file.name, bytes }, openedOf(file));
      });
      if (read && ready) this.desk.messages.add("info", `${file.name}: one job is open at a time.`);
      else ready ??= read;
    }
    return ready;
  }

  /** An empty workbook, for which the pane asks what the job is to have. */
  openBlank(): void {
    const workbook = Workbook.create();
    workbook.addSheet("Sheet1", { rows: [] });
    this.place(workbook, "job.xlsx", null);
  }

  /** Gives the file with all edits as a download; false where that is not possible. */
  save(name = copyName(this.desk.book.fileName)): boolean {
    const { desk } = this;
    if (desk.edit && !desk.commit()) return false;
    try {
      download(desk.book.save(), name);
      this.saved();
      desk.messages.add("info", `${name} is saved where the browser keeps its downloads.`);
      return true;
    } catch (thrown) {
      desk.messages.add("error", messageOf(thrown));
      return false;
    }
  }

  /** Gives a copy that needs no add-in as a download, and says what in it could not be replaced. */
  async saveWithoutAddIn(kind: CopyKind): Promise<void> {
    const { desk } = this;
    if (desk.edit && !desk.commit()) return;
    const name = kindName(desk.book.fileName, kind, desk.sheet.name);
    await this.attempt(name, async () => {
      if (kind === "csv") {
        download(csvOf(shownRows(desk)), name);
        desk.messages.add("info", `${name} is saved: the sheet in view as it reads.`);
        return;
      }
      const { leftInWords, plainCopy, valuesCopy } = await import("../../plain-copy");
      const bytes = this.host.bytes();
      if (kind === "values") {
        const copy = valuesCopy(bytes);
        download(copy.bytes, name);
        const said = [
          `${name} is saved: it holds values and no formulas`,
          ...leftInWords(copy.left),
        ];
        desk.messages.add("info", `${said.join("; ")}.`);
        return;
      }
      const { workbook, replaced, left } = plainCopy(Workbook.open(bytes));
      download(workbook.save(), name);
      desk.messages.add(
        "info",
        `${name} is saved: ${replaced} formulas of the add-in are now the program's own.`,
      );
      const reasons = leftInWords(left);
      if (reasons.length === 0) return;
      const rest = reasons.length - mostReasons;
      const told = reasons.slice(0, mostReasons).join("; ");
      const more = rest > 0 ? `; and for ${rest} more reasons` : "";
      desk.messages.add("info", `${left.length} cells keep their values: ${told}${more}.`);
    });
  }

  /** Calls the listener each time the open job was saved. */
  onSaved(listener: () => void): void {
    this.saved = listener;
  }

  /** Opens a job that was kept unsaved, with its changes still to be saved. */
  takeUp({ fileName, bytes, file }: KeptJob): void {
    this.place(Workbook.open(bytes), fileName, file, true);
  }

  /** Writes the job with all edits into the file that was opened. */
  async saveBack(): Promise<void> {
    const { desk, host, opened } = this;
    if (!opened || (desk.edit && !desk.commit())) return;
    const { book } = desk;
    const name = book.fileName;
    await this.attempt(name, async () => {
      const { opened: count } = desk;
      const { revision } = host;
      const written = await writeBack(opened, host.bytes());
      if (desk.opened !== count) return;
      this.opened = written;
      // What was typed while the file was written is not in it.
      if (host.revision === revision) {
        book.save();
        this.saved();
      }
      desk.messages.add("info", `${name} is saved in its place.`);
    });
  }

  private place(workbook: Workbook, name: string, opened: Opened | null, isDirty = false): void {
    this.desk.messages.clear();
    this.opened = opened;
    this.host.open(workbook, name, isDirty);
  }

  private prepare(file: GivenFile, opened: Opened | null): ReadyFile {
    const { workbook, name } = read(file);
    return {
      open: () => this.place(workbook, name, opened),
    };
  }

  private async attempt<T>(name: string, action: () => Promise<T>): Promise<T | null> {
    try {
      return await action();
    } catch (thrown) {
      this.desk.messages.add("error", `${name}: ${messageOf(thrown)}`);
      return null;
    }
  }
}

/** The rows in view of the active sheet, each cell as it reads. */
function shownRows({ book, sheet, extent }: Desk): (string | number)[][] {
  const cols = Array.from({ length: extent.usedCols }, (_, col) => col);
  return Array.from({ length: extent.usedRows }, (_, row) => row)
    .filter((row) => !sheet.hiddenRows.has(row))
    .map((row) =>
      cols.map((col) => {
        const text = book.text(sheet.name, row, col);
        const isNumber = typeof book.value(sheet.name, row, col) === "number";
        // As a number a negative one is not taken for the beginning of a formula.
        return isNumber && /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
      }),
    );
}

/**
 * Opens a workbook and reads its sheets, so that damage inside them shows now and not later. A text
 * table becomes a workbook of one sheet.
 */
function read({ name, bytes }: GivenFile): { workbook: Workbook; name: string } {
  if (/\.(csv|tsv|txt)$/i.test(name))
    return { workbook: workbookOfCsv(bytes, name), name: name.replace(/\.[^.]*$/, ".xlsx") };
  if (/\.(ods|xls|xlsb)$/i.test(name))
    throw new InputError(
      "this kind of file is read by the command, through LibreOffice; for the desk save it as .xlsx.",
    );
  const workbook = Workbook.open(bytes);
  for (const sheet of workbook.sheets) sheet.cell(0, 0);
  return { workbook, name };
}

/**
 * The workbook to begin with: the one the page's address asks for, else the demo job. `problem`
 * says why the one asked for is not there.
 */
export async function firstWorkbook(
  base: string,
  hash: string,
): Promise<{
  readonly workbook: Workbook;
  readonly name: string;
  readonly problem: string | null;
}> {
  const given = givenPath(hash);
  let problem: string | null = null;
  if (given !== null) {
    let name = "The file given";
    try {
      const file = await fetchFile(given, base);
      name = file.name;
      return { ...read(file), problem };
    } catch (thrown) {
      problem = `${name}: ${messageOf(thrown)}`;
    }
  }
  const demo = await fetchFile(demoFile, base);
  return { ...read(demo), problem };
}
