/** Functions that look at some of their arguments only: IF and its kin, ROW and COLUMN of the cell. */

import type { AstExpression } from "@borgar/fx/xlsx";
import { type CellValue, errors, InputError, isCellError } from "../../cells";
import { Area } from "../area";
import { compare, toBoolean, toNumber, toText } from "../coerce";
import { Matrix, Unsupported } from "../values";
import {
  asScalar,
  constant,
  type Expr,
  type Mode,
  oneValue,
  placeExpr,
  type Scope,
  spread,
} from "./expr";

type Nodes = readonly (AstExpression | null)[];
type Build = (nodes: Nodes, mode: Mode, scope: Scope) => Expr;

/** How many arguments a function takes, and which of them only decide. */
interface Shape {
  readonly least: number;
  readonly most: number;
  readonly decides: (index: number, count: number) => boolean;
}

/** The argument a function returns. */
interface Chosen {
  readonly index: number;
}
const chosen = (index: number): Chosen => ({ index });

function choosing(
  name: string,
  shape: Shape,
  choose: (at: (index: number) => CellValue, count: number) => Chosen | CellValue,
): Build {
  return (nodes, mode, scope) => {
    const count = nodes.length;
    if (count < shape.least || count > shape.most)
      throw new Unsupported(`${name} with ${count} arguments`);
    const args = nodes.map((node, i) => {
      const expr = node === null ? constant(null) : scope.compile(node, mode);
      return shape.decides(i, count) ? asScalar(expr, mode, scope) : expr;
    });
    const isLazy = args.every((arg, i) => !shape.decides(i, count) || arg.one);
    if (isLazy) {
      const ones = args.map((arg) => arg.one);
      const run: Expr["run"] = (row, col) => {
        const found = choose((i) => ones[i]!(row, col), count);
        return isChosen(found) ? args[found.index]!.run(row, col) : found;
      };
      if (!ones.every((one) => one)) return { run, isRange: args.some((arg) => arg.isRange) };
      return {
        run,
        one: (row, col) => {
          const found = choose((i) => ones[i]!(row, col), count);
          return isChosen(found) ? ones[found.index]!(row, col) : found;
        },
      };
    }
    // Some deciding argument is an array, so every argument is read and the choice made cell by cell.
    const read = args.map((arg) => asScalar(arg, mode, scope));
    return {
      run: (row, col) =>
        spread(
          read.map((arg) => arg.run(row, col) as CellValue | Matrix),
          (cell) => {
            const found = choose((i) => cell[i] ?? null, count);
            return isChosen(found) ? (cell[found.index] ?? null) : found;
          },
        ),
    };
  };
}

function isChosen(found: Chosen | CellValue): found is Chosen {
  return typeof found === "object" && found !== null && "index" in found;
}

const first = (index: number) => index === 0;

const ifShape: Shape = { least: 2, most: 3, decides: first };
const chooseIf = choosing("IF", ifShape, (at, count) => {
  const test = toBoolean(at(0));
  if (typeof test === "object") return test;
  return test ? chosen(1) : count > 2 ? chosen(2) : false;
});

const orElse = (name: string, replaces: (value: CellValue) => boolean): Build =>
  choosing(name, { least: 2, most: 2, decides: first }, (at) => chosen(replaces(at(0)) ? 1 : 0));

const chooseIfs = choosing(
  "IFS",
  { least: 2, most: 254, decides: (i) => i % 2 === 0 },
  (at, count) => {
    for (let i = 0; i + 1 < count; i += 2) {
      const test = toBoolean(at(i));
      if (typeof test === "object") return test;
      if (test) return chosen(i + 1);
    }
    return errors.na;
  },
);

/** The same kind of value; a blank counts as the number 0. */
const matches = (a: CellValue, b: CellValue) =>
  typeof (a ?? 0) === typeof (b ?? 0) && compare(a, b) === 0;

const chooseSwitch = choosing(
  "SWITCH",
  // The last argument without a partner is what is returned where nothing matches.
  { least: 3, most: 254, decides: (i, count) => i === 0 || (i % 2 === 1 && i < count - 1) },
  (at, count) => {
    const value = at(0);
    if (isCellError(value)) return value;
    let i = 1;
    for (; i + 1 < count; i += 2) {
      const other = at(i);
      if (isCellError(other)) return other;
      if (matches(value, other)) return chosen(i + 1);
    }
    return i < count ? chosen(i) : errors.na;
  },
);

const chooseChoose = choosing("CHOOSE", { least: 2, most: 255, decides: first }, (at, count) => {
  const index = toNumber(at(0));
  if (typeof index !== "number") return index;
  const whole = Math.trunc(index);
  return whole >= 1 && whole < count ? chosen(whole) : errors.value;
});

/** ROW or COLUMN: of the formula's own cell, or of each row or column of a reference. */
function position(isRow: boolean): Build {
  return (nodes, mode, scope) => {
    scope.flags.isPlaced = true;
    const node = nodes[0];
    if (!node) {
      const own = (row: number, col: number) => (isRow ? row : col) + 1;
      return { run: own, one: own };
    }
    const { run, isRange } = placeExpr(node, mode, scope);
    if (isRange && mode === "array") scope.flags.needsArray = true;
    const place = (row: number, col: number) => {
      const area = run(row, col);
      if (!(area instanceof Area)) return isCellError(area) ? area : errors.value;
      const start = (isRow ? area.top : area.left) + 1;
      const length = isRow ? area.usedRows : area.usedCols;
      if (mode === "plain" || length === 1) return start;
      return Matrix.of(isRow ? length : 1, isRow ? 1 : length, (r, c) => start + (isRow ? r : c));
    };
    return mode === "plain" ? { run: place, one: place as Expr["one"] & object } : { run: place };
  };
}

/** INDIRECT: what a text refers to, read anew in every run. */
const indirect: Build = (nodes, mode, scope) => {
  if (nodes.length < 1 || nodes.length > 2) throw new Unsupported("INDIRECT without its text");
  const args = nodes.map((node) => asScalar(scope.compile(node, mode), mode, scope));
  scope.flags.seeks = true;
  const known = new Map<string, Expr["run"]>();
  const find = (text: string): Expr["run"] => {
    const found = known.get(text);
    if (found) return found;
    let run: Expr["run"] = () => errors.ref;
    try {
      // Zeros before a row's number count for nothing: A01.
      const plain = /[!']/.test(text) ? text : text.replace(/(^|[^\d.])0+(?=\d)/g, "$1");
      run = scope.refer(plain).run;
    } catch (problem) {
      if (!(problem instanceof Unsupported || problem instanceof InputError)) throw problem;
      // A text that is no reference refers to nothing.
    }
    known.set(text, run);
    return run;
  };
  return {
    isRange: true,
    run: (row, col) => {
      const given = args[0]!.run(row, col);
      if (given instanceof Matrix) throw new Unsupported("INDIRECT of several texts");
      const text = toText(given as CellValue);
      const isA1 = args[1] === undefined || toBoolean(args[1].run(row, col) as CellValue);
      if (typeof text !== "string") return text;
      if (isA1 !== true) throw new Unsupported("INDIRECT of a reference by numbers, R1C1");
      const value = find(text)(0, 0);
      return value instanceof Area || isCellError(value) ? value : errors.ref;
    },
  };
};

/** FORMULATEXT: the formula of a cell as it is typed. */
const formulaText: Build = (nodes, mode, scope) => {
  if (nodes.length !== 1 || !nodes[0]) throw new Unsupported("FORMULATEXT of other than one cell");
  scope.flags.isPlaced = true;
  const { run } = placeExpr(nodes[0], mode, scope);
  return oneValue((row, col) => {
    const cell = run(row, col);
    if (!(cell instanceof Area)) return isCellError(cell) ? cell : errors.na;
    const formula = cell.grid.formulaText(cell.top, cell.left);
    return formula === undefined ? errors.na : `=${scope.typed(formula)}`;
  });
};

export const lazyCalls: ReadonlyMap<string, Build> = new Map([
  ["IF", chooseIf],
  ["INDIRECT", indirect],
  ["FORMULATEXT", formulaText],
  ["IFERROR", orElse("IFERROR", isCellError)],
  ["IFNA", orElse("IFNA", (value) => isCellError(value) && value.error === "#N/A")],
  ["IFS", chooseIfs],
  ["SWITCH", chooseSwitch],
  ["CHOOSE", chooseChoose],
  ["ROW", position(true)],
  ["COLUMN", position(false)],
]);
