import {
  absoluteText,
  columnLetters,
  parseRectangle,
  quotedSheet,
  rectangleText,
  splitAddress,
} from "../cells";
import { arrangeSheet, type SheetRules } from "./arrange/arrange";
import { SheetFrame } from "./arrange/frame";
import { readConditionalFormats } from "./arrange/rules";
import type { Arrangement, ConditionalFormat, Validation } from "./arrange/spec";
import { readValidations } from "./arrange/validations";
import type { SeriesNumbers } from "./chart/chart-xml";
import { addChart, chartNames, removeChart } from "./chart/drawing";
import type { ChartSpec } from "./chart/spec";
import type { SheetData } from "./sheet-data";
import type { SheetOwner } from "./sheet-owner";
import type { Sheet } from "./types";

/** The sheet whose surroundings these are. */
interface Surrounded extends Sheet {
  readonly part: string;
  readonly known: SheetData | undefined;
}

/** What stands around the cells of a sheet. Changes are written to its part at once. */
export class SheetAround {
  /** Each object stands for a rule of the file; in the file's order. */
  #rules: SheetRules | undefined;
  #byPriority: readonly ConditionalFormat[] = [];

  constructor(
    private readonly sheet: Surrounded,
    private readonly owner: SheetOwner,
  ) {}

  get conditionalFormats(): readonly ConditionalFormat[] {
    this.#read();
    return this.#byPriority;
  }

  get validations(): readonly Validation[] {
    return this.#read().validations;
  }

  arrange(changes: Arrangement): void {
    const { pkg, looks } = this.owner;
    const { part } = this.sheet;
    const bytes = pkg.get(part) as Uint8Array;
    const arranged = arrangeSheet(part, bytes, pkg.depth, changes, () => this.#read(), looks);
    pkg.set(part, arranged.bytes);
    if (arranged.rules !== undefined) this.#rules = arranged.rules;
    if (changes.conditionalFormats !== undefined) this.#byPriority = changes.conditionalFormats;
    if (this.sheet.known !== undefined) takeUp(this.sheet.known, changes);
    const { titleRows, titleCols, area } = changes.page ?? {};
    const on = quotedSheet(this.sheet.name);
    const titles = [
      ...(titleCols ? [`${on}!$${titleCols.map(columnLetters).join(":$")}`] : []),
      ...(titleRows ? [`${on}!$${titleRows.map((row) => row + 1).join(":$")}`] : []),
    ];
    if (titles.length > 0) this.owner.setOwnName("_xlnm.Print_Titles", titles.join());
    if (area !== undefined) {
      this.owner.setOwnName(
        "_xlnm.Print_Area",
        `${on}!${absoluteText(rectangleText(parseRectangle(area)))}`,
      );
    }
  }

  get charts(): readonly string[] {
    return chartNames(this.owner.pkg, this.sheet.part);
  }

  addChart(spec: ChartSpec): string {
    const { pkg, dialect } = this.owner;
    parseRectangle(spec.over);
    const data = spec.series.map((series) => {
      return { series, x: this.#numbers(series.x), y: this.#numbers(series.y) };
    });
    return addChart(pkg, this.sheet.part, dialect, spec, data);
  }

  removeChart(name: string): void {
    removeChart(this.owner.pkg, this.sheet.part, name);
  }

  /** A range of numbers as a chart names it, with what is stored in its cells now. */
  #numbers(text: string): SeriesNumbers {
    const { sheet: name, cells } = splitAddress(text);
    const sheet = name === null ? this.sheet : this.owner.sheet(name);
    if (sheet === undefined) throw new RangeError(`The workbook has no sheet "${name}".`);
    const range = parseRectangle(cells);
    const numbers: (number | null)[] = [];
    for (let row = range.top; row <= range.bottom; row++)
      for (let col = range.left; col <= range.right; col++) {
        const value = sheet.cell(row, col)?.value;
        numbers.push(typeof value === "number" ? value : null);
      }
    return { formula: `${quotedSheet(sheet.name)}!${absoluteText(rectangleText(range))}`, numbers };
  }

  #read(): SheetRules {
    if (this.#rules === undefined) {
      const frame = SheetFrame.of(this.owner.pkg, this.sheet.part);
      const { inFile, byPriority } = readConditionalFormats(frame, this.owner.looks);
      this.#byPriority = byPriority;
      this.#rules = { conditionalFormats: inFile, validations: readValidations(frame) };
    }
    return this.#rules;
  }
}

/** Brings what is known of a sheet up to date with a change. */
function takeUp(data: SheetData, changes: Arrangement): void {
  for (const [col, width] of changes.widths ?? [])
    if (width === null) data.columnWidths.delete(col);
    else data.columnWidths.set(col, width);
  mark(data.hiddenCols, changes.hiddenCols);
  mark(data.hiddenRows, changes.hiddenRows);
  if (changes.merges) data.merges.splice(0, data.merges.length, ...changes.merges);
  if (changes.frozen) {
    data.frozenRows = changes.frozen.rows;
    data.frozenCols = changes.frozen.cols;
  }
}

function mark(hidden: Set<number>, changes: ReadonlyMap<number, boolean> | undefined): void {
  for (const [line, isHidden] of changes ?? [])
    if (isHidden) hidden.add(line);
    else hidden.delete(line);
}
