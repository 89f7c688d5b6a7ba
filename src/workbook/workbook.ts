import { checkSheetName, InputError, sameName } from "../cells";
import { blankPackage } from "./blank";
import { type Book, readBook } from "./book";
import { dropCalcChain } from "./book-edit";
import { BookParts } from "./book-parts";
import { noSheets } from "./error";
import { defaultLimits } from "./limits";
import { setName } from "./names";
import { Package } from "./package";
import type { CellColors } from "./restyle";
import { PackageSheet } from "./sheet";
import { addSheetPart, arrangementOf, removeSheetPart, renameSheetPart } from "./sheet-list";
import { readTables } from "./tables";
import type { DefinedName, HostZip, Limits, Sheet, SheetSpec, StyleSpec, TableInfo } from "./types";
import { refuseOtherFiles } from "./zip/sniff";

/**
 * An .xlsx package, open for reading and editing. Sheets are read on first use, so a member of a
 * sheet can throw a WorkbookError about damage in that sheet's part.
 */
export class Workbook {
  readonly #parts: BookParts;
  #book: Book;
  /** Names were set since the book was read: it is read again where they are asked for. */
  #isRenamed = false;
  #sheets: PackageSheet[] = [];
  #tables: TableInfo[] | undefined;
  /** Something was edited since the parts were last brought up to date. */
  #stale = false;

  private constructor(
    private readonly pkg: Package,
    limits: Limits,
  ) {
    this.#parts = new BookParts(pkg, limits);
    this.#book = readBook(pkg, this.#parts.part);
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
    if (this.#isRenamed) this.#readBook();
    return this.#book.names;
  }

  /**
   * Gives a defined name its formula (without "="), adding it when it is new; null removes it.
   * `sheet` is the one it is local to. Throws an Error where there is no such sheet.
   */
  setName(name: string, formula: string | null, sheet: string | null = null, comment = ""): void {
    const local = sheet === null ? null : this.#placeOf(sheet);
    setName(this.pkg, this.#parts.part, name, local, formula, comment);
    this.#isRenamed = true;
  }

  #readBook(): void {
    this.#book = readBook(this.pkg, this.#parts.part);
    this.#isRenamed = false;
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
    return this.#parts.styles.formatCode(style);
  }

  /** Index of a cell format like this, added to the styles part when it is not there yet. */
  addStyle(style: StyleSpec): number {
    return this.#parts.styles.add(style);
  }

  /** What a cell format looks like. Colours of the theme are not resolved: they are left out. */
  styleSpec(style: number): StyleSpec {
    return this.#parts.styles.spec(style);
  }

  /** The colours of a cell format's text and ground. */
  colors(style: number): CellColors {
    return this.#parts.styles.colors(style);
  }

  /**
   * Index of a cell format like another with some looks changed; undefined takes a look away. All
   * that is not named stays, protection included.
   */
  restyle(style: number, changes: StyleSpec): number {
    return this.#parts.styles.restyle(style, changes);
  }

  /** Adds a worksheet after the last. Throws a RangeError for a name or content that is not possible. */
  addSheet(name: string, spec: SheetSpec): Sheet {
    const taken = this.#book.sheets.map((sheet) => sheet.name);
    checkSheetName(name, taken);
    const arrangement = arrangementOf(spec);
    addSheetPart(this.#parts, name, spec, this.#book.sheets.length === 0);
    this.#reload();
    const sheet = this.sheet(name) as Sheet;
    sheet.arrange(arrangement);
    for (const chart of spec.charts ?? []) sheet.addChart(chart);
    return sheet;
  }

  /**
   * Removes a worksheet that nothing else in the workbook refers to and that carries only cells
   * and charts. Throws an Error that says what stands against it.
   */
  removeSheet(name: string): void {
    const place = this.#placed(name);
    const others = this.#book.sheets.filter((known) => !sameName(known.name, name));
    if (!others.some((other) => other.state === "visible")) {
      throw new InputError(
        `The sheet "${name}" cannot be removed: a workbook needs a visible sheet.`,
      );
    }
    this.#bringUpToDate();
    removeSheetPart(this.#parts, place);
    this.#reload();
  }

  /**
   * Gives a worksheet another name. Throws a RangeError for a name that is not possible, and an
   * Error that names what refers to the sheet by its old name. The result takes the sheet's place.
   */
  renameSheet(name: string, newName: string): Sheet {
    const place = this.#placed(name);
    const others = this.#book.sheets.filter((known) => !sameName(known.name, name));
    const taken = others.map((known) => known.name);
    checkSheetName(newName, taken);
    this.#bringUpToDate();
    renameSheetPart(this.#parts, place, newName);
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
      if (sheet.takeFormulaRemoved()) chainBreaks = true;
      this.#parts.writeCells(sheet.part, edits);
    }
    if (chainBreaks) dropCalcChain(this.pkg, this.#parts.part);
    this.#stale = false;
  }

  #placeOf(name: string): number {
    const index = this.#book.sheets.findIndex((known) => sameName(known.name, name));
    if (index < 0) throw new InputError(`The workbook has no sheet "${name}".`);
    return index;
  }

  #placed(name: string) {
    const sheet = this.#sheets.find((known) => sameName(known.name, name));
    if (sheet === undefined) throw new InputError(`The workbook has no sheet "${name}".`);
    const index = this.#placeOf(name);
    return { name: sheet.name, part: sheet.part, index, workbookPart: this.#parts.part };
  }

  #reload(): void {
    this.#readBook();
    this.#sheets = this.#makeSheets();
    this.#tables = undefined;
  }

  /** Sheets known before stay the same objects, with their edits. */
  #makeSheets(): PackageSheet[] {
    return this.#book.sheets
      .filter((sheet) => sheet.isWorksheet)
      .map(({ name, state, rel }) => {
        const isSame = (each: PackageSheet) => each.part === rel.target && each.name === name;
        const known = this.#sheets.find(isSame);
        if (known !== undefined) return known;
        const { styles, dialect } = this.#parts;
        return new PackageSheet(name, state, rel.target, {
          pkg: this.pkg,
          dialect,
          looks: styles,
          read: () => this.#parts.readSheet(rel.target, this.#book.date1904),
          tables: () => readTables(this.pkg, rel.target, name),
          formatCode: (style) => styles.formatCode(style),
          colors: (style) => styles.colors(style),
          sheet: (other) => this.sheet(other),
          setOwnName: (own, formula) => this.setName(own, formula, name),
          edited: () => {
            this.#stale = true;
          },
        });
      });
  }
}
