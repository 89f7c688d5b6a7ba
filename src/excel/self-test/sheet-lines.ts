import { areasInPieces, visibleIn } from "../areas";
import { cells, type Ground, type Line, read, told } from "./line";

async function loaded<T extends { load: (leaves: string) => unknown }>(
  { book }: Ground,
  thing: T,
  leaves: string,
): Promise<T> {
  thing.load(leaves);
  await book.sync();
  return thing;
}

/** How many areas the pane finds by asking in pieces, and what the host says to one question for all. */
async function areasOf(
  { book, sheet }: Ground,
  address: string,
  ask: (range: Excel.Range) => Excel.RangeAreas,
) {
  const range = sheet.getRange(address);
  range.load("rowCount,columnCount");
  await book.sync();
  const { length: count } = await areasInPieces(book, range, ask);
  const all = ask(range);
  all.load("address");
  const whole = await book.sync().then(
    () => `named at once in ${all.isNullObject ? 0 : all.address.length} characters`,
    (thrown: { code?: unknown }) => `not named at once: ${String(thrown.code)}`,
  );
  return { count, whole };
}

/** Cells, their formats, what is hidden and merged, and how much goes over at once. */
export const sheetLines: readonly Line[] = [
  {
    name: "numbers, texts, truth values and errors come back as they were written",
    expected: "1.5, a, true, #N/A, blank",
    run: async (ground) => {
      ground.sheet.getRange("A1:E1").values = [[1.5, "a", true, "#N/A", ""]];
      return read(ground, "A1:E1");
    },
  },
  {
    name: "a text format keeps what is typed as text",
    expected: "007",
    run: async (ground) => {
      const range = ground.sheet.getRange("A1");
      range.numberFormat = [["@"]];
      range.values = [["007"]];
      return read(ground, "A1");
    },
  },
  {
    name: "what is typed as +A2 becomes a formula",
    expected: "5",
    run: async (ground) => {
      ground.sheet.getRange("A1:A2").formulas = [["+A2"], [5]];
      return read(ground, "A1");
    },
  },
  {
    name: "what is typed as @A2:A3 takes the cell of its own row",
    expected: null,
    run: (ground) =>
      cells(
        ground,
        [
          [1, "=@A1:A2"],
          [2, "=@A1:A2"],
        ],
        "B1:B2",
      ),
  },
  {
    name: "the shown text of a number",
    expected: "51.4",
    run: async (ground) => {
      const range = ground.sheet.getRange("A1");
      range.numberFormat = [["0.0"]];
      range.values = [[51.36]];
      await loaded(ground, range, "text");
      return String(range.text[0]?.[0]);
    },
  },
  {
    name: "the used range of a sheet with a format and no value",
    expected: null,
    run: async (ground) => {
      ground.sheet.getRange("C5").format.fill.color = "#FFEE00";
      const used = ground.sheet.getUsedRangeOrNullObject(false);
      const valued = ground.sheet.getUsedRangeOrNullObject(true);
      used.load("address");
      valued.load("address");
      await ground.book.sync();
      const address = (range: Excel.Range) =>
        range.isNullObject ? "none" : range.address.replace(/^.*!/, "");
      return `${address(used)}, with values ${address(valued)}`;
    },
  },
  {
    name: "1,500 hidden rows are told apart",
    expected: { words: "1500 hidden", pattern: /^1500 hidden/ },
    limit: 60,
    run: async (ground) => {
      const { book, sheet } = ground;
      sheet.getRange("A1:A3000").values = Array.from({ length: 3_000 }, (_, i) => [i]);
      for (let row = 2; row <= 3_000; row += 2) sheet.getRange(`${row}:${row}`).rowHidden = true;
      await book.sync();
      const seen = await areasOf(ground, "A1:A3000", visibleIn);
      return `${3_000 - seen.count} hidden; ${seen.whole}`;
    },
  },
  {
    name: "600 merged pairs are all told",
    expected: { words: "600", pattern: /^600;/ },
    limit: 60,
    run: async (ground) => {
      const { book, sheet } = ground;
      for (let row = 1; row <= 600; row++) sheet.getRange(`A${row}:B${row}`).merge();
      await book.sync();
      const merged = await areasOf(ground, "A1:B600", (range) =>
        range.getMergedAreasOrNullObject(),
      );
      return `${merged.count}; ${merged.whole}`;
    },
  },
  {
    name: "4 MB go over in one write",
    expected: "4000 cells",
    limit: 60,
    run: async ({ book, sheet }) => {
      const text = "x".repeat(1_000);
      const range = sheet.getRange("A1:A4000");
      range.values = Array.from({ length: 4_000 }, () => [text]);
      await book.sync();
      const last = sheet.getRange("A4000");
      last.load("values");
      await book.sync();
      return told(last.values[0]?.[0]) === text ? "4000 cells" : "cut";
    },
  },
  {
    name: "a list of allowed values is kept",
    expected: "pass,retest",
    run: async (ground) => {
      const { dataValidation } = ground.sheet.getRange("A1");
      dataValidation.rule = { list: { inCellDropDown: true, source: "pass,retest" } };
      await loaded(ground, dataValidation, "rule");
      return String(dataValidation.rule.list?.source);
    },
  },
  {
    name: "a protected sheet refuses a write",
    expected: "AccessDenied",
    run: async ({ book, sheet }) => {
      sheet.protection.protect();
      await book.sync();
      try {
        sheet.getRange("A1").values = [[1]];
        await book.sync();
        return "written";
      } catch (thrown) {
        return String((thrown as { code?: unknown }).code);
      } finally {
        sheet.protection.unprotect();
        await book.sync();
      }
    },
  },
  {
    name: "a chart stands on the sheet",
    expected: "1 chart",
    run: async (ground) => {
      ground.sheet.getRange("A1:B3").values = [
        ["Pa", "cfm"],
        [1, 26],
        [4, 51],
      ];
      ground.sheet.charts.add("XYScatter", ground.sheet.getRange("A1:B3"), "Columns");
      const { charts } = await loaded(ground, ground.sheet, "name");
      await loaded(ground, charts, "items/name");
      const { length } = charts.items;
      for (const chart of charts.items) chart.delete();
      await ground.book.sync();
      return `${length} chart`;
    },
  },
  {
    name: "page set-up (a machine without a printer may refuse)",
    expected: "Landscape",
    run: async (ground) => {
      ground.sheet.pageLayout.orientation = "Landscape";
      await loaded(ground, ground.sheet.pageLayout, "orientation");
      return ground.sheet.pageLayout.orientation;
    },
  },
];
