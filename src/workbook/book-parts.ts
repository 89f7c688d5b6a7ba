import { decodeText, detectEncoding, encodeText } from "./decode";
import { type Dialect, strict, transitional } from "./dialect";
import type { SheetEdits } from "./edit";
import { damaged } from "./error";
import { findWorkbookPart } from "./find-workbook";
import { Budget } from "./limits";
import { dynamicArrayMark } from "./metadata";
import { kindOf, readRels } from "./opc";
import type { Package } from "./package";
import { richErrors } from "./rich-errors";
import { readSharedStrings } from "./shared-strings";
import type { SheetData } from "./sheet-data";
import { readSheet } from "./sheet-read";
import { spliceSheet } from "./sheet-splice";
import { Styles } from "./styles";
import type { Limits } from "./types";

/** The package of a workbook with what all its sheets share. */
export class BookParts {
  /** Name of the workbook part. */
  readonly part: string;
  readonly dialect: Dialect;
  readonly styles: Styles;
  readonly #cells: Budget;
  readonly #text: Budget;
  #strings: readonly string[] | undefined;
  #richErrors: ReadonlyMap<string, string> | undefined;

  constructor(
    readonly pkg: Package,
    private readonly limits: Limits,
  ) {
    this.part = findWorkbookPart(pkg);
    this.#cells = new Budget(
      limits.cells,
      `The workbook holds more than ${limits.cells} cells, the most that are read.`,
    );
    this.#text = new Budget(
      limits.text,
      `The cells of the workbook hold more than ${limits.text.toLocaleString("en")} characters of text, the most that are read: shorten its texts, or part it into several files.`,
    );
    const main = readRels(pkg, "").find((rel) => kindOf(rel.type) === "officeDocument");
    this.dialect = main?.type.startsWith(strict.relationships) ? strict : transitional;
    const styles = readRels(pkg, this.part).find((rel) => kindOf(rel.type) === "styles");
    this.styles = new Styles(pkg, this.part, styles?.target ?? null, this.dialect);
  }

  readSheet(part: string, date1904: boolean): SheetData {
    const bytes = this.pkg.get(part);
    if (bytes === undefined) throw damaged(part, "the part is missing");
    const data = readSheet(part, bytes, {
      depth: this.limits.depth,
      cells: this.#cells,
      text: this.#text,
      markup: this.pkg.markup,
      date1904,
      strings: () => this.#sharedStrings(),
      richErrors: () => (this.#richErrors ??= richErrors(this.pkg, this.part)),
    });
    this.pkg.release(part);
    return data;
  }

  /** Writes edits of cells into a sheet's part. */
  writeCells(part: string, edits: SheetEdits): void {
    const bytes = this.pkg.get(part) as Uint8Array;
    const text = decodeText(part, bytes);
    const edited = spliceSheet(part, text, edits, {
      depth: this.limits.depth,
      dynamicArrayMark: () => this.arrayMark(),
    });
    if (edited !== text) this.pkg.set(part, encodeText(edited, detectEncoding(bytes)));
  }

  /** The cm attribute of a dynamic array. */
  arrayMark(): number {
    return dynamicArrayMark(this.pkg, this.part, this.dialect);
  }

  #sharedStrings(): readonly string[] {
    if (this.#strings === undefined) {
      const rel = readRels(this.pkg, this.part).find(
        (known) => kindOf(known.type) === "sharedStrings",
      );
      const bytes = rel === undefined ? undefined : this.pkg.markupOf(rel.target);
      this.#strings =
        rel === undefined || bytes === undefined
          ? []
          : readSharedStrings(rel.target, bytes, this.limits.depth);
    }
    return this.#strings;
  }
}
