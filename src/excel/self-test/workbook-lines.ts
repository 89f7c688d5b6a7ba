import { givesFile, workbookBytes } from "../workbook-file";
import { type Line, read, told } from "./line";

/** Waits for something the host is to tell of. */
function heard(start: (hear: (what: string) => void) => Promise<void>): Promise<string> {
  return new Promise((resolve, reject) => {
    start(resolve).catch(reject);
  });
}

/** The workbook around the sheet: calendar, names, events, file, theme. */
export const workbookLines: readonly Line[] = [
  {
    name: "the calendar of the workbook",
    expected: { words: "1900 or 1904", pattern: /^(1900|1904)$/ },
    run: async (ground) => {
      ground.sheet.getRange("A1:A2").formulas = [["=DATE(2024,1,1)"], ["=N(A1)"]];
      return (await read(ground, "A2")) === "45292" ? "1900" : "1904";
    },
  },
  {
    name: "whether formulas are worked out by themselves",
    expected: null,
    run: async ({ book }) => {
      book.workbook.application.load("calculationMode");
      await book.sync();
      return book.workbook.application.calculationMode;
    },
  },
  {
    name: "a name of the sheet is found by a formula",
    expected: "7",
    run: async (ground) => {
      ground.sheet.getRange("A1").values = [[7]];
      ground.sheet.names.add("FanrowTestCell", ground.sheet.getRange("A1"));
      ground.sheet.getRange("B1").formulas = [["=FanrowTestCell"]];
      const got = await read(ground, "B1");
      ground.sheet.names.getItem("FanrowTestCell").delete();
      await ground.book.sync();
      return got;
    },
  },
  {
    name: "a cell is selected",
    expected: "C3",
    run: async ({ book, sheet }) => {
      sheet.activate();
      sheet.getRange("C3").select();
      const active = book.workbook.getActiveCell();
      active.load("address");
      await book.sync();
      return active.address.replace(/^.*!/, "");
    },
  },
  {
    name: "an edit is told of",
    expected: "A1",
    run: ({ book, sheet }) =>
      heard(async (hear) => {
        sheet.onChanged.add(async ({ address }) => hear(address));
        await book.sync();
        sheet.getRange("A1").values = [[1]];
        await book.sync();
      }),
  },
  {
    name: "another selection is told of",
    expected: "B2",
    run: ({ book, sheet }) =>
      heard(async (hear) => {
        sheet.activate();
        sheet.getRange("A1").select();
        await book.sync();
        sheet.onSelectionChanged.add(async ({ address }) => hear(address));
        await book.sync();
        sheet.getRange("B2").select();
        await book.sync();
      }),
  },
  {
    name: "the workbook is handed over as a file",
    expected: { words: "its size, or not offered", pattern: /^(\d+ kB|not offered)$/ },
    limit: 60,
    run: async () =>
      givesFile() ? `${Math.ceil((await workbookBytes()).length / 1000)} kB` : "not offered",
  },
  {
    name: "the colours of Office",
    expected: null,
    run: async () => {
      const { Office: office } = globalThis as { Office?: Partial<typeof Office> };
      const theme = office?.context?.officeTheme as Office.OfficeTheme | undefined;
      return theme ? `${theme.bodyBackgroundColor} and ${theme.bodyForegroundColor}` : "not told";
    },
  },
  {
    name: "the mark that keeps storage apart",
    expected: null,
    run: async () => {
      const { Office: office } = globalThis as { Office?: Partial<typeof Office> };
      return told((office?.context as { partitionKey?: string } | undefined)?.partitionKey);
    },
  },
];
