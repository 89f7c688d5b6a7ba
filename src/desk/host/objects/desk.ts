import type { TableInfo } from "../../../workbook";
import type { CellArea, SheetTab } from "../book";
import type { HostChart } from "../charts/host-chart";
import type { HostRange } from "../host-range";
import type { ConditionalFormat } from "../marks/conditional-format";
import type { NamedFormula } from "../names";
import type { OpenBook } from "../open-book";
import type { Served } from "../wire/served";

/** A column of a table, by its place from 0. */
export interface TableColumn {
  readonly table: TableInfo;
  readonly index: number;
}

/** A conditional format and the sheet it is on. */
export interface MarkOnSheet {
  readonly tab: SheetTab;
  readonly mark: ConditionalFormat;
}

/** A chart and the sheet it is on. */
export interface ChartOnSheet {
  readonly tab: SheetTab;
  readonly chart: HostChart;
}

/** The open workbook, and how each of its things is served to the client. */
export interface Desk {
  readonly book: OpenBook;
  workbook(): Served;
  application(): Served;
  workbookProtection(): Served;
  worksheets(): Served;
  worksheet(tab: SheetTab): Served;
  sheetProtection(tab: SheetTab): Served;
  freezePanes(tab: SheetTab): Served;
  range(range: HostRange): Served;
  rangeFormat(range: HostRange): Served;
  rangeFill(range: HostRange): Served;
  rangeFont(range: HostRange): Served;
  rangeProtection(range: HostRange): Served;
  borders(cells: CellArea): Served;
  charts(tab: SheetTab): Served;
  chart(chart: ChartOnSheet): Served;
  pageLayout(tab: SheetTab): Served;
  /** Several ranges of one sheet. */
  areas(cells: CellArea): Served;
  autoFilter(tab: SheetTab): Served;
  validation(range: HostRange): Served;
  marks(cells: CellArea): Served;
  mark(mark: MarkOnSheet): Served;
  /** Those of the workbook where no sheet is given. */
  names(tab: SheetTab | null): Served;
  name(entry: NamedFormula): Served;
  /** Those of all sheets where no sheet is given. */
  tables(tab: SheetTab | null): Served;
  table(table: TableInfo): Served;
  columns(table: TableInfo): Served;
  column(column: TableColumn): Served;
}
