import { holdsCell, type Rectangle, rectangleOf } from "../cells";
import type { DefinedName, TableInfo, Workbook } from "../workbook";
import type { Clock } from "./area";
import { Grid } from "./grid";

/** What the model needs of a workbook. */
export type WorkbookView = Pick<Workbook, "sheets" | "sheet" | "names" | "tables" | "date1904">;

interface Tables {
  readonly of: readonly TableInfo[];
  readonly named: ReadonlyMap<string, TableInfo>;
  /** By sheet, each with its cells. */
  readonly placed: ReadonlyMap<string, readonly { table: TableInfo; area: Rectangle }[]>;
}

/** The sheets of a workbook as grids, each read when it is first needed. */
export class Book {
  readonly clock: Clock = { revision: 1, writes: 0 };
  private readonly grids = new Map<string, Grid>();
  /** The sheet asked for last, as the next question is most often about it too. */
  private latest: Grid | undefined;
  private listed: Tables | undefined;

  constructor(
    readonly workbook: WorkbookView,
    readonly now: () => Date,
  ) {}

  /** By name, whatever the case; undefined where the workbook has no such sheet. */
  grid(name: string): Grid | undefined {
    if (this.latest?.name === name) return this.latest;
    this.latest = this.find(name);
    return this.latest;
  }

  private find(name: string): Grid | undefined {
    const key = name.toLowerCase();
    const known = this.grids.get(key);
    if (known) return known;
    const sheet = this.workbook.sheet(name);
    if (!sheet) return undefined;
    const grid = new Grid(sheet, this.clock);
    this.grids.set(key, grid);
    return grid;
  }

  /** Every sheet, in the order of the tabs. */
  all(): Grid[] {
    return this.workbook.sheets.map((sheet) => this.grid(sheet.name)!);
  }

  /** The name as a formula on a sheet sees it: its own before the workbook's. */
  name(name: string, sheet: string): DefinedName | undefined {
    const wanted = name.toLowerCase();
    const found = this.workbook.names.filter((entry) => entry.name.toLowerCase() === wanted);
    return (
      found.find((entry) => entry.sheet?.toLowerCase() === sheet.toLowerCase()) ??
      found.find((entry) => entry.sheet === null)
    );
  }

  table(name: string): TableInfo | undefined {
    return this.tables().named.get(name.toLowerCase());
  }

  /** The table a cell stands in. */
  tableAt(grid: Grid, row: number, col: number): TableInfo | undefined {
    const placed = this.tables().placed.get(grid.name.toLowerCase());
    return placed?.find(({ area }) => holdsCell(area, row, col))?.table;
  }

  /** Looked through once for as long as the workbook gives the same. */
  private tables(): Tables {
    const { tables } = this.workbook;
    if (this.listed?.of === tables) return this.listed;
    const named = new Map<string, TableInfo>();
    const placed = new Map<string, { table: TableInfo; area: Rectangle }[]>();
    for (const table of tables) {
      const [name, sheet] = [table.name.toLowerCase(), table.sheet.toLowerCase()];
      if (!named.has(name)) named.set(name, table);
      const area = rectangleOf(table.ref);
      if (!placed.has(sheet)) placed.set(sheet, []);
      if (area) placed.get(sheet)?.push({ table, area });
    }
    this.listed = { of: tables, named, placed };
    return this.listed;
  }

  /** Forgets what was read, after the workbook was changed past the model. */
  forget(): void {
    this.grids.clear();
    this.latest = undefined;
    this.clock.revision++;
  }
}
