import { type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { beforeAll, describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { editions } from "../../src/editions";
import { type PlainCopy, plainCopy } from "../../src/plain-copy";
import { Workbook } from "../../src/workbook";
import { demos } from "./demos";
import { formsWorkbook, withoutEquivalent } from "./forms";
import { randomCalls, tried } from "./random-calls";

/**
 * Functions that Excel 2010 computes: all are in ECMA-376-1:2006, part 4, 3.17.7. Only those that
 * the copies use; one that is not here is to be looked up there before it is added.
 */
const known = new Set(
  (
    "ABS AND AVERAGE CHAR CHOOSE COUNT EXP FALSE FIND IF INDEX INT ISBLANK ISERROR ISLOGICAL ISNUMBER LARGE " +
    "LEN LN LOWER MATCH MAX MID MIN MOD NA NORMSDIST NORMSINV NOT OR PI ROUND SQRT STDEV " +
    "SUBSTITUTE SUM SUMIFS COUNTA COUNTIFS SUMPRODUCT SUMSQ TDIST TINV TRIM UPPER VALUE"
  ).split(" "),
);

const originals: Record<string, Workbook> = {};
const copies: Record<string, PlainCopy> = {};

beforeAll(() => {
  for (const [name, bytes] of Object.entries(demos)) originals[name] = Workbook.open(bytes);
  originals.calls = randomCalls();
  for (const [name, workbook] of Object.entries(originals)) copies[name] = plainCopy(workbook);
}, 300_000);

const formulasOf = (workbook: Workbook): string[] =>
  workbook.sheets.flatMap((sheet) => [...sheet.cells()].flatMap(({ formula }) => formula ?? []));

const everyFormula = () =>
  Object.values(copies).flatMap(({ workbook }) => [...new Set(formulasOf(workbook))]);

const tokensOf = (formula: string): Token[] => tokenize(formula, { withLocation: false });

describe("the plain copy", () => {
  it("has an equivalent for every function but those that give a text to read", () => {
    const ids = worksheetFunctions.map(({ id }) => id).sort();
    const own = tried.map(({ id }) => id);
    expect([...own, "EDITIONS", "SOURCE", "WORKING"].sort()).toEqual(ids);
    expect(copies.calls?.left).toEqual([]);
  });

  it.each(Object.keys(demos))("leaves no formula of ours in %s, and none out", (name) => {
    const { workbook, replaced, left } = copies[name]!;
    // Texts to read stay texts, and openings that a call lists by itself have no cells to look at.
    const kept = ["a text to read: kept as text", "labels is not a range of cells"];
    expect(left.filter(({ sheet, why }) => sheet !== "Questions" || !kept.includes(why))).toEqual(
      [],
    );
    const ours = formulasOf(originals[name]!).filter((formula) => formula.includes("FANROW"));
    expect(replaced + left.length).toBe(ours.length);
    for (const sheet of workbook.sheets)
      for (const { value, formula } of sheet.cells())
        expect(`${value} ${formula}`).not.toMatch(/fanrow|_xldudf/i);
  });

  it("uses only functions that Excel 2010 knows", () => {
    const used = new Set(
      everyFormula().flatMap((formula) =>
        tokensOf(formula).flatMap(({ type, value }) => (type === tokenTypes.FUNCTION ? value : [])),
      ),
    );
    expect([...used].filter((name) => !known.has(name))).toEqual([]);
  });

  it("stays within what Excel takes: 8192 characters and 64 levels a formula", () => {
    for (const formula of everyFormula()) {
      expect(formula.length).toBeLessThan(8192);
      let depth = 0;
      let deepest = 0;
      for (const { type, value } of tokensOf(formula)) {
        if (type !== tokenTypes.OPERATOR) continue;
        if (value === "(") deepest = Math.max(deepest, ++depth);
        if (value === ")") depth--;
      }
      expect(deepest).toBeLessThan(64);
    }
  });

  it("has a clause and a mark beside each number of an edition", () => {
    const { workbook } = copies.calls!;
    const sheet = workbook.sheet("Edition tables")!;
    const rows: unknown[][] = [];
    for (const { row, col, value } of sheet.cells()) {
      rows[row] ??= [];
      rows[row][col] = value;
    }
    let headings: unknown[] = [];
    let title: unknown;
    const checked = new Map<unknown, number>();
    for (let r = 0; r < rows.length; r++) {
      const row = rows[r];
      if (row === undefined) continue;
      if (rows[r - 1] === undefined && row.length === 1) {
        title = row[0];
        headings = rows[++r] ?? [];
        continue;
      }
      if (String(title).startsWith("Names:")) continue;
      const of = (heading: string) => row[headings.indexOf(heading)];
      expect(of("Clause"), `${title}, row ${r + 1}`).toMatch(/, .*\w/);
      expect(of("Mark"), `${title}, row ${r + 1}`).toMatch(/read|sources|memory|practice|defin/);
      checked.set(title, (checked.get(title) ?? 0) + 1);
    }
    expect(checked.size).toBeGreaterThan(12);
    const rates = editions.map(({ rooms, systems }) => systems.length * rooms.length);
    expect(checked.get("Least rates of rooms")).toBe(rates.reduce((sum, n) => sum + n, 0));
  });

  it("shows a value in every cell of the sheets that it adds", () => {
    for (const { workbook } of Object.values(copies))
      for (const sheet of workbook.sheets.slice(-3))
        for (const { formula, value } of sheet.cells())
          if (formula !== null) expect(value).not.toBeNull();
  });

  it.each(Object.keys(demos))("keeps every other part of %s as it is", (name) => {
    const [before, after] = [Workbook.open(demos[name]!), copies[name]!.workbook];
    const touched = /^\[Content_Types\]|workbook\.xml|styles\.xml|calcChain|worksheets\/sheet/;
    for (const part of before.partNames())
      if (!touched.test(part)) expect(after.part(part)).toEqual(before.part(part));
    for (const sheet of before.sheets)
      for (const { row, col, value, style, formula } of sheet.cells()) {
        const cell = after.sheet(sheet.name)?.cell(row, col);
        expect([cell?.value ?? null, cell?.style]).toEqual([value, style]);
        if (formula !== null && !formula.includes("FANROW")) expect(cell?.formula).toBe(formula);
      }
  });

  it("does not change the workbook it is made from", () => {
    for (const [name, bytes] of Object.entries(demos))
      expect(Buffer.from(originals[name]!.save()).equals(Buffer.from(bytes))).toBe(true);
  });

  it("takes free names for the sheets that it adds", () => {
    const workbook = Workbook.create();
    const formula = 'FANROW.ROOM_RATE("IRC-2021",A2,"on demand")';
    workbook.addSheet("Steps", { rows: [[{ formula, value: 50 }], [{ value: "bathroom" }]] });
    workbook.addSheet("edition tables", { rows: [] });
    const copy = plainCopy(workbook).workbook;
    const names = copy.sheets.map(({ name }) => name);
    expect(names).toEqual(["Steps", "edition tables", "Edition tables 2", "Steps 2"]);
    expect(copy.sheets.every(({ state }) => state === "visible")).toBe(true);
  });

  it("adds no sheet where none is needed", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Sheet", { rows: [[{ formula: "FANROW.FLOW(24,4)", value: 51.36 }]] });
    const copy = plainCopy(workbook).workbook;
    expect(copy.sheets.map(({ name }) => name)).toEqual(["Sheet"]);
    expect(copy.sheet("Sheet")?.cell(0, 0)?.formula).toBe("(1.07*24*SQRT(4))");
  });

  it("keeps the value of a formula without an equivalent, and says why", () => {
    const { workbook, left } = plainCopy(formsWorkbook());
    expect(left.map(({ sheet, cell }) => `${sheet}!${cell}`)).toEqual(
      withoutEquivalent.map((_, i) => `Without!A${i + 1}`),
    );
    withoutEquivalent.forEach(([, reason], i) => {
      expect(left[i]?.why).toContain(reason);
      expect(workbook.sheet("Without")?.cell(i, 0)).toMatchObject({
        formula: null,
        value: 100 + i,
      });
    });
  });
});
