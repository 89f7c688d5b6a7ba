import {
  type Finding,
  fitSheetTitle,
  type Job,
  type JobFile,
  layouts,
  type SheetFit,
} from "../job";

/** Sheets that are written by us, whatever number stands behind their name. */
const ownSheet = new RegExp(`^(findings|accepted|${fitSheetTitle})( \\d+)?$`, "i");

export function isOwnSheet(name: string): boolean {
  return ownSheet.test(name);
}

/** Which rows have a name, and what it is: "Lot 07, B1". */
export class Places {
  private readonly fits: ReadonlyMap<string, SheetFit>;

  constructor(
    private readonly file: JobFile,
    private readonly job: Job,
  ) {
    this.fits = new Map(
      Object.values(job.fit.sheets)
        .flat()
        .map((sheet) => [sheet.sheet, sheet]),
    );
  }

  fitOf(sheet: string): SheetFit | undefined {
    return this.fits.get(sheet);
  }

  /** Whether anything of the job was read from a sheet. */
  isOfJob(sheet: string): boolean {
    const { fit, fans } = this.job;
    return (
      this.fits.has(sheet) ||
      [...fit.settings.values()].some((at) => at.sheet === sheet) ||
      (fans?.table.sheets.includes(sheet) ?? false)
    );
  }

  /** The rows of the fan table that stand in a row of a sheet. */
  readingsOf(sheet: string, row: number): readonly number[] {
    return this.job.fans?.table.readingsAt(sheet, row) ?? [];
  }

  /** The column in which a row's verdict stands; undefined where it has none. */
  verdictCol(sheet: string, row: number): number | undefined {
    const [i] = this.readingsOf(sheet, row);
    return i === undefined ? undefined : this.job.fans?.table.place("verdict", i)?.col;
  }

  /** The row's own name: its first fields, or the first text of a sheet that is not the job's. */
  about(sheet: string, row: number, col: number): string {
    const grid = this.file.sheets.find(({ name }) => name === sheet);
    if (!grid || row < 0) return "";
    const { fans, firm } = this.job;
    const own = fans?.table.readingsAt(sheet, row, col)[0] ?? this.readingsOf(sheet, row)[0];
    if (firm && fans && own !== undefined) return fans.label(own);
    const text = (col: number) => {
      const value = grid.value(row, col);
      return typeof value === "string" || typeof value === "number" ? String(value).trim() : "";
    };
    const fit = this.fits.get(sheet);
    if (fit) {
      const names = layouts.find(({ kind }) => kind === fit.kind)?.names ?? [];
      const named = names.flatMap((key) => {
        const column = fit.columns.get(key);
        return column ? [text(column.col)] : [];
      });
      const words = named.filter((word) => word !== "").join(", ");
      if (words !== "") return words;
    }
    for (let col = 0; col < grid.colCount; col++)
      if (grid.formula(row, col) === null && typeof grid.value(row, col) === "string")
        return text(col).slice(0, 40);
    return "";
  }
}

/** Findings that already say what is wrong with the formula, or with what is typed, in a cell. */
const telling = new Set<Finding["kind"]>([
  "formula-typed-over",
  "value-differs",
  "number-as-text",
  "cell-error",
  "date-wrong",
  "opening-uncounted",
  "area-not-of-openings",
  "area-unit",
  "area-is-size",
  "area-not-of-sizes",
  "constant-differs",
  "flow-is-rating",
]);

/** The cells of which findings already tell. */
export function toldCells(known: readonly Finding[]): ReadonlySet<string> {
  return new Set(
    known.filter(({ kind }) => telling.has(kind)).map(({ sheet, cell }) => `${sheet}!${cell}`),
  );
}
