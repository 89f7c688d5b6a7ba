import { parseA1Ref, parseStructRef } from "@borgar/fx/xlsx";
import {
  absoluteText,
  addressText,
  maxCols,
  maxRows,
  type Place,
  parseRectangle,
  type Rectangle,
  type Spot,
  sheetPrefix,
} from "../../cells";
import { NoNativeForm } from "../../rules";
import type { Workbook } from "../../workbook";

const lastRow = maxRows - 1;
const lastCol = maxCols - 1;

/** An absolute reference with its sheet, good in any cell of the workbook. */
export function farText(place: Place): string {
  return sheetPrefix(place.sheet) + absoluteText(addressText(place));
}

/** The reference as a formula at `home` would write it. */
export function nearText(place: Place, home: Spot): string {
  const far = farText(place);
  return place.sheet === home.sheet ? far.slice(far.lastIndexOf("!") + 1) : far;
}

export function rowsOf({ top, bottom }: Rectangle): number {
  return bottom - top + 1;
}

export function colsOf({ left, right }: Rectangle): number {
  return right - left + 1;
}

/** Finds what the references of a workbook's formulas mean. */
export class Places {
  constructor(private readonly workbook: Workbook) {}

  /** `B2`, `Sheet!A:A`; undefined for another workbook or several sheets at once. */
  ofRange(text: string, home: Spot): Place | undefined {
    const parsed = parseA1Ref(text);
    if (!parsed || !("range" in parsed) || parsed.workbookName) return undefined;
    const sheet = this.sheetName(parsed.sheetName || home.sheet);
    if (sheet === undefined) return undefined;
    const { top, left, bottom, right } = parsed.range as unknown as Rectangle;
    return {
      sheet,
      top: top ?? 0,
      left: left ?? 0,
      bottom: bottom ?? lastRow,
      right: right ?? lastCol,
    };
  }

  /** A defined name or a table as a range; the name itself where it stands for something else. */
  ofName(text: string, home: Spot): Place | { readonly name: string } {
    const parsed = parseA1Ref(text);
    const name = parsed && "name" in parsed ? String(parsed.name) : text;
    const sheet = (parsed && "sheetName" in parsed && parsed.sheetName) || home.sheet;
    const same = (a: string | null, b: string) => a?.toLowerCase() === b.toLowerCase();
    const known = this.workbook.names.filter((entry) => same(entry.name, name));
    const own = known.find((entry) => same(entry.sheet, sheet));
    const found = own ?? known.find((entry) => entry.sheet === null);
    if (found) {
      const isFixed = /^(.*!)?\$[A-Z]+\$\d+(:\$[A-Z]+\$\d+)?$/i.test(found.formula);
      const place = isFixed ? this.ofRange(found.formula, { ...home, sheet }) : undefined;
      return place ?? { name: own ? sheetPrefix(sheet) + name : name };
    }
    const table = this.workbook.tables.find((entry) => same(entry.name, name));
    if (!table) throw new NoNativeForm(`the name ${name}, which the workbook does not define`);
    return this.ofTable(`${table.name}[#Data]`, home);
  }

  /** `Fans[Area]`, `Fans[[#This Row],[Area]]`. */
  ofTable(text: string, home: Spot): Place {
    const parsed = parseStructRef(text);
    const table = this.workbook.tables.find(
      (entry) => entry.name.toLowerCase() === parsed?.table?.toLowerCase(),
    );
    if (!parsed || !table || (parsed.workbookName && parsed.workbookName !== "0"))
      throw new NoNativeForm(`the table reference ${text}`);
    const all = parseRectangle(table.ref);
    const columns = (parsed.columns ?? []).map((column) => {
      const at = table.columns.findIndex((each) => each.toLowerCase() === column.toLowerCase());
      if (at < 0) throw new NoNativeForm(`the table reference ${text}: no such column`);
      return all.left + at;
    });
    const left = columns.length > 0 ? Math.min(...columns) : all.left;
    const right = columns.length > 0 ? Math.max(...columns) : all.right;
    const data = {
      top: all.top + (table.headerRow ? 1 : 0),
      bottom: all.bottom - (table.totalsRow ? 1 : 0),
    };
    const [section, ...more] = parsed.sections ?? [];
    if (more.length > 0) throw new NoNativeForm(`the table reference ${text}`);
    const rows = { top: all.top, bottom: all.bottom };
    const at = { sheet: table.sheet, left, right };
    switch (section?.toLowerCase() ?? "data") {
      case "this row":
        return { ...at, top: home.row, bottom: home.row };
      case "all":
        return { ...at, ...rows };
      case "headers":
        return { ...at, top: all.top, bottom: all.top };
      case "totals":
        return { ...at, top: all.bottom, bottom: all.bottom };
      default:
        return { ...at, ...data };
    }
  }

  /** Last used row of a sheet and some more, where a reference names whole columns. */
  clipped(place: Place, spare: number): Place {
    const sheet = this.workbook.sheet(place.sheet);
    if (!sheet || place.bottom < lastRow) return place;
    return { ...place, bottom: Math.max(place.top, sheet.rowCount - 1 + spare) };
  }

  private sheetName(name: string): string | undefined {
    return this.workbook.sheet(name)?.name;
  }
}
