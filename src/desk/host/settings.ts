import type { Sheet } from "../../workbook";
import type { Book } from "./book";
import { invalidArgument } from "./wire/errors";
import type { Json } from "./wire/messages";

/** The hidden sheet that keeps the settings: keys in column A, values as JSON from column B on. */
export const settingsSheet = "Fanrow settings";
/** A cell holds 32,767 characters; longer values go on in the next column. */
const longest = 32_000;

/** Settings of the pane that travel with the workbook file. */
export class Settings {
  constructor(
    private readonly book: Book,
    private readonly addHiddenTab: (name: string) => Sheet,
  ) {}

  keys(): string[] {
    return [...this.places().keys()];
  }

  has(key: string): boolean {
    return this.places().has(key);
  }

  /** The value of a key; undefined where there is none. */
  get(key: string): Json | undefined {
    const row = this.places().get(key);
    if (row === undefined) return undefined;
    let text = "";
    for (let col = 1; ; col++) {
      const value = this.sheet?.cell(row, col)?.value ?? null;
      if (typeof value !== "string") break;
      text += value;
    }
    try {
      return JSON.parse(text) as Json;
    } catch {
      return text;
    }
  }

  set(key: string, value: Json): void {
    if (key === "") throw invalidArgument("A setting needs a key.");
    const sheet = this.sheet ?? this.addHiddenTab(settingsSheet);
    const row = this.places().get(key) ?? this.freeRow(sheet);
    const text = JSON.stringify(value);
    sheet.setValue(row, 0, key);
    let col = 1;
    for (let at = 0; at < text.length; at += longest, col++)
      sheet.setValue(row, col, text.slice(at, at + longest));
    for (; sheet.cell(row, col) !== undefined; col++) sheet.clear(row, col);
    this.book.touched({ kind: "settings" });
  }

  remove(key: string): void {
    const row = this.places().get(key);
    if (row === undefined) return;
    const { sheet } = this;
    for (let col = 0; sheet?.cell(row, col) !== undefined; col++) sheet.clear(row, col);
    this.book.touched({ kind: "settings" });
  }

  private get sheet(): Sheet | undefined {
    return this.book.workbook.sheet(settingsSheet);
  }

  /** The row of each key. */
  private places(): Map<string, number> {
    const places = new Map<string, number>();
    const { sheet } = this;
    for (let row = 0; row < (sheet?.rowCount ?? 0); row++) {
      const key = sheet?.cell(row, 0)?.value ?? null;
      if (typeof key === "string") places.set(key, row);
    }
    return places;
  }

  private freeRow(sheet: Sheet): number {
    let row = 0;
    while ((sheet.cell(row, 0)?.value ?? null) !== null) row++;
    return row;
  }
}
