import { type Finding, type FindingKind, kindEntry, type Mend } from "./findings";
import { cellName } from "./grid";
import type { Table } from "./read";

type Words = Pick<Finding, "what" | "effect" | "mend"> & { readonly apply?: Mend | undefined };

/** Collects findings, then leaves out those that another one explains. */
export class Report {
  private readonly found: Finding[] = [];

  /** A finding at one cell of a table row. */
  at(kind: FindingKind, table: Table, key: string, i: number, about: string, words: Words): void {
    const { grid, row, col } = table.placeOrHome(key, i);
    this.add(kind, grid.name, cellName(row, col), row, about, words);
  }

  add(
    kind: FindingKind,
    sheet: string,
    cell: string,
    row: number,
    about: string,
    { apply, ...words }: Words,
  ): void {
    const { severity } = kindEntry(kind);
    const finding: Finding = { kind, severity, sheet, cell, row, about, ...words };
    this.found.push(apply ? { ...finding, apply } : finding);
  }

  /** Takes up findings that were made elsewhere. */
  include(findings: readonly Finding[]): void {
    this.found.push(...findings);
  }

  /** What stands, by sheet in the order first met, then by row and cell. */
  findings(): Finding[] {
    const byCell = new Map<string, FindingKind[]>();
    const spoiledRows = new Set<string>();
    for (const { kind, sheet, cell, row } of this.found) {
      const key = `${sheet}!${cell}`;
      byCell.set(key, [...(byCell.get(key) ?? []), kind]);
      if (kindEntry(kind).spoilsRow) spoiledRows.add(`${sheet}!${row}`);
    }
    const sheets = [...new Set(this.found.map((finding) => finding.sheet))];
    return this.found
      .filter(({ kind, sheet, cell, row }) => {
        const beside = byCell.get(`${sheet}!${cell}`) ?? [];
        if (beside.some((other) => kindEntry(other).explains?.includes(kind))) return false;
        return !(kindEntry(kind).yields && spoiledRows.has(`${sheet}!${row}`));
      })
      .sort(
        (a, b) =>
          sheets.indexOf(a.sheet) - sheets.indexOf(b.sheet) ||
          a.row - b.row ||
          a.cell.length - b.cell.length ||
          a.cell.localeCompare(b.cell),
      );
  }
}
