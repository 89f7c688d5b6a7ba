import { kept } from "../cells";
import type { Audit } from "./audit";
import type { LoneFormula } from "./audit-column";
import { missedRow, type Target, targetName, targetOf } from "./ranges";

interface Range extends LoneFormula {
  readonly target: Target;
}

/**
 * What formulas do all alike, and so is no departure: ranges that end before the data do, names of
 * no function, other workbooks. Each is told of once, at its first cell.
 */
export function auditRanges(audit: Audit, formulas: readonly LoneFormula[]): void {
  const ranges: Range[] = [];
  for (const lone of formulas) {
    tellNames(audit, lone);
    const { shape, scan, row, col } = lone;
    for (const { reach } of shape.parts) {
      if (!reach?.rows) continue;
      const [first, last] = reach.rows;
      // In rows alike a range that moves along is a window of its own.
      if (lone.count > 1 && !(first.fixed && last.fixed)) {
        if (!first.fixed && !last.fixed) tellSliding(audit, lone, reach.sheet, last.at - first.at);
        continue;
      }
      const target = targetOf(reach, scan, row, col, audit.scans);
      if (target) ranges.push({ ...lone, target });
    }
  }
  const edges = byEdge(ranges);
  for (const range of ranges) {
    const { target, scan, row, col, count } = range;
    const missed = missedRow(target, row);
    if (missed === undefined || edges.get(missed)?.some((other) => beginsAt(other, target, missed)))
      continue;
    audit.add("formula-short-range", scan.grid.name, row, col, {
      what: `${targetName(target)} leaves out row ${missed + 1}${count > 1 ? `, in this and ${count - 1} more rows` : ""}`,
      effect: "What stands in the rows left out is not found or not counted.",
      mend: "Let the range reach over all rows of the data, in every row of this column.",
    });
  }
}

/** What is aimed at, each once, by its first and by its last row. */
function byEdge(ranges: readonly Range[]): Map<number, Target[]> {
  const edges = new Map<number, Target[]>();
  const met = new Set<string>();
  for (const { target } of ranges) {
    const { scan, top, left, bottom, right } = target;
    const key = `${scan.grid.name} ${top} ${left} ${bottom} ${right}`;
    if (met.has(key)) continue;
    met.add(key);
    for (const row of new Set([top, bottom])) kept(edges, row, () => []).push(target);
  }
  return edges;
}

/** Whether another range goes on where this one ends, as the parts of a grouped sum do. */
function beginsAt(other: Target, target: Target, missed: number): boolean {
  if (other.scan !== target.scan || other.left > target.right || other.right < target.left)
    return false;
  return missed > target.bottom ? other.top === missed : other.bottom === missed;
}

/** A range of another sheet that moves down with its row misses the first rows soon. */
function tellSliding(audit: Audit, lone: LoneFormula, sheet: string, height: number): void {
  const { scan, row, col, count, lastRow } = lone;
  const other = audit.scans.get(sheet.toLowerCase());
  if (sheet === "" || !other || other === scan || height < 2 || count < 3) return;
  audit.add("formula-fixed-reference", scan.grid.name, row, col, {
    what: `its range on ${other.grid.name} is not fixed: it moves down ${lastRow - row} rows until row ${lastRow + 1}`,
    effect: "The rows further down look at only a part of the data.",
    mend: "Fix the range with $ in this row and copy the formula down.",
  });
}

function tellNames(audit: Audit, { shape, scan, row, col, count }: LoneFormula): void {
  const more = count > 1 ? `, in this and ${count - 1} more rows` : "";
  const [unknown] = shape.unknown;
  if (unknown)
    audit.add("formula-unknown-function", scan.grid.name, row, col, {
      what: `there is no function ${unknown}${more}`,
      effect: "The cell shows an error as soon as it is worked out anew.",
      mend: "Choose a function from the list, or load the version of the add-in that has it.",
    });
  const [foreign] = shape.foreign;
  if (foreign)
    audit.add("formula-other-workbook", scan.grid.name, row, col, {
      what: `the formula reads ${foreign}, another workbook${more}`,
      effect: "The result hangs on a file that a reviewer may not have, or has in another state.",
      mend: "Bring the cells that are needed into this workbook.",
    });
}
