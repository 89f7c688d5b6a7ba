import { parseA1Ref } from "@borgar/fx/xlsx";
import { errors, isCellError, kept, maxCols, maxRows, once } from "../../cells";
import { Area, Areas, type Cells, intersect, type Value } from "../area";
import type { Grid } from "../grid";
import { Reference } from "../program";
import { Unsupported } from "../values";
import { type Expr, oneValue, type Scope, values } from "./expr";

/** The sheet a prefix names; an empty prefix is the formula's own sheet. */
export function sheetOf(
  prefix: { workbookName?: string | undefined; sheetName?: string | undefined },
  scope: Scope,
): Grid {
  if (prefix.workbookName && prefix.workbookName !== "0")
    throw new Unsupported("a link to another workbook");
  const name = prefix.sheetName;
  if (!name) return scope.home;
  const grid = scope.book.grid(name);
  if (grid) return grid;
  if (name.includes(":")) throw new Unsupported(`a reference over several sheets, ${name}`);
  throw new Unsupported(`the sheet ${name}, which is not in the workbook`, errors.ref);
}

/** A cell, range, column or row as written, in a formula that stands at row and col. */
export function rangeExpr(text: string, row: number, col: number, scope: Scope): Expr {
  const parsed = parseA1Ref(text);
  if (!parsed || !("range" in parsed)) throw new Unsupported(`the reference ${text}`);
  const grid = sheetOf(parsed, scope);
  const { range } = parsed;
  if (range.trim) throw new Unsupported(`the trimmed reference ${text}`);
  const whole = { rows: range.top === null, cols: range.left === null };
  const top = range.top ?? 0;
  const left = range.left ?? 0;
  const bottom = whole.rows ? maxRows - 1 : (range.bottom ?? top);
  const right = whole.cols ? maxCols - 1 : (range.right ?? left);
  const fixed = {
    top: whole.rows || range.$top === true,
    left: whole.cols || range.$left === true,
    bottom: whole.rows || range.$bottom === true,
    right: whole.cols || range.$right === true,
  };
  // From A1, where the references of names are written, one column to the left is the last of the sheet.
  const wrapped = (by: number, size: number) => (scope.isName && by > size / 2 ? by - size : by);
  const reference = new Reference(
    grid,
    fixed.top ? top : wrapped(top - row, maxRows),
    fixed.left ? left : wrapped(left - col, maxCols),
    fixed.bottom ? bottom : wrapped(bottom - row, maxRows),
    fixed.right ? right : wrapped(right - col, maxCols),
    fixed,
  );
  const isCell = !text.includes(":") && top === bottom && left === right;
  return isCell ? cellExpr(reference, scope) : areaExpr(reference, scope);
}

function cellExpr(reference: Reference, scope: Scope): Expr {
  scope.reads.push(reference);
  const { grid, top, left, fixed } = reference;
  const run = (row: number, col: number) => {
    const r = fixed.top ? top : top + row;
    const c = fixed.left ? left : left + col;
    return new Area(grid, r, c, r, c);
  };
  // Written out four times because this is the most frequent step of all.
  if (fixed.top && fixed.left) return { run, one: () => grid.get(top, left) };
  if (fixed.top) return { run, one: (_, col) => grid.get(top, left + col) };
  if (fixed.left) return { run, one: (row) => grid.get(top + row, left) };
  return { run, one: (row, col) => grid.get(top + row, left + col) };
}

/** A range; one that is the same for every formula is one area whose reading is kept. */
export function areaExpr(reference: Reference, scope: Scope): Expr {
  scope.reads.push(reference);
  const { grid } = reference;
  const { fixed } = reference;
  if (reference.isFixed) {
    const area = sharedArea(reference, 0);
    return { isRange: true, run: () => area };
  }
  if (fixed.top && fixed.bottom) {
    // A$2:A$99 copied down a column is one area too, one for each column it stands in.
    const byColumn = new Map<number, Area>();
    return {
      isRange: true,
      run: (_, col) => {
        return kept(byColumn, col, () => sharedArea(reference, col));
      },
    };
  }
  return {
    isRange: true,
    run: (row, col) => {
      const { top, left, bottom, right } = reference.at(row, col);
      return new Area(grid, top, left, bottom, right);
    },
  };
}

/** The fixed areas of each sheet, one for all formulas that name it. */
const sharedAreas = once((_: Cells) => new Map<string, Area>());

function sharedArea(reference: Reference, col: number): Area {
  const { top, left, bottom, right } = reference.at(0, col);
  const { grid } = reference;
  return kept(sharedAreas(grid), `${top}:${left}:${bottom}:${right}`, () => {
    const area = new Area(grid, top, left, bottom, right);
    area.memo = { revision: -1, since: 0 };
    return area;
  });
}

/** `first:last`, where either may be computed, as in A1:INDEX(A:A,5). */
export function joined(left: Expr, right: Expr, leftReads: Reference[], scope: Scope): Expr {
  const rightRead = scope.reads.at(-1);
  const leftRead = leftReads.at(-1);
  // Whatever the ends turn out to be, the cells between are among those from one to the other.
  if (leftRead && rightRead)
    scope.reads.push(
      new Reference(leftRead.grid, leftRead.top, leftRead.left, rightRead.bottom, rightRead.right, {
        top: leftRead.fixed.top,
        left: leftRead.fixed.left,
        bottom: rightRead.fixed.bottom,
        right: rightRead.fixed.right,
      }),
    );
  return {
    isRange: true,
    run: (row, col) => {
      const a = left.run(row, col);
      const b = right.run(row, col);
      if (!(a instanceof Area)) return isCellError(a) ? a : errors.value;
      if (!(b instanceof Area)) return isCellError(b) ? b : errors.value;
      if (a.grid !== b.grid) return errors.value;
      return new Area(
        a.grid,
        Math.min(a.top, b.top),
        Math.min(a.left, b.left),
        Math.max(a.bottom, b.bottom),
        Math.max(a.right, b.right),
      );
    },
  };
}

function areasOf(value: Value): readonly Area[] | undefined {
  return value instanceof Areas ? value.list : value instanceof Area ? [value] : undefined;
}

function common(a: Area, b: Area): Area[] {
  const top = Math.max(a.top, b.top);
  const left = Math.max(a.left, b.left);
  const bottom = Math.min(a.bottom, b.bottom);
  const right = Math.min(a.right, b.right);
  if (a.grid !== b.grid || top > bottom || left > right) return [];
  return [new Area(a.grid, top, left, bottom, right)];
}

/** The cells two references share, or #NULL!. */
export function shared(left: Expr, right: Expr): Expr {
  return {
    isRange: true,
    run: (row, col) => {
      const a = left.run(row, col);
      const b = right.run(row, col);
      const [as, bs] = [areasOf(a), areasOf(b)];
      if (!as) return isCellError(a) ? a : errors.value;
      if (!bs) return isCellError(b) ? b : errors.value;
      const found = as.flatMap((one) => bs.flatMap((other) => common(one, other)));
      return found.length > 1 ? new Areas(found) : (found[0] ?? errors.nul);
    },
  };
}

/** Several areas as one argument, (A1:A3,C1). */
export function union(left: Expr, right: Expr): Expr {
  return {
    isRange: true,
    run: (row, col) => {
      const a = areasOf(left.run(row, col));
      const b = areasOf(right.run(row, col));
      return a && b ? new Areas([...a, ...b]) : errors.value;
    },
  };
}

/** `A1#`: everything the formula in A1 spills over. */
export function spillExpr(anchor: Expr): Expr {
  return {
    isRange: true,
    run: (row, col) => {
      const area = anchor.run(row, col);
      if (!(area instanceof Area)) return isCellError(area) ? area : errors.ref;
      const extent = area.grid.spillAt(area.top, area.left);
      if (extent === null) return errors.ref;
      return new Area(area.grid, extent.top, extent.left, extent.bottom, extent.right);
    },
  };
}

/** `@x`: the cell in the formula's row or column, or the first of an array. */
export function intersectExpr(operand: Expr): Expr {
  return oneValue((row, col) => {
    const value = operand.run(row, col);
    if (value instanceof Area) return intersect(value, row, col);
    const read = values(value);
    return typeof read === "object" && read !== null && "data" in read ? read.at(0, 0) : read;
  });
}
