import { cells, type Ground, type Line, read } from "./line";

/** No number stands where nothing was measured. */
const noNumber = {
  words: "blank or an error, no number",
  pattern: /^(blank|#[A-Z/0-9]+[!?]?|[^0-9]*)$/,
};

const flow = 51.36;
const spill = "51.36, 38.52, 51.36";

const asked = (name: string, formula: string, expected: Line["expected"]): Line => ({
  name,
  expected,
  run: (ground) => cells(ground, [[formula]], "A1"),
});

const columns = (ground: Ground, third: string) =>
  cells(
    ground,
    [
      [24, 4, third],
      [36, 1, ""],
      [16, 9, ""],
    ],
    "C1:C3",
  );

/** Our functions in a cell: arguments, blanks, errors, spill, tables and speed. */
export const functionLines: readonly Line[] = [
  asked("a function gives its value", "=FANROW.FLOW(24,4)", String(flow)),
  asked("a function's name in small letters", "=fanrow.flow(24,4)", String(flow)),
  asked("an argument that is left out", "=FANROW.FLOW(24,4,,)", String(flow)),
  asked("a blank pressure, asked for directly", "=FANROW.FLOW(24,Z99)", noNumber),
  asked("an empty text for a pressure", '=FANROW.FLOW(24,"")', noNumber),
  asked("a blank pressure in a range", "=INDEX(FANROW.FLOW(Y98:Y99,Z98:Z99),2)", noNumber),
  asked("a blank area", "=FANROW.FLOW(Z99,4)", noNumber),
  asked("a text where a number belongs", '=FANROW.FLOW("wide",4)', {
    words: "an error",
    pattern: /^#/,
  }),
  asked("a function that does not exist", "=FANROW.NO_SUCH_ONE(1)", "#NAME?"),
  asked("a reference that was lost", "=FANROW.FLOW(#REF!,4)", "#REF!"),
  {
    name: "a range in gives a range out",
    expected: spill,
    run: async (ground) => {
      const got = (await columns(ground, "=FANROW.FLOW(A1:A3,B1:B3)")).split(", ");
      const told = (each: string) =>
        each !== "" && Number.isFinite(Number(each)) ? Number(each).toFixed(2) : each;
      return got.map(told).join(", ");
    },
  },
  {
    name: "the formula of a cell that another's result spills over",
    expected: null,
    run: async (ground) => {
      await columns(ground, "=FANROW.FLOW(A1:A3,B1:B3)");
      const range = ground.sheet.getRange("C2");
      range.load("formulas");
      await ground.book.sync();
      return `"${String(range.formulas[0]?.[0])}"`;
    },
  },
  {
    name: "an error in a range spoils its own cell only",
    expected: { words: "a number, #N/A, a number", pattern: /^[\d.]+, #N\/A, [\d.]+$/ },
    run: (ground) =>
      cells(
        ground,
        [
          [24, 4, "=FANROW.FLOW(A1:A3,B1:B3)"],
          [36, "=NA()", ""],
          [16, 9, ""],
        ],
        "C1:C3",
      ),
  },
  {
    name: "the formula is kept as it was typed",
    expected: "=FANROW.FLOW(24,4)",
    run: async (ground) => {
      await cells(ground, [["=FANROW.FLOW(24,4)"]], "A1");
      const range = ground.sheet.getRange("A1");
      range.load("formulas");
      await ground.book.sync();
      return String(range.formulas[0]?.[0]);
    },
  },
  {
    name: "one value a row inside a table",
    expected: `${flow}, 38.52`,
    run: async (ground) => {
      ground.sheet.getRange("A1:C3").formulas = [
        ["Area", "Pressure", "Flow"],
        [24, 4, ""],
        [36, 1, ""],
      ];
      const table = ground.sheet.tables.add("A1:C3", true);
      ground.sheet.getRange("C2:C3").formulas = [
        ["=FANROW.FLOW([@Area],[@Pressure])"],
        ["=FANROW.FLOW([@Area],[@Pressure])"],
      ];
      const got = await read(ground, "C2:C3");
      table.delete();
      return got;
    },
  },
  {
    name: "one call over 20,000 rows, within 10 seconds",
    expected: { words: "20000 rows in less than 10 s", pattern: /^20000 rows in \d\.\d s$/ },
    limit: 30,
    run: async (ground) => {
      ground.sheet.getRange("A1:B20000").formulas = Array.from({ length: 20_000 }, (_, i) => [
        5 + (i % 90),
        1 + (i % 7),
      ]);
      await ground.book.sync();
      const start = performance.now();
      ground.sheet.getRange("C1").formulas = [["=ROWS(FANROW.FLOW(A1:A20000,B1:B20000))"]];
      const rows = await read(ground, "C1");
      return `${rows} rows in ${((performance.now() - start) / 1000).toFixed(1)} s`;
    },
  },
  {
    name: "20,000 calls of one row each",
    expected: { words: "20000 values", pattern: /^20000 values/ },
    limit: 120,
    run: async (ground) => {
      const start = performance.now();
      ground.sheet.getRange("A1:A20000").formulas = Array.from({ length: 20_000 }, (_, i) => [
        `=FANROW.FLOW(${5 + (i % 90)},4)`,
      ]);
      const got = (await read(ground, "A1:A20000")).split(", ");
      const good = got.filter((each) => Number(each) > 0).length;
      return `${good} values in ${((performance.now() - start) / 1000).toFixed(1)} s`;
    },
  },
];
