import { type CellError, isCellError } from "../../cells";
import type { Field } from "../columns";
import { factsOf } from "../facts";
import { numberAlone } from "../mends";
import type { Job, Table } from "../read";
import { asSentence } from "../words";
import { aboutIn } from "./about";
import type { Check } from "./check";
import { inheritsError } from "./inherited-error";

/** Text where a number belongs, and error values. */
export const checkCellTypes: Check = (job, report) => {
  for (const table of Object.values(job.tables)) {
    const about = aboutIn(job, table);
    // A file stores no message with an error; a fresh evaluation has one.
    const explained = (stored: CellError, key: string, i: number): CellError => {
      const place = table.place(key, i);
      const { calculator } = job.file;
      if (!calculator || !place || table.formula(key, i) === null) return stored;
      const again = calculator.recompute(place.grid.name, place.row, place.col);
      return "value" in again && isCellError(again.value) ? again.value : stored;
    };
    for (const field of table.layout.fields) {
      if (!table.has(field.key)) continue;
      for (let i = 0; i < table.length; i++) {
        const value = table.raw(field.key, i);
        if (value === null || typeof value === "number") continue;
        const isError = isCellError(value);
        if ((field.holds !== "number" && !isError) || !table.has(field.key, i)) continue;
        if (isError) {
          const { grid, row, col } = table.placeOrHome(field.key, i);
          if (inheritsError(job.file, grid, row, col)) continue;
          const again = explained(value, field.key, i);
          // Told of the two readings from which it does not follow.
          if (field.key === "unboxed" && isOdd(factsOf(job).fans?.twoOpenings(i))) continue;
          if (isOfSetting(job, again)) continue;
          report.at("cell-error", table, field.key, i, about(i), {
            what: `${table.heading(field.key, i)} holds ${value.error}`,
            effect: "Whatever uses this cell shows an error too.",
            mend: mendOfError(again),
            ...(again.message ? { cause: `${field.key}: ${again.message}` } : {}),
          });
          continue;
        }
        if (table.gap(field.key, i) !== "text") continue;
        // "none" says that no rate is required; a formula of ours, that no fan will do.
        if (field.says?.includes(String(value).trim().toLowerCase())) continue;
        if (field.is && /^none\b/.test(String(value)) && table.hasFormula(field.key, i)) continue;
        // A firm's "n/a" says that there is no number; a number with more behind it is a slip.
        if (job.firm && !/\d/.test(String(value))) continue;
        report.at("number-as-text", table, field.key, i, about(i), {
          what: `${table.heading(field.key, i)} holds the text "${String(value)}"`,
          effect: "A spreadsheet passes over text: the number is not used.",
          mend: mendOfText(String(value).trim()),
          apply: numberAlone(table, field.key, i, ownUnit(table, field, i)),
        });
      }
    }
  }
};

function mendOfText(text: string): string {
  return /^[-+]?\d*,\d+$/.test(text)
    ? `Type ${text.replace(",", ".")}, with a point before the decimals.`
    : "Type the number alone, without a unit or an apostrophe, in a cell that is not formatted as text.";
}

/** What a setting of the Job sheet makes wrong is told there. */
const isOfSetting = ({ settings }: Job, { message }: CellError) =>
  message !== undefined && settings.problems.some(({ what }) => message.startsWith(what));

const isOdd = (told: object | undefined) => told !== undefined && "problem" in told;

function mendOfError({ error, message }: CellError): string {
  if (message && !message.includes("holds #")) return asSentence(message);
  if (error === "#NAME?")
    return "The file was saved without the add-in: load it, then enter the cell again.";
  if (error === "#REF!")
    return "A cell that the formula needs was deleted: write the formula again.";
  return "Look at the cells that the formula uses.";
}

/** The unit in which a column is read: a number typed with it needs no conversion. */
function ownUnit(table: Table, field: Field, i: number): string[] {
  const unit = table.unit(field.key, i);
  return unit ? [unit] : [];
}
