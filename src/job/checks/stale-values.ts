import {
  agrees,
  type CellValue,
  cellName,
  isBlankCell,
  isCellError,
  type Place,
  type Spot,
  shown,
  shownApart,
} from "../../cells";
import { hasFormula } from "../grid";
import type { Job } from "../read";
import type { Words } from "../report";
import { aboutRow } from "./about";
import type { Check } from "./check";
import { Circles } from "./circles";

/** These give another value at every look; a stored one is never stale. */
const volatile = /\b(TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\s*\(/i;

/** Formula cells whose stored value is not what the formula gives, or that lead back to themselves. */
export const checkStaleValues: Check = (job, report, { cells }) => {
  const { calculator } = job.file;
  if (!calculator) return;
  let first: Spot | undefined;
  let left = 0;
  const circles = new Circles(job);
  for (const grid of job.file.sheets) {
    const own = cells?.filter(({ sheet }) => sheet === grid.name);
    for (const row of own ? rowsOf(own) : Array(grid.rowCount).keys()) {
      for (let col = 0; col < grid.colCount; col++) {
        if (!hasFormula(grid, row, col)) continue;
        const again = calculator.recompute(grid.name, row, col);
        if (calculator.isSpent) {
          first ??= { sheet: grid.name, row, col };
          left++;
        }
        if ("unsupported" in again) continue;
        const stored = grid.value(row, col);
        const isStale = !agrees(stored, again.value);
        if (!isStale && !isCellError(stored)) continue;
        const tell = (kind: "formula-circular" | "value-stale", words: Words) => {
          const about = nameAt(job, grid.name, row, col);
          report.add(kind, grid.name, cellName(row, col), row, about, words);
        };
        const circle = circles.sizeAt({ sheet: grid.name, row, col });
        if (circle > 0) {
          tell("formula-circular", inCircle(circle));
          continue;
        }
        const formula = grid.formula(row, col) ?? "";
        if (!isStale || volatile.test(formula) || !calculator.isKnownToAgree(formula)) continue;
        if (stored !== null && readsUnstored(job, calculator.precedents(grid.name, row, col)))
          continue;
        tell("value-stale", {
          what: toldApart(stored, again.value),
          effect: "Anyone who opens the file without recalculating reads the stored value.",
          mend: isCellError(stored)
            ? "The file was saved while the function was not available: load the add-in, then recalculate and save."
            : "Recalculate and save. If it comes back, someone edited the file outside the spreadsheet.",
        });
      }
    }
  }
  if (first)
    report.add("value-unchecked", first.sheet, cellName(first.row, first.col), first.row, "", {
      what: `from this cell on ${left === 1 ? "1 formula was" : `${left.toLocaleString("en")} formulas were`} not worked out again: those of the workbook look at more cells, or are longer together, than any check can take`,
      effect: "Their stored values were taken as they are.",
      mend: "Let formulas read the cells they need, not whole columns anew in every row, and copy them down instead of writing each anew.",
    });
};

/** So many rows of a range are looked at. */
const mostRows = 1_000;

/** Whether a cell is read whose own formula has nothing stored: what follows from a blank there says nothing. */
function readsUnstored({ file }: Job, places: readonly Place[]): boolean {
  return places.some(({ sheet, top, left, bottom, right }) => {
    const grid = file.sheets.find(({ name }) => name === sheet);
    const end = Math.min(bottom, top + mostRows, (grid?.rowCount ?? 0) - 1);
    for (let row = top; grid && row <= end; row++)
      for (let col = left; col <= Math.min(right, grid.colCount - 1); col++)
        if (grid.value(row, col) === null && hasFormula(grid, row, col)) return true;
    return false;
  });
}

/** What is told of the formulas of a circle, all at once. */
function inCircle(formulas: number): Words {
  return {
    what:
      formulas === 1
        ? "the formula reads its own cell"
        : `the formulas of ${formulas.toLocaleString("en")} cells read each other in a circle`,
    effect: "It has no end: what the cells hold was left from before, or from half way.",
    mend: "Let one of them read a typed value, or a cell that does not lead back to it.",
    cause: `circle of ${formulas}`,
  };
}

function rowsOf(places: readonly Place[]): ReadonlySet<number> {
  const rows = new Set<number>();
  for (const { top, bottom } of places) for (let row = top; row <= bottom; row++) rows.add(row);
  return rows;
}

function nameAt(job: Job, sheet: string, row: number, col: number): string {
  for (const table of Object.values(job.tables)) {
    const [i] = table.readingsAt(sheet, row, col);
    if (i !== undefined) return aboutRow(table)(i);
  }
  return "";
}

/** Both values in words, with as many digits as it takes to see that they differ. */
function toldApart(stored: CellValue, fresh: CellValue): string {
  const [was, is] =
    typeof stored === "number" && typeof fresh === "number"
      ? shownApart(stored, fresh)
      : [stored, fresh].map((value) => text(value, shown));
  const [before, now] =
    was === is ? [stored, fresh].map((value) => text(value, String)) : [was, is];
  return `${before} is stored where the formula gives ${now}`;
}

/** The longest text of a cell that is told whole. */
const longest = 60;

function text(value: CellValue, numberText: (value: number) => string): string {
  if (isBlankCell(value)) return "nothing";
  if (isCellError(value)) return value.error;
  if (typeof value === "number") return numberText(value);
  const whole = String(value);
  return `"${whole.length > longest ? `${whole.slice(0, longest)}…` : whole}"`;
}
