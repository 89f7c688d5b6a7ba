import { type CellValue, InputError, isBlankCell } from "../../cells";
import { layouts } from "../columns";
import type { FitChoice, JobFile } from "../grid";
import { plainName } from "./heading";

/** Name of the sheet in which a user's own answers are kept. */
export const fitSheetTitle = "Fit";

/** Headings of the Fit sheet: an answer a row. */
export const fitHeadings = ["Sheet", "Heading", "Field", "Word", "Means"] as const;

/** What a sheet is said to hold, and a field that only a firm's own sheet has. */
const ownTitles: Readonly<Record<string, string>> = { fans: "fans", openingSize: "Opening size" };
const noFans = "no fans";

/** An answer as a row of the Fit sheet; a field that no sheet has is an InputError. */
export function rowOfChoice({ sheet, heading, field, word, means }: FitChoice): string[] {
  const known = layouts.flatMap(({ fields }) => fields).find(({ key }) => key === field);
  const title = field === "" ? (heading === "" ? noFans : "") : (ownTitles[field] ?? known?.title);
  if (title === undefined) throw new InputError(`No sheet of a job has a field "${field}".`);
  return [sheet, heading, title, word ?? "", means ?? ""];
}

/** The answer of a row; undefined for a row that holds none. */
function choiceOfRow(row: readonly CellValue[]): FitChoice | undefined {
  const [sheet, heading, title, word, means] = fitHeadings.map((_, i) =>
    isBlankCell(row[i] ?? null) ? "" : String(row[i]),
  ) as [string, string, string, string, string];
  const name = plainName(title);
  const own = Object.keys(ownTitles).find((key) => plainName(ownTitles[key] as string) === name);
  const field =
    own ??
    layouts.flatMap(({ fields }) => fields).find((each) => plainName(each.title) === name)?.key ??
    "";
  if (word !== "") return field === "" ? undefined : { sheet, heading, field, word, means };
  const isOfSheet = field === "fans" || name === noFans;
  return heading === "" && !(sheet !== "" && isOfSheet) ? undefined : { sheet, heading, field };
}

/** The answers that the workbook keeps. */
export function readChoices(file: JobFile): FitChoice[] {
  const grid = file.sheets.find(({ name }) => plainName(name) === plainName(fitSheetTitle));
  if (!grid) return [];
  return Array.from({ length: Math.max(0, grid.rowCount - 1) }, (_, i) =>
    choiceOfRow(fitHeadings.map((_, col) => grid.value(i + 1, col))),
  ).filter((choice) => choice !== undefined);
}

/** Whether two answers are to the same question. */
function isSameQuestion(a: FitChoice, b: FitChoice): boolean {
  const same = (x = "", y = "") => x.trim().toLowerCase() === y.trim().toLowerCase();
  const isWord = a.word !== undefined || b.word !== undefined;
  return isWord
    ? a.field === b.field && same(a.word, b.word)
    : same(a.sheet, b.sheet) && same(a.heading, b.heading);
}

/** The answers with one more, in place of a former one to the same question. */
export function withAnswer(choices: readonly FitChoice[], said: FitChoice): FitChoice[] {
  return [...choices.filter((each) => !isSameQuestion(each, said)), said];
}

/** A workbook's own answers, and those of a firm's file to what it does not answer itself. */
export function withFirms(own: readonly FitChoice[], firms: readonly FitChoice[]): FitChoice[] {
  return [...own, ...firms.filter((each) => !own.some((held) => isSameQuestion(held, each)))];
}

/** What the first line of a firm's file says. */
const format = "answers of a firm, 1";

/**
 * A firm's file: JSON of `{"fanrow": "answers of a firm, 1", "answers": [row, …]}`, each row an object
 * of the Fit sheet's headings, blanks left out. Headings of a firm's own sheets hold for any sheet;
 * `named` are the sheets whose answers keep their sheet's name.
 */
export function firmFileOf(choices: readonly FitChoice[], named: ReadonlySet<string>): string {
  const answers = choices.map((choice) => {
    const isNamed = choice.heading === "" || named.has(choice.sheet);
    const row = rowOfChoice(isNamed ? choice : { ...choice, sheet: "" });
    const filled = fitHeadings.map((heading, i) => [heading, row[i]] as const);
    return Object.fromEntries(filled.filter(([, value]) => value !== ""));
  });
  return `${JSON.stringify({ fanrow: format, answers }, null, 2)}\n`;
}

/** The answers of a firm's file; an InputError says what is wrong with any other text. */
export function readFirmFile(text: string): FitChoice[] {
  let held: unknown;
  try {
    held = JSON.parse(text);
  } catch {
    throw new InputError("is no file of a firm's answers: its text is no JSON");
  }
  const { fanrow, answers } = (held ?? {}) as { fanrow?: unknown; answers?: unknown };
  if (fanrow !== format || !Array.isArray(answers))
    throw new InputError(
      `is no file of a firm's answers: it does not begin with "fanrow": "${format}"`,
    );
  return answers.map((answer: Record<string, unknown> | null, i) => {
    const row = fitHeadings.map((heading) => {
      const value = answer?.[heading];
      return typeof value === "string" ? value : "";
    });
    const choice = choiceOfRow(row);
    if (!choice)
      throw new InputError(`answer ${i + 1} names neither a heading, a sheet nor a word`);
    return choice;
  });
}
