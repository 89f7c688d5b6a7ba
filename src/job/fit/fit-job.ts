import { jobSettings, jobTitle, layouts, type SheetKind } from "../columns";
import type { FitChoice, JobFile } from "../grid";
import { fitSheetTitle, readChoices, withFirms } from "./answers";
import { fitSheet, type SheetFit } from "./fit-sheet";
import { plainName } from "./heading";

/** Where the sheets of a job were found in a workbook. */
export interface JobFit {
  readonly sheets: Readonly<Partial<Record<SheetKind, readonly SheetFit[]>>>;
  /** The sheet and cell of each setting of the Job sheet. */
  readonly settings: ReadonlyMap<string, { sheet: string; row: number; col: number }>;
  /** Answers that the workbook keeps. */
  readonly choices: readonly FitChoice[];
  /** The same with those of the firm's file that it does not answer itself. */
  readonly answers: readonly FitChoice[];
}

/** Finds the job's sheets: by their headings first, and of equals by the sheet's name. */
export function fitJob(file: JobFile): JobFit {
  const choices = readChoices(file);
  const answers = withFirms(choices, file.answers ?? []);
  const candidates = layouts.flatMap((layout) =>
    file.sheets.flatMap((grid) => {
      if (isOurOwn(grid.name)) return [];
      const fit = fitSheet(grid, layout, answers);
      const named = [layout.title, ...layout.words].some(
        (word) => plainName(word) === plainName(grid.name),
      );
      return fit ? [{ fit, score: fit.score + (named ? 150 : 0) }] : [];
    }),
  );
  candidates.sort((a, b) => b.score - a.score);
  const sheets: Partial<Record<SheetKind, SheetFit[]>> = {};
  const taken = new Set<string>();
  for (const { fit } of candidates) {
    const [first] = sheets[fit.kind] ?? [];
    if (taken.has(fit.sheet) || (first && !isAlike(first, fit))) continue;
    sheets[fit.kind] = [...(sheets[fit.kind] ?? []), fit];
    taken.add(fit.sheet);
  }
  const order = new Map(file.sheets.map(({ name }, at) => [name, at]));
  for (const fits of Object.values(sheets))
    fits.sort((a, b) => (order.get(a.sheet) ?? 0) - (order.get(b.sheet) ?? 0));
  return { sheets, settings: findSettings(file), choices, answers };
}

/** A further sheet of a kind has most of the columns that the first one has. */
const likeness = 0.7;

function isAlike(first: SheetFit, other: SheetFit): boolean {
  const shared = [...first.columns.keys()].filter((key) => other.columns.has(key));
  return shared.length >= likeness * Math.max(first.columns.size, other.columns.size);
}

function isOurOwn(name: string): boolean {
  return [fitSheetTitle, jobTitle].some((own) => own.toLowerCase() === name.toLowerCase());
}

/** The Job sheet's settings: a label in one column, the value to its right. */
function findSettings(file: JobFile): JobFit["settings"] {
  const found = new Map<string, { sheet: string; row: number; col: number }>();
  const grid = file.sheets.find((sheet) => sheet.name.toLowerCase() === jobTitle.toLowerCase());
  if (!grid) return found;
  for (let row = 0; row < Math.min(grid.rowCount, 200); row++) {
    const label = grid.value(row, 0);
    if (typeof label !== "string") continue;
    const name = plainName(label);
    const setting = jobSettings.find((entry) =>
      [entry.label, ...entry.words].some((word) => plainName(word) === name),
    );
    if (setting && !found.has(setting.key))
      found.set(setting.key, { sheet: grid.name, row, col: 1 });
  }
  return found;
}
