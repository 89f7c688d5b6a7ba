import { cellName } from "../cells";
import { type FindingKind, type Grid, layouts } from "../job";
import type { Audit, AuditWords } from "./audit";
import { held, ofColumn, type SheetScan } from "./sheet-scan";

/** A number as people type it, with a blank or an apostrophe too many. */
const looksNumber = /^\s*(?:'\s*)?[-+]?(\d+([.,]\d+)?|\d{1,3}(,\d{3})+(\.\d+)?|\.\d+)\s*(?:%\s*)?$/;
/** A formula that stayed text. */
const looksFormula = /^\s*=\s*[A-Za-z_$([{+\-\d"']/;

/** A column is formatted as a whole: of a long one every eighth row is looked at. */
const everyRowUpTo = 5_000;

const leastCells = 3;
const leastShare = 0.6;

/** Numbers stored as text, formulas that stayed text, and cells that would make text of them. */
export function auditTexts(audit: Audit, scan: SheetScan): void {
  const fit = audit.places.fitOf(scan.grid.name);
  const fields = layouts.find(({ kind }) => kind === fit?.kind)?.fields ?? [];
  // In a field for text a number is as good as a text.
  const ofText = fields.filter(({ holds, is }) => holds === "text" && !is);
  const wordCols = new Set(ofText.map(({ key }) => fit?.columns.get(key)?.col));
  for (const column of scan.columns) {
    if (wordCols.has(column.col)) continue;
    for (const { kind, row, words } of toldOf(scan, column))
      audit.add(kind, scan.grid.name, row, column.col, words);
  }
}

interface Told {
  readonly kind: FindingKind;
  readonly row: number;
  readonly words: AuditWords;
}

const toldOf = ofColumn((scan, { codes, col, filled, numbers, formulas }) => {
  const { grid, stretch } = scan;
  const told: Told[] = [];
  const holdsNumbers = numbers >= leastCells && numbers >= leastShare * (filled - formulas - 1);
  const holdsFormulas = formulas >= leastCells && formulas >= leastShare * (filled - 1);
  const step = codes.length > everyRowUpTo ? 8 : 1;
  let formatted = 0;
  let firstFormatted = -1;
  for (let row = 0; row < codes.length; row++) {
    const code = codes[row] as number;
    if (code === held.blank) continue;
    if (code === held.text) {
      if (!stretch[row]) continue;
      const text = String(grid.value(row, col));
      if (holdsNumbers && looksNumber.test(text)) told.push(numberAsText(row, col, text));
      else if (stayedText(text) && (holdsFormulas || isTextCell(grid, row, col)))
        told.push({ kind: "cell-formatted-as-text", row, words: stayedTextWords(text) });
    } else if (
      row % step === 0 &&
      (code >= 0 || (code === held.number && holdsNumbers)) &&
      isTextCell(grid, row, col)
    ) {
      if (formatted++ === 0) firstFormatted = row;
    }
  }
  if (formatted === 0) return told;
  const more = formatted > 1 ? ", as are others of this column" : "";
  const what = grid.formula(firstFormatted, col) === null ? "number" : "formula";
  const words = {
    what: `the cell is formatted as text but holds a ${what}${more}`,
    effect: `Whoever edits it turns the ${what} into text, which is passed over.`,
    mend: "Give the cells the format General or a number format.",
  };
  return [...told, { kind: "cell-formatted-as-text" as const, row: firstFormatted, words }];
});

function isTextCell(grid: Grid, row: number, col: number): boolean {
  return grid.numberFormat?.(row, col) === "@";
}

/** Whether a text is a formula that was never worked out. */
export function stayedText(text: string): boolean {
  return text.trimStart().startsWith("=") && looksFormula.test(text);
}

export function stayedTextWords(text: string): AuditWords {
  return {
    what: `the cell shows the formula ${text.trim().slice(0, 60)} as text`,
    effect: "Nothing is worked out here.",
    mend: "Give the cell the format General, then enter the formula again.",
  };
}

function numberAsText(row: number, col: number, text: string): Told {
  const bare = text.replace(/['\s]/g, "");
  const isPlain = /^[-+]?(\d+(\.\d+)?|\.\d+)$/.test(bare);
  const words = {
    what: `"${text}" is a text, the cells beside it hold numbers`,
    effect: "A spreadsheet passes over text: the number is not used.",
    mend: "Type the number alone in a cell that is not formatted as text.",
    apply: isPlain
      ? { label: `Type ${bare}`, writes: [{ cell: cellName(row, col), value: Number(bare) }] }
      : undefined,
  };
  return { kind: "number-stored-as-text", row, words };
}
