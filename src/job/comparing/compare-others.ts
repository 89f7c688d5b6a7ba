import { cellName, maxCols, sameName } from "../../cells";
import { acceptedSheetTitle } from "../accepting";
import { jobTitle, layouts } from "../columns";
import { fitSheetTitle } from "../fit";
import type { Grid } from "../grid";
import type { Job, Table } from "../read";
import { CellChanges } from "./cell-changes";
import type { Change } from "./change";
import { aboutOf, pairRows } from "./compare-rows";

/** Sheets of a job whose changes are told in other words: settings, answers, acceptances. */
const toldOtherwise = [jobTitle, fitSheetTitle, acceptedSheetTitle];

/**
 * What is otherwise in cells that no field of the job names, matched by the readings about them,
 * wherever those moved. In a job what was typed and formulas alone: results there only follow.
 */
export function compareOthers(before: Job, after: Job, isJob: boolean): Change[] {
  return after.file.sheets.flatMap((now) => {
    const old = before.file.sheets.find(({ name }) => sameName(name, now.name));
    if (!old || (isJob && toldOtherwise.some((name) => sameName(name, now.name)))) return [];
    const changes = new OtherCells(old, now, before, after).changes();
    return isJob ? changes.filter(({ kind }) => kind !== "result") : changes;
  });
}

/** The cells of one sheet in both states, and which of them its readings leave. */
class OtherCells {
  private readonly read = { old: new Set<number>(), now: new Set<number>() };
  /** Rows and columns of the later state with those of the earlier one. */
  private readonly rows = new Map<number, number>();
  private readonly cols = new Map<number, number>();
  private readonly added = new Set<number>();
  private readonly abouts = new Map<number, string>();

  constructor(
    private readonly old: Grid,
    private readonly now: Grid,
    before: Job,
    private readonly after: Job,
  ) {
    for (const { kind } of layouts) this.match(before.tables[kind], after.tables[kind]);
  }

  changes(): Change[] {
    const { old, now } = this;
    const [rowOf, colOf] = [follow(this.rows), follow(this.cols)];
    const found = new CellChanges();
    for (let row = 0; row < Math.max(old.rowCount, now.rowCount); row++)
      for (let col = 0; col < Math.max(old.colCount, now.colCount); col++) {
        const [r, c] = [rowOf(row), colOf(col)];
        if (r < 0 || c < 0 || this.added.has(row)) continue;
        if (this.read.now.has(spot(row, col)) || this.read.old.has(spot(r, c))) continue;
        const held = (grid: Grid, row: number, col: number) => {
          return { row, col, value: grid.value(row, col), formula: grid.formula(row, col) };
        };
        found.compare(held(old, r, c), held(now, row, col), {
          sheet: now.name,
          cell: cellName(row, col),
          about: this.abouts.get(row) ?? "",
          field: "",
          rows: 1,
        });
      }
    return found.all();
  }

  /** Matches the rows and columns of a table's readings. */
  private match(before: Table | undefined, after: Table | undefined): void {
    const isHere = (table: Table | undefined, i: number) => table?.home(i).grid === this.now;
    const { pairs, added, removed } = pairRows(before, after);
    for (const i of [...pairs.map(([was]) => was), ...removed])
      this.take(before, i, this.old, this.read.old);
    for (const i of [...pairs.map(([, is]) => is), ...added]) {
      if (!after || !this.take(after, i, this.now, this.read.now)) continue;
      const { row } = after.home(i);
      if (after.readingsAt(this.now.name, row).length === 1)
        this.abouts.set(row, aboutOf(this.after, after, i));
    }
    for (const i of added) {
      const row = after?.home(i).row ?? -1;
      if (isHere(after, i) && after?.readingsAt(this.now.name, row).length === 1)
        this.added.add(row);
    }
    for (const [was, i] of pairs)
      for (const { key } of after?.layout.fields ?? []) {
        const [p, q] = [before?.place(key, was), after?.place(key, i)];
        if (p?.grid !== this.old || q?.grid !== this.now) continue;
        this.rows.set(q.row, p.row);
        this.cols.set(q.col, p.col);
      }
  }

  /** Marks the cells of a reading; whether it stands in the sheet. */
  private take(table: Table | undefined, i: number, grid: Grid, read: Set<number>): boolean {
    if (table?.home(i).grid !== grid) return false;
    for (const { key } of table.layout.fields) {
      const at = table.place(key, i);
      if (at) read.add(spot(at.row, at.col));
    }
    return true;
  }
}

const spot = (row: number, col: number) => row * maxCols + col;

/** Where a row or column stood: as far off as the nearest one before it that is known. */
function follow(pairs: ReadonlyMap<number, number>): (at: number) => number {
  const known = [...pairs.keys()].sort((a, b) => a - b);
  return (at) => {
    let [low, high] = [0, known.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((known[middle] as number) <= at) low = middle + 1;
      else high = middle;
    }
    const near = known[low - 1];
    return near === undefined ? at : at + (pairs.get(near) as number) - near;
  };
}
