import { blankPackage } from "./blank";
import { type Book, readBook } from "./book";
import { dropCalcChain, enterSheet, renameSheet, strikeSheet } from "./book-edit";
import { decodeText, detectEncoding, encodeText } from "./decode";
import { type Dialect, strict, transitional } from "./dialect";
import { damaged, WorkbookError } from "./error";
import { findWorkbookPart } from "./find-workbook";
import { Budget, defaultLimits } from "./limits";
import { dynamicArrayMark } from "./metadata";
import { kindOf, readRels } from "./opc";
import { Package } from "./package";
import { whyNotRemovable, whyNotRenamable } from "./removable";
import { readSharedStrings } from "./shared-strings";
import { PackageSheet } from "./sheet";
import type { SheetData } from "./sheet-data";
import { checkSheetName, sameName } from "./sheet-name";
import { readSheet } from "./sheet-read";
import { spliceSheet } from "./sheet-splice";
import { sheetXml } from "./sheet-write";
import { Styles } from "./styles";
import { readTables } from "./tables";
import type { DefinedName, HostZip, Limits, Sheet, SheetSpec, StyleSpec, TableInfo } from "./types";
import { refuseOtherFiles } from "./zip/sniff";

/**
 * An .xlsx package, open for reading and editing. Sheets are read on first use, so a member of a
 * sheet can throw a WorkbookError about damage in that sheet's part.
 */
export class Workbook {
  readonly #part: string;
  readonly #dialect: Dialect;
  readonly #styles: Styles;
  readonly #cells: Budget;
  #book: Book;
  #sheets: PackageSheet[] = [];
  #strings: string[] | undefined;
  #tables: TableInfo[] | undefined;
  /** Something was edited since the parts were last brought up to date. */
  #stale = false;

  private constructor(
    private readonly pkg: Package,
    private readonly limits: Limits,
  ) {
    this.#part = findWorkbookPart(pkg);
    this.#cells = new Budget(
      limits.cells,
      `The workbook holds more than ${limits.cells} cells, the most that are read.`,
    );
    const main = readRels(pkg, "").find((rel) => kindOf(rel.type) === "officeDocument");
    this.#dialect = main?.type.startsWith(strict.relationships) ? strict : transitional;
    const styles = readRels(pkg, this.#part).find((rel) => kindOf(rel.type) === "styles");
    this.#styles = new Styles(pkg, this.#part, styles?.target ?? null, this.#dialect);
    this.#book = readBook(pkg, this.#part);
    this.#sheets = this.#makeSheets();
  }

  /**
   * Opens the bytes of a file. Throws a WorkbookError that says what is wrong with them.
   * The bytes must not be changed while the workbook is in use.
   */
  static open(bytes: Uint8Array, limits: Partial<Limits> = {}, host?: HostZip): Workbook {
    const bounds = { ...defaultLimits, ...limits };
    refuseOtherFiles(bytes, bounds);
    const workbook = new Workbook(Package.read(bytes, bounds, host), bounds);
    if (workbook.sheets.length === 0) throw noSheets("The workbook holds no sheet with cells.");
    return workbook;
  }

  /** An empty workbook; the same calls on it give the same bytes on every machine. */
  static create(): Workbook {
    return new Workbook(blankPackage(), defaultLimits);
  }

  /** The sheets that hold cells, in the order of their tabs. */
  get sheets(): readonly Sheet[] {
    return this.#sheets;
  }

  /** By name, whatever the case. */
  sheet(name: string): Sheet | undefined {
    return this.#sheets.find((sheet) => sameName(sheet.name, name));
  }

  get names(): readonly DefinedName[] {
    return this.#book.names;
  }

  get tables(): readonly TableInfo[] {
    this.#tables ??= this.#sheets.flatMap((sheet) => readTables(this.pkg, sheet.part, sheet.name));
    return this.#tables;
  }

  /** True when day 0 is 1 January 1904. */
  get date1904(): boolean {
    return this.#book.date1904;
  }

  /** The number format of a cell format, such as "General", "0.0" or "yyyy-mm-dd". */
  formatCode(style: number): string {
    return this.#styles.formatCode(style);
  }

  /** Index of a cell format like this, added to the styles part when it is not there yet. */
  addStyle(style: StyleSpec): number {
    return this.#styles.add(style);
  }

  /** What a cell format looks like. Colours of the theme are not resolved: they are left out. */
  styleSpec(style: number): StyleSpec {
    return this.#styles.spec(style);
  }

  /**
   * Index of a cell format like another with some looks changed; undefined takes a look away. All
   * that is not named stays, borders and protection included.
   */
  restyle(style: number, changes: StyleSpec): number {
    return this.#styles.restyle(style, changes);
  }

  /** Adds a worksheet after the last. Throws a RangeError for a name or content that is not possible. */
  addSheet(name: string, spec: SheetSpec): Sheet {
    checkSheetName(
      name,
      this.#book.sheets.map((sheet) => sheet.name),
    );
    const dialect = this.#dialect;
    const selected = this.#book.sheets.length === 0;
    // The first run finds what is not possible before anything is changed.
    let spills = false;
    const mark = () => {
      spills = true;
      return 1;
    };
    let xml = sheetXml({ name, spec, dialect, selected, mark });
    if (spills) {
      const cm = this.#arrayMark();
      xml = sheetXml({ name, spec, dialect, selected, mark: () => cm });
    }
    enterSheet(this.pkg, this.#part, this.#dialect, name, xml, spec.state);
    this.#reload();
    return this.sheet(name) as Sheet;
  }

  /**
   * Removes a worksheet that nothing else in the workbook refers to and that carries only cells.
   * Throws an Error that says what stands against it.
   */
  removeSheet(name: string): void {
    const sheet = this.#sheets.find((known) => sameName(known.name, name));
    if (sheet === undefined) throw new Error(`The workbook has no sheet "${name}".`);
    const others = this.#book.sheets.filter((known) => !sameName(known.name, name));
    if (!others.some((other) => other.state === "visible")) {
      throw new Error(`The sheet "${name}" cannot be removed: a workbook needs a visible sheet.`);
    }
    this.#bringUpToDate();
    const index = this.#book.sheets.findIndex((known) => sameName(known.name, name));
    const place = { name: sheet.name, part: sheet.part, index, workbookPart: this.#part };
    const why = whyNotRemovable(this.pkg, place);
    if (why !== null) throw new Error(`The sheet "${name}" cannot be removed: ${why}.`);
    for (const rel of readRels(this.pkg, sheet.part)) {
      if (!rel.external && kindOf(rel.type) === "printerSettings") this.pkg.delete(rel.target);
    }
    strikeSheet(this.pkg, this.#part, index);
    dropCalcChain(this.pkg, this.#part);
    this.#reload();
  }

  /**
   * Gives a worksheet another name. Throws a RangeError for a name that is not possible, and an
   * Error that names what refers to the sheet by its old name. The result takes the sheet's place.
   */
  renameSheet(name: string, newName: string): Sheet {
    const sheet = this.#sheets.find((known) => sameName(known.name, name));
    if (sheet === undefined) throw new Error(`The workbook has no sheet "${name}".`);
    const others = this.#book.sheets.filter((known) => !sameName(known.name, name));
    checkSheetName(
      newName,
      others.map((known) => known.name),
    );
    this.#bringUpToDate();
    const index = this.#book.sheets.findIndex((known) => sameName(known.name, name));
    const place = { name: sheet.name, part: sheet.part, index, workbookPart: this.#part };
    const why = whyNotRenamable(this.pkg, place);
    if (why !== null) throw new Error(`The sheet "${name}" cannot be renamed: ${why}.`);
    renameSheet(this.pkg, this.#part, index, newName);
    this.#reload();
    return this.sheet(newName) as Sheet;
  }

  /** The names of all parts, edits included. */
  partNames(): string[] {
    this.#bringUpToDate();
    return this.pkg.names();
  }

  /** The bytes of a part, edits included. */
  part(name: string): Uint8Array | undefined {
    this.#bringUpToDate();
    return this.pkg.get(name);
  }

  /** The file. When nothing was changed these are the very bytes it was opened from. */
  save(): Uint8Array {
    if (this.#sheets.length === 0)
      throw noSheets("The workbook has no sheet yet: add one before saving.");
    this.#bringUpToDate();
    return this.pkg.save();
  }

  /** Writes the edits of all sheets into their parts. */
  #bringUpToDate(): void {
    if (!this.#stale) return;
    let chainBreaks = false;
    for (const sheet of this.#sheets) {
      const edits = sheet.takeEdits();
      if (edits.size === 0) continue;
      chainBreaks ||= sheet.formulaRemoved;
      sheet.formulaRemoved = false;
      const bytes = this.pkg.get(sheet.part) as Uint8Array;
      const text = decodeText(sheet.part, bytes);
      const edited = spliceSheet(sheet.part, text, edits, {
        depth: this.limits.depth,
        dynamicArrayMark: () => this.#arrayMark(),
      });
      if (edited !== text) this.pkg.set(sheet.part, encodeText(edited, detectEncoding(bytes)));
    }
    if (chainBreaks) dropCalcChain(this.pkg, this.#part);
    this.#stale = false;
  }

  #arrayMark(): number {
    return dynamicArrayMark(this.pkg, this.#part, this.#dialect);
  }

  #reload(): void {
    this.#book = readBook(this.pkg, this.#part);
    this.#sheets = this.#makeSheets();
    this.#tables = undefined;
  }

  /** Sheets known before stay the same objects, with their edits. */
  #makeSheets(): PackageSheet[] {
    return this.#book.sheets
      .filter((sheet) => sheet.isWorksheet)
      .map(({ name, state, rel }) => {
        const known = this.#sheets.find(
          (sheet) => sheet.part === rel.target && sheet.name === name,
        );
        if (known !== undefined) return known;
        return new PackageSheet(name, state, rel.target, {
          read: () => this.#readSheet(rel.target),
          tables: () => readTables(this.pkg, rel.target, name),
          edited: () => {
            this.#stale = true;
          },
        });
      });
  }

  #readSheet(part: string): SheetData {
    const bytes = this.pkg.get(part);
    if (bytes === undefined) throw damaged(part, "the part is missing");
    return readSheet(part, bytes, {
      depth: this.limits.depth,
      cells: this.#cells,
      date1904: this.#book.date1904,
      strings: () => this.#sharedStrings(),
    });
  }

  #sharedStrings(): readonly string[] {
    if (this.#strings === undefined) {
      const rel = readRels(this.pkg, this.#part).find(
        (known) => kindOf(known.type) === "sharedStrings",
      );
      const bytes = rel === undefined ? undefined : this.pkg.get(rel.target);
      this.#strings =
        rel === undefined || bytes === undefined
          ? []
          : readSharedStrings(rel.target, bytes, this.limits.depth);
    }
    return this.#strings;
  }
}

function noSheets(message: string): WorkbookError {
  return new WorkbookError("no-sheets", message);
}
