import { type CellValue, isBlankCell, isCellError, shown } from "../../cells";
import type { Field } from "../columns";
import { expectedIn } from "../facts";
import { restoredFormula } from "../mends";
import type { Table } from "../read";
import { aboutRow } from "./cell-types";
import type { Check } from "./check";

/** A column of which this share are formulas is a formula column. */
const formulaShare = 0.6;
const leastRows = 3;

/** Formulas replaced by typed values, and values that do not follow from their row. */
export const checkComputedCells: Check = (job, report) => {
  for (const table of Object.values(job.tables)) {
    const about = aboutRow(table);
    for (const field of table.layout.fields) {
      const { key } = field;
      const ofFirm = job.firm && job.fans?.table === table ? job.fans : undefined;
      // A firm's verdicts are in its own words, and have a check of their own.
      if (!field.is || !table.has(key) || (ofFirm && key === "verdict")) continue;
      const expected = expectedIn(job, table, field);
      const byFormula = isFormulaColumn(table, key);
      for (let i = 0; i < table.length; i++) {
        const value = table.raw(key, i);
        if (isBlankCell(value) || isCellError(value) || !table.has(key, i)) continue;
        if (ofFirm && !ofFirm.isMeasured(i)) continue;
        const typed = !table.hasFormula(key, i);
        const wanted = toldOf(table, field, i, expected);
        if (typed && byFormula)
          report.at("formula-typed-over", table, key, i, about(i), {
            what: `${text(value)} is typed where the column has a formula`,
            effect: effectOf(table, key, i, value, wanted),
            mend: "Copy the formula down from the row above.",
            apply: restoredFormula(table, key, i),
          });
        else if (
          wanted !== undefined &&
          !agrees(value, wanted, table.factor(key, i), () => typed || isRounded(table, key, i))
        )
          report.at("value-differs", table, key, i, about(i), {
            what: `${table.heading(key)} is ${text(value)} but the row gives ${text(wanted)}`,
            effect: typed
              ? "The typed value does not follow from the cells beside it."
              : "The formula does not use the cells of its own row, or uses another constant.",
            mend: typed
              ? `Type ${text(wanted)}, or enter a formula.`
              : "Compare the formula with that of the rows above and below.",
          });
      }
    }
  }
};

function isFormulaColumn(table: Table, key: string): boolean {
  let filled = 0;
  let formulas = 0;
  for (let i = 0; i < table.length; i++) {
    if (table.hasFormula(key, i)) formulas++;
    else if (isBlankCell(table.raw(key, i))) continue;
    filled++;
  }
  return filled >= leastRows && formulas / filled >= formulaShare;
}

type Expected = number | string | undefined;

/** What a cell should hold; undefined where that is not known, or where the firm has words of its own. */
function toldOf(
  table: Table,
  { key, says }: Field,
  i: number,
  expected: readonly CellValue[],
): Expected {
  const wanted = expected[i];
  if (typeof wanted === "number") return wanted;
  if (typeof wanted !== "string" || wanted === "") return undefined;
  const stored = table.text(key, i).toLowerCase();
  const isOurs = says ? says.includes(stored) : expected.includes(table.text(key, i));
  return isOurs || /FANROW/i.test(table.formula(key, i) ?? "") ? wanted : undefined;
}

function effectOf(
  table: Table,
  key: string,
  i: number,
  value: CellValue,
  wanted: Expected,
): string {
  if (wanted === undefined) return "It will not follow when the row changes.";
  return agrees(value, wanted, table.factor(key, i), () => true)
    ? "It agrees for now, but will not follow when the row changes."
    : `The row gives ${text(wanted)}.`;
}

/**
 * Whether a stored value is the expected one. A rounded one allows for the decimals it is written
 * with: 41 stands for anything that rounds to 41.
 */
function agrees(
  value: CellValue,
  wanted: number | string,
  factor: number,
  isRounded: () => boolean,
): boolean {
  if (typeof wanted === "string")
    return typeof value === "string" && value.trim().toLowerCase() === wanted.toLowerCase();
  if (typeof value !== "number") return false;
  const stored = wanted / factor;
  const off = Math.abs(value - stored);
  const noise = 1e-9 * Math.abs(stored);
  if (off <= noise) return true;
  if (off > 0.5 * (1 + 1e-9) || !isRounded()) return false;
  const decimals = /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;
  return decimals <= 6 && off <= 0.5 * 10 ** -decimals * (1 + 1e-9) + noise;
}

function isRounded(table: Table, key: string, i: number): boolean {
  return /ROUND/i.test(table.formula(key, i) ?? "");
}

function text(value: CellValue | undefined): string {
  return typeof value === "number" ? shown(value) : `"${String(value)}"`;
}
