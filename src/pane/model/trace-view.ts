import { numberText, type Spot, toldOf } from "../../cells";
import type { Job } from "../../job";
import {
  type Agreement,
  type CallTrace,
  lines,
  type Trace,
  TraceError,
  trace,
  withRow,
} from "../../trace";
import { type BudgetView, budgetView } from "./trace-budget";
import { type CallView, callView } from "./trace-calls";
import {
  type CellLink,
  linkTo,
  plainValue,
  type ReadLink,
  readLink,
  rowAbout,
  type Target,
  targetAt,
  withUnitOf,
} from "./trace-cells";
import { type CellNow, hasChanged, withCell } from "./trace-now";

/** A look-up or conditional sum with the cells that it takes. */
export interface PickView {
  readonly text: string;
  readonly cells: readonly CellLink[];
  /** "and 4 more"; "" where all are listed. */
  readonly more: string;
}

/** Why a cell holds what it holds, ready to be shown. */
export interface TraceView {
  readonly target: Target;
  /** Heading of its column, or the label beside it. */
  readonly heading: string;
  /** "Lot 01, B1" */
  readonly about: string;
  /** With unit; "blank" where it holds nothing. */
  readonly value: string;
  /** The stored number in full, where `value` is rounded, and what the sheet shows of it. */
  readonly stored: string;
  readonly kind: Trace["kind"];
  /** As typed, with "="; "" where there is none. */
  readonly formula: string;
  /** The sum of the row of a typed flow; "" where there is none. */
  readonly given: string;
  readonly spilledFrom: CellLink | undefined;
  /** Whether a fresh computation gives the stored value; undefined where none is compared. */
  readonly agreement: { readonly state: Agreement["state"]; readonly words: string } | undefined;
  readonly calls: readonly CallView[];
  /** What the formula reads besides the arguments of calls of ours. */
  readonly reads: readonly ReadLink[];
  readonly picks: readonly PickView[];
  /** For a flow whose row has a spread: that cell, and its budget. */
  readonly spread: { readonly cell: CellLink; readonly budget: BudgetView | undefined } | undefined;
  /** The cell has changed since the workbook was read. */
  readonly isChanged: boolean;
  /** The whole trace as plain text. */
  readonly text: string;
}

/** What is true of a trace whose cell has changed. */
export const changedWords =
  "This cell has changed since the workbook was checked. It is shown as it is now; the cells behind it are shown as they were then.";

/** A cell of which there is nothing to tell, and why. */
export interface NoTrace {
  readonly target: Target;
  readonly nothing: string;
}

/**
 * The trace of a cell of a checked job. `now` is what the cell holds at this moment, where that is
 * known: it then stands in place of what was read of it. Never throws.
 */
export function traceView(job: Job, spot: Spot, now?: CellNow): TraceView | NoTrace {
  const target = targetAt(spot);
  const isChanged = now !== undefined && hasChanged(job.file, spot, now);
  try {
    const grid = job.file.sheets.find(({ name }) => name === spot.sheet);
    if (!grid)
      return {
        target,
        nothing: `The sheet ${spot.sheet} was not there when the workbook was read: check again.`,
      };
    const isUsed = spot.row < grid.rowCount && spot.col < grid.colCount;
    if (!isUsed && !isChanged)
      return { target, nothing: `${target.name} is blank, and so is all around it.` };
    const file = isChanged && now ? withCell(job.file, spot, now) : job.file;
    const seen = trace(file, spot.sheet, spot.row, spot.col);
    const found = isChanged ? uncompared(seen) : withRow(seen, job);
    const beside = found.spread?.place;
    const spread = beside && trace(file, beside.sheet, beside.top, beside.left);
    return {
      ...viewOf(found, spread),
      text: [...lines(found), ...(isChanged ? [`  ${changedWords}`] : [])].join("\n"),
      about: rowAbout(job, spot),
      stored: storedWords(found, now),
      isChanged,
    };
  } catch (problem) {
    return {
      target,
      nothing: problem instanceof TraceError ? `${problem.message}.` : toldOf(problem),
    };
  }
}

/** Of a cell that has changed, with the cells behind it as they were, nothing can be compared. */
function uncompared({ agreement: _, ...rest }: Trace): Trace {
  return rest;
}

function viewOf(
  found: Trace,
  spread: Trace | undefined,
): Omit<TraceView, "about" | "stored" | "isChanged" | "text"> {
  const { label, value, agreement, picks, calls, spilledFrom } = found;
  return {
    target: targetAt({
      sheet: found.place.sheet,
      row: found.place.top,
      col: found.place.left,
    }),
    heading: label,
    value: withUnitOf(value, label),
    kind: found.kind,
    formula: found.formula ?? "",
    given: found.given ?? "",
    spilledFrom: spilledFrom && linkTo(spilledFrom),
    agreement: agreement && { state: agreement.state, words: agreementWords(agreement, found) },
    calls: calls.map((call) => callView(call, found)),
    reads: besideCalls(found).map(readLink),
    picks: picks.map(({ text, cells, count }) => ({
      text,
      cells: cells.map(linkTo),
      more: count > cells.length ? `and ${count - cells.length} more` : "",
    })),
    spread: found.spread && {
      cell: linkTo(found.spread),
      budget: spread?.calls.filter(counts).map(budgetView).find(Boolean),
    },
  };
}

const counts = ({ unused }: CallTrace) => unused === undefined;

/** What a call of ours reads stands with its arguments. */
function besideCalls({ reads, calls }: Trace): Trace["reads"] {
  const key = ({ place }: Trace["reads"][number]) => JSON.stringify(place);
  const told = new Set(
    calls.filter(counts).flatMap((call) => call.arguments.flatMap((each) => each.reads.map(key))),
  );
  return reads.filter((read) => !told.has(key(read)));
}

function agreementWords(agreement: Agreement, { label, given }: Trace): string {
  const what = given === undefined ? "a fresh computation" : "its row";
  switch (agreement.state) {
    case "agrees":
      return `Agrees with ${what}.`;
    case "differs":
      return `Does not agree: ${what} gives ${withUnitOf(agreement.fresh, label)}.`;
    case "changes":
      return `Not compared: ${agreement.why}.`;
    case "not evaluated":
      return `Not compared: ${agreement.why} is not evaluated here.`;
  }
}

/** What the rounded value leaves open: all digits of a number, and how the sheet shows it. */
function storedWords({ value }: Trace, now: CellNow | undefined): string {
  const isRounded = typeof value === "number" && plainValue(value) !== String(value);
  const full = isRounded ? `Stored as ${numberText(value)}` : "";
  const text = now?.text.trim() ?? "";
  const isOther = typeof value === "number" && text !== "" && Number(text) !== value;
  const shown = isOther ? `shown as ${text}` : "";
  const words = [full, shown].filter((part) => part !== "").join(", ");
  return words === "" ? "" : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
