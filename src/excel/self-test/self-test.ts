import { toHostError } from "../host-error";
import { run } from "../run";
import { functionLines } from "./function-lines";
import type { Line } from "./line";
import { markLines } from "./mark-lines";
import { sheetLines } from "./sheet-lines";
import { testSheet } from "./sheets";
import { workbookLines } from "./workbook-lines";

/** Every line that runs by itself, in order. */
export const lines: readonly Line[] = [
  ...functionLines,
  ...sheetLines,
  ...markLines,
  ...workbookLines,
];

/** What came of a line; "told" where nothing was expected. */
export interface Result {
  readonly name: string;
  readonly expected: string;
  readonly got: string;
  readonly outcome: "pass" | "fail" | "told";
  readonly seconds: number;
}

const usualLimit = 15;

/**
 * Runs every line, each on an empty sheet of its own that is deleted after it; no other sheet is
 * touched. A line that fails or takes too long does not keep the next from running.
 */
export async function selfTest(
  onResult: (result: Result, done: number) => void = () => {},
  chosen: readonly Line[] = lines,
): Promise<Result[]> {
  const back = await activeSheet();
  const results: Result[] = [];
  for (const line of chosen) {
    const result = await tried(line);
    results.push(result);
    onResult(result, results.length);
  }
  await dropSheet();
  if (back !== undefined) await activate(back);
  return results;
}

async function tried(line: Line): Promise<Result> {
  const { name, expected, limit = usualLimit } = line;
  const start = performance.now();
  const got = await Promise.race([attempt(line), tooLate(limit)]);
  const failed = got.startsWith("failed: ");
  const isAsked = expected === null;
  const fits =
    isAsked || (typeof expected === "string" ? got === expected : expected.pattern.test(got));
  return {
    name,
    expected: isAsked ? "to be told" : typeof expected === "string" ? expected : expected.words,
    got,
    outcome: failed || !fits ? "fail" : isAsked ? "told" : "pass",
    seconds: (performance.now() - start) / 1000,
  };
}

async function attempt(line: Line): Promise<string> {
  try {
    return await run(async (book) => {
      const old = book.sheets.getItemOrNullObject(testSheet);
      await book.sync();
      const sheet = book.sheets.add();
      if (!old.isNullObject) old.delete();
      sheet.name = testSheet;
      await book.sync();
      return line.run({ book, sheet });
    });
  } catch (thrown) {
    const { code, message } = toHostError(thrown);
    return `failed: ${code}, ${message}`;
  }
}

const tooLate = (seconds: number) =>
  new Promise<string>((resolve) => {
    setTimeout(() => resolve(`failed: nothing within ${seconds} s`), seconds * 1000);
  });

function activeSheet(): Promise<string | undefined> {
  return run(async (book) => {
    const sheet = book.sheets.getActiveWorksheet();
    sheet.load("id");
    await book.sync();
    return sheet.id;
  }).catch(() => undefined);
}

async function activate(id: string): Promise<void> {
  await run(async (book) => {
    book.sheets.getItemOrNullObject(id).activate();
    await book.sync();
  }).catch(() => {});
}

async function dropSheet(): Promise<void> {
  await run(async (book) => {
    const sheet = book.sheets.getItemOrNullObject(testSheet);
    await book.sync();
    if (!sheet.isNullObject) sheet.delete();
    await book.sync();
  }).catch(() => {});
}
