// LibreOffice Calc recalculates the native formulas (OASIS OpenFormula 1.2): what they give is held
// against what our functions give, over many sound, blank and faulty arguments.
import { beforeAll, describe, expect, it } from "vitest";
import { cellName, columnLetters } from "../../src/cells";
import { type PlainCopy, plainCopy } from "../../src/plain-copy";
import { type CellSpec, Workbook } from "../../src/workbook";
import { call, isProblem } from "../functions/call";
import {
  type Argument,
  boxCells,
  boxRanges,
  type Case,
  type CellContent,
  inRange,
  isSingle,
} from "./case";
import { cases, spellings } from "./further-cases";
import { recalculated } from "./recalculated";

/** Rows that a formula of the last sheet spills over. */
const spilled = 3;
/** Cells side by side that a function gives, where it is more than one. */
const widths: Readonly<Record<string, number>> = { DEVICE_SPREAD: 3 };
const widthOf = (id: string) => widths[id] ?? 1;
/** The arguments of a case stand right of its results. */
const firstArgument = 3;

const ids = [...new Set(cases.map(({ id }) => id))];
const once = cases.filter(({ isTwiceWrong }) => !isTwiceWrong);
/** For each function some rows of single cells that differ in every argument. */
const together = ids.map((id) => {
  const own = cases.filter((each) => each.id === id);
  const [base] = own as [Case, ...Case[]];
  return Array.from({ length: spilled }, (_, n): Case => {
    const given = base.arguments.map((argument, i) => {
      const other = own.find((each, at) => at > n && !same(each.arguments[i], argument));
      const isRow = isSingle(argument) && argument !== "ip";
      return n > 0 && isRow && other && i % spilled !== n ? (other.arguments[i] ?? null) : argument;
    });
    return { id, arguments: given, isTwiceWrong: true };
  });
});

let copy: PlainCopy;
let theirs: Workbook;
/** The copy once other names of editions were typed into it. */
let renamed: Workbook;

beforeAll(() => {
  const workbook = Workbook.create();
  const sheets = [
    { name: "Cells", rows: cases.map((each, row) => rowOf(each, row, false)) },
    { name: "Written", rows: once.map((each, row) => rowOf(each, row, true)) },
    { name: "Together", rows: together.flatMap(spilledRows) },
    { name: "Boxes", rows: boxCells.map((cells) => cells.map(spec)) },
  ];
  for (const { name, rows } of sheets) workbook.addSheet(name, { rows });
  copy = plainCopy(workbook);

  const small = Workbook.create();
  const one: Case = { id: "MAX_SONE", arguments: ["62.2-2010", "on demand"], isTwiceWrong: false };
  small.addSheet("Cells", { rows: spellings.map((_, row) => rowOf(one, row, false)) });
  const typedLater = plainCopy(small).workbook;
  spellings.forEach((name, row) => {
    typedLater.sheet("Cells")?.setValue(row, firstArgument, name);
  });

  const files = { "further.xlsx": copy.workbook.save(), "renamed.xlsx": typedLater.save() };
  const found = recalculated(files);
  theirs = found["further.xlsx"] as Workbook;
  renamed = found["renamed.xlsx"] as Workbook;
}, 600_000);

function same(a: Argument, b: Argument): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function spec(content: CellContent): CellSpec {
  const isError = typeof content === "object" && content !== null;
  return isError ? { formula: "1/0", value: content } : { value: content };
}

function cellsIn(argument: Argument): readonly CellContent[] {
  if (argument === undefined) return [];
  if (isSingle(argument)) return [argument];
  return "beside" in argument ? argument.beside : [];
}

/** A formula for each result of a case, then the cells of its arguments. */
function rowOf({ id, arguments: given }: Case, row: number, isWritten: boolean): CellSpec[] {
  const cells: CellSpec[] = [];
  const texts = given.map((argument) => {
    if (isWritten && isSingle(argument)) return literal(argument);
    return place(argument, row, row, cells);
  });
  const formula = `_xldudf_FANROW_${id}(${texts.join(",")})`;
  const width = widthOf(id);
  const results = Array.from({ length: firstArgument }, (_, side): CellSpec => {
    if (side >= width) return { value: null };
    return { formula: width === 1 ? formula : `INDEX(${formula},1,${side + 1})`, value: 0 };
  });
  return [...results, ...cells];
}

/** The reference to an argument, whose cells are added to those of the row. */
function place(argument: Argument, top: number, bottom: number, cells: CellSpec[]): string {
  if (argument === undefined) return "";
  if (!isSingle(argument) && "range" in argument) return boxRanges[argument.range];
  const left = firstArgument + cells.length;
  cells.push(...cellsIn(argument).map(spec));
  const [from, to] = [cellName(top, left), cellName(bottom, firstArgument + cells.length - 1)];
  return from === to ? from : `${from}:${to}`;
}

function literal(content: CellContent | undefined): string {
  if (content === null || content === undefined) return "";
  if (typeof content === "object") return "1/0";
  return typeof content === "string" ? `"${content}"` : String(content);
}

/** One formula over the rows of several cases. */
function spilledRows(rows: readonly Case[], at: number): CellSpec[][] {
  const [first] = rows as [Case, ...Case[]];
  const [top, bottom] = [at * spilled, at * spilled + spilled - 1];
  const given = rows.map((): CellSpec[] => []);
  const texts = first.arguments.map((argument, i) => {
    const isOne = isWhole(first, i);
    rows.forEach((row, n) => {
      if (n > 0) place(row.arguments[i], top, top, given[n] as CellSpec[]);
    });
    return place(argument, top, isOne ? top : bottom, given[0] as CellSpec[]);
  });
  const arrayRef = `A${top + 1}:${columnLetters(widthOf(first.id) - 1)}${bottom + 1}`;
  const formula = `_xldudf_FANROW_${first.id}(${texts.join(",")})`;
  return given.map((cells, n) => {
    const head: CellSpec[] = Array.from({ length: firstArgument }, () => ({ value: null }));
    if (n === 0) head[0] = { formula, value: 0, arrayRef };
    return [...head, ...cells];
  });
}

/** Whether an argument is the same for all rows of a call: the units and lists. */
function isWhole({ id, arguments: given }: Case, i: number): boolean {
  const argument = given[i];
  const isList = !isSingle(argument) && (id === "FAN_SIZE" || id === "DEFICIT_RATE");
  return argument === "ip" || isList;
}

/** The argument as a host passes it. */
function passed(argument: Argument, isWritten: boolean): unknown {
  if (argument === undefined || (isWritten && argument === null)) return null;
  if (isSingle(argument)) return [[hosted(argument)]];
  if ("beside" in argument) return [argument.beside.map(hosted)];
  return inRange(argument.range).map((cell) => [hosted(cell)]);
}

function hosted(content: CellContent): unknown {
  if (content === null) return "";
  return typeof content === "object" ? { code: content.error } : content;
}

function ours({ id, arguments: given }: Case, isWritten: boolean): unknown[] {
  const width = widthOf(id);
  try {
    const row = call(id, ...given.map((each) => passed(each, isWritten)))[0] ?? [];
    return row.slice(0, width).map(shown);
  } catch (problem) {
    return Array<unknown>(width).fill(shown(problem));
  }
}

function shown(value: unknown): unknown {
  return isProblem(value) ? value.code : (value ?? "");
}

function their(book: Workbook, sheet: string, row: number, id: string): unknown[] {
  return Array.from({ length: widthOf(id) }, (_, side) => {
    const value = book.sheet(sheet)?.cell(row, side)?.value ?? "";
    return typeof value === "object" ? value.error : value;
  });
}

const isError = (value: unknown) => typeof value === "string" && value.startsWith("#");

function agree(a: unknown, b: unknown, isTwiceWrong: boolean): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(1e-3, Math.abs(a), Math.abs(b));
  return a === b || (isTwiceWrong && isError(a) && isError(b));
}

/** Where LibreOffice gives something else, with both. */
function differences(each: Case, other: unknown[], isWritten: boolean): string[] {
  const own = ours(each, isWritten);
  if (own.every((value, i) => agree(value, other[i], each.isTwiceWrong))) return [];
  const given = each.arguments.map((argument) => JSON.stringify(argument) ?? "").join(", ");
  return [`${each.id}(${given}): ${JSON.stringify(own)}, not ${JSON.stringify(other)}`];
}

describe("native formulas in place of our functions, as LibreOffice recalculates them", () => {
  it("replaces every formula", () => {
    expect(copy.left).toEqual([]);
    expect(copy.replaced).toBeGreaterThan(cases.length + once.length);
  });

  it.each(ids)("gives the same as %s of cells", (id) => {
    const found = cases.flatMap((each, row) =>
      each.id === id ? differences(each, their(theirs, "Cells", row, id), false) : [],
    );
    expect(found).toEqual([]);
  });

  it.each(ids)("gives the same as %s of values written in the formula", (id) => {
    const found = once.flatMap((each, row) =>
      each.id === id ? differences(each, their(theirs, "Written", row, id), true) : [],
    );
    expect(found).toEqual([]);
  });

  it.each(ids)("gives the same as %s over several rows at once", (id) => {
    const found = together.flatMap((rows, at) =>
      rows.flatMap((each, n) =>
        each.id === id
          ? differences(each, their(theirs, "Together", at * spilled + n, id), false)
          : [],
      ),
    );
    expect(found).toEqual([]);
  });

  it("knows every name of an edition that is typed later", () => {
    const found = spellings.flatMap((name, row) => {
      const each: Case = { id: "MAX_SONE", arguments: [name, "on demand"], isTwiceWrong: false };
      return differences(each, their(renamed, "Cells", row, each.id), false);
    });
    expect(found).toEqual([]);
  });
});
