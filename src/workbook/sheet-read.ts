import { serialOfIsoDate } from "./dates";
import { damaged } from "./error";
import type { Budget } from "./limits";
import { toRef } from "./refs";
import { RowCursor } from "./row-cursor";
import { SharedFormula } from "./shared-formula";
import { StringItem } from "./shared-strings";
import { type Row, SheetData, type StoredFormula } from "./sheet-data";
import { readSheetSetting } from "./sheet-settings";
import { decodeXString } from "./text";
import type { CellValue } from "./types";
import { prefixOf, readXml, type Tag } from "./xml";

export interface ReadContext {
  readonly depth: number;
  readonly cells: Budget;
  readonly date1904: boolean;
  /** The shared strings, read when the first cell needs them. */
  strings(): readonly string[];
}

/** Reads a sheet part in one pass. */
export function readSheet(part: string, bytes: Uint8Array, context: ReadContext): SheetData {
  const data = new SheetData();
  const cursor = new RowCursor(part);
  const shared = new Map<string, SharedFormula>();
  // Cells that name a shared formula before its master was met: rare, filled in when it is.
  const waiting = new Map<string, { row: Row; col: number }[]>();
  let strings: readonly string[] | undefined;

  let root = "";
  let [nSheetData, nRow, nC, nV, nF, nIs] = ["", "", "", "", "", ""];
  let item = new StringItem("", "");
  let inSheetData = false;
  let sawCells = false;
  /** Depth inside the current cell: 0 outside, 1 in c, 2 in its v, f or is. */
  let cellDepth = 0;
  let row: Row | undefined;

  // The current cell.
  let type = "";
  let style = 0;
  let value = "";
  let hasValue = false;
  let hasInline = false;
  let formula = "";
  let formulaTag: Tag | undefined;
  /** Which text is being collected. */
  let collecting: "" | "v" | "f" | "is" = "";

  const number = (text: string): number => {
    const parsed = Number(text);
    if (!Number.isFinite(parsed) || text.trim() === "") {
      throw damaged(part, `cell ${toRef(cursor.row, cursor.col)} holds "${text}" for a number`);
    }
    return parsed;
  };

  const readValue = (): CellValue => {
    if (type === "inlineStr") return hasInline ? item.take() : null;
    if (type === "str") return hasValue || formulaTag !== undefined ? decodeXString(value) : null;
    if (value === "") return null;
    switch (type) {
      case "":
      case "n":
        return number(value);
      case "s": {
        strings ??= context.strings();
        const text = strings[Number(value)];
        if (text === undefined) {
          throw damaged(
            part,
            `cell ${toRef(cursor.row, cursor.col)} names a string that is missing`,
          );
        }
        return text;
      }
      case "b":
        return value === "1" || value === "true";
      case "e":
        return { error: decodeXString(value) };
      case "d":
        return serialOfIsoDate(value, context.date1904) ?? number(value);
      default:
        throw damaged(part, `cell ${toRef(cursor.row, cursor.col)} is of unknown type "${type}"`);
    }
  };

  const readFormula = (): StoredFormula => {
    if (formulaTag === undefined) return null;
    const { t, si, ref } = formulaTag.attributes;
    if (t === "array" && ref !== undefined) {
      data.arrayRefs.set(SheetData.key(cursor.row, cursor.col), ref);
    }
    // A what-if table has no formula of its own; its cells keep the values stored.
    if (t === "dataTable") return null;
    if (t !== "shared" || si === undefined) return formula === "" ? null : formula;
    const known = shared.get(si);
    if (formula === "") {
      if (known === undefined) {
        const others = waiting.get(si) ?? [];
        others.push({ row: row as Row, col: cursor.col });
        waiting.set(si, others);
      }
      return known ?? null;
    }
    // A second text under the same number stands for itself unless it opens a new range.
    if (known !== undefined && ref === undefined) return formula;
    const master = new SharedFormula(cursor.row, cursor.col, formula);
    shared.set(si, master);
    for (const { row: into, col } of waiting.get(si) ?? []) into.formulas[into.find(col)] = master;
    waiting.delete(si);
    return master;
  };

  const endCell = (): void => {
    const kept = readFormula();
    const content = readValue();
    const into = row as Row;
    const { col } = cursor;
    const last = into.cols.length - 1;
    let place = last + 1;
    if (last >= 0 && col <= (into.cols[last] as number)) {
      place = into.find(col);
      if (place >= 0) throw damaged(part, `it holds the cell ${toRef(cursor.row, col)} twice`);
      place = ~place;
    }
    into.insert(place, col, content, kept, style);
  };

  const openInCell = (tag: Tag): void => {
    cellDepth++;
    if (collecting === "is") item.open(tag.name);
    if (cellDepth !== 2) return;
    if (tag.name === nV) {
      hasValue = true;
      collecting = "v";
    } else if (tag.name === nF) {
      formulaTag = tag;
      collecting = "f";
    } else if (tag.name === nIs) {
      hasInline = true;
      collecting = "is";
    }
  };

  const openInData = (tag: Tag): void => {
    const { attributes } = tag;
    if (tag.name === nC) {
      if (row === undefined) throw damaged(part, "a cell stands outside a row");
      context.cells.take(1);
      cursor.nextCol(attributes.r);
      type = attributes.t ?? "";
      style = attributes.s === undefined ? 0 : Number(attributes.s);
      value = "";
      formula = "";
      hasValue = false;
      hasInline = false;
      formulaTag = undefined;
      cellDepth = 1;
    } else if (tag.name === nRow) {
      const index = cursor.nextRow(attributes.r);
      row = data.row(index);
      if (attributes.s !== undefined && attributes.customFormat !== undefined) {
        row.style = Number(attributes.s);
      }
      if (attributes.hidden === "1" || attributes.hidden === "true") data.hiddenRows.add(index);
    }
  };

  readXml(part, bytes, context.depth, {
    open(tag) {
      if (cellDepth > 0) openInCell(tag);
      else if (inSheetData) openInData(tag);
      else if (tag.name === nSheetData) inSheetData = sawCells = true;
      else if (root === "") {
        root = tag.name;
        const prefix = prefixOf(root);
        [nSheetData, nRow, nC, nV, nF, nIs] = ["sheetData", "row", "c", "v", "f", "is"].map(
          (name) => prefix + name,
        ) as [string, string, string, string, string, string];
        item = new StringItem(`${prefix}t`, `${prefix}rPh`);
      } else readSheetSetting(data, tag, prefixOf(root), !sawCells);
    },
    close({ name }) {
      if (cellDepth > 0) {
        if (collecting === "is") item.close(name);
        if (--cellDepth === 1) collecting = "";
        else if (cellDepth === 0) endCell();
      } else if (name === nRow) row = undefined;
      else if (name === nSheetData) inSheetData = false;
    },
    text(text) {
      if (collecting === "v") value += text;
      else if (collecting === "f") formula += text;
      else if (collecting === "is") item.text(text);
    },
  });

  return data;
}
