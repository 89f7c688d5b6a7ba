import { type Rectangle, rectangleText } from "../../cells";
import { farCols, farRows } from "./extent";

/** What is known of a sheet besides its cells. */
export interface SheetFacts {
  readonly name: string;
  readonly visibility: string;
  readonly isProtected: boolean;
  /** null where some are hidden and some are not. */
  readonly rowsHidden: boolean | null;
  readonly columnsHidden: boolean | null;
  readonly isFiltered: boolean;
  /** The merged cells; null where they are not known. */
  merged: readonly Rectangle[] | null;
  /** Where a used range ends that is too far to be read; else null. */
  readonly tooFar: string | null;
}

/** The facts that a reader of the findings should know, in words. */
export function notesOn(sheet: SheetFacts): string[] {
  const { name, merged } = sheet;
  const notes: string[] = [];
  if (sheet.tooFar)
    notes.push(
      `${name} is used as far as ${sheet.tooFar}, so only its first ${farRows} rows and ${farCols} columns are read. Clear what stands far from the rest, and read again.`,
    );
  if (sheet.visibility !== "Visible")
    notes.push(`${name} is a hidden sheet. It is read like the others.`);
  if (sheet.isProtected)
    notes.push(
      `${name} is protected. It can be checked; to mend or mark cells there, unprotect it first.`,
    );
  if (sheet.isFiltered)
    notes.push(`${name} is filtered. The rows that the filter hides are checked too.`);
  else if (sheet.rowsHidden !== false)
    notes.push(`${name} has hidden rows. They are checked like the others.`);
  if (sheet.columnsHidden !== false)
    notes.push(`${name} has hidden columns. They are read like the others.`);
  if (merged !== null && merged.length > 0)
    notes.push(
      `${name} has merged cells (${shortened(merged)}). Only the first cell of a merge holds a value.`,
    );
  return notes;
}

const mostNamed = 3;

/** "A1:B1, D4:D6 and 7 more" */
function shortened(all: readonly Rectangle[]): string {
  const rest = all.length - mostNamed;
  const named = all.slice(0, mostNamed).map(rectangleText).join(", ");
  return rest > 0 ? `${named} and ${rest} more` : named;
}
