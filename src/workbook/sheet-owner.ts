import type { Looks } from "./arrange/rules";
import type { Dialect } from "./dialect";
import type { Package } from "./package";
import type { CellColors } from "./restyle";
import type { SheetData } from "./sheet-data";
import type { Sheet, TableInfo } from "./types";

/** What a sheet needs of the workbook it belongs to. */
export interface SheetOwner {
  readonly pkg: Package;
  readonly dialect: Dialect;
  readonly looks: Looks;
  read(): SheetData;
  tables(): readonly TableInfo[];
  formatCode(style: number): string;
  colors(style: number): CellColors;
  /** Another sheet of the workbook. */
  sheet(name: string): Sheet | undefined;
  /** Gives the sheet a defined name of its own, or another formula; null removes it. */
  setOwnName(name: string, formula: string | null): void;
  edited(): void;
}
