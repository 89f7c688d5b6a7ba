import { type CellValue, numberText, significant } from "../cells";
import type { Agreement, ArgumentTrace, CallTrace, CellSeen, Read, Trace } from "./trace-data";

/** A trace as text, for a terminal or a note: the cell, its formula, each call, what it reads. */
export function lines(trace: Trace): string[] {
  const { formula, calls, reads, picks, agreement, spilledFrom, spread } = trace;
  const out = [headLine(trace)];
  if (trace.kind === "blank") return [...out, "  blank"];
  out.push(formula === null ? "  typed value, no formula" : `  ${formula}`);
  if (trace.given) out.push(`  its row gives ${trace.given}`);
  if (spilledFrom) out.push(`  spilled from ${spilledFrom.name}`);
  for (const call of calls) out.push(...callTraceLines(call).map((line) => `  ${line}`));
  // What a call of ours reads stands with its arguments.
  const used = calls.filter(({ unused }) => unused === undefined);
  const told = new Set(
    used.flatMap((call) => call.arguments.flatMap((each) => each.reads.map(keyOf))),
  );
  const rest = reads.filter((read) => !told.has(keyOf(read)));
  out.push(...rest.flatMap(readLines).map((line) => `  reads ${line}`));
  for (const pick of picks) {
    const more =
      pick.count > pick.cells.length ? ` and ${pick.count - pick.cells.length} more` : "";
    const taken = pick.cells.map(seenText).join("; ");
    out.push(`  ${pick.text} takes ${pick.count === 0 ? "no cell" : taken}${more}`);
  }
  if (spread) out.push(`  spread: ${seenText(spread)}`);
  if (agreement) out.push(`  ${agreementText(agreement, formula === null)}`);
  return out;
}

/** One call as text: title, sums, arguments, sources. */
function callTraceLines(call: CallTrace): string[] {
  const where = call.inside.length > 0 ? `, inside ${call.inside.join(" in ")}` : "";
  const out = [`${call.id}: ${call.title}${where}`];
  if (call.unused !== undefined) return [...out, `  not used here: ${call.unused}`];
  out.push(...call.lines.map((line) => `  ${line}`));
  if (call.problem !== undefined) out.push(`  not worked out: ${call.problem}`);
  out.push(...call.arguments.map((each) => `  · ${argumentText(each)}`));
  if (call.picked.length > 0) out.push(`  takes ${call.picked.map(seenText).join("; ")}`);
  out.push(...call.sources.map(({ text }) => `  source: ${text}`));
  return out;
}

function argumentText({
  name,
  given,
  text,
  reads,
  value,
  stoodIn,
  description,
}: ArgumentTrace): string {
  if (given === "left out") {
    const instead = stoodIn === undefined ? "" : `, ${stoodIn} stands in`;
    return `${name}: left out${instead} (${description})`;
  }
  const shown = value === undefined ? "" : ` = ${valueText(value)}`;
  const [read] = reads;
  const from =
    given === "literal"
      ? "typed in the formula"
      : given === "cell" && read?.cells[0]
        ? `from ${placeText(read.cells[0])}`
        : given === "range" && read
          ? `from ${text}, ${countText(read)}`
          : `from ${text}`;
  return `${name}${shown} ${from} (${description})`;
}

function readLines(read: Read): string[] {
  if (read.cells.length === 0) return [`${read.text}: ${countText(read)}`];
  if (read.count === 1) return read.cells.map(seenText);
  return [`${read.text}: ${read.cells.map(seenText).join("; ")}`];
}

function agreementText(agreement: Agreement, isTyped: boolean): string {
  switch (agreement.state) {
    case "agrees":
      return isTyped
        ? "The typed value agrees with its row."
        : "The stored value is what the formula gives.";
    case "differs":
      if (isTyped) return "The typed value does not agree with its row.";
      return `The formula gives ${valueText(agreement.fresh)}: the stored value is not what it gives.`;
    case "changes":
      return `Not compared: ${agreement.why}.`;
    case "not evaluated":
      return `Not compared: ${agreement.why} is not evaluated here.`;
  }
}

const keyOf = ({ place }: Read) => JSON.stringify(place);
const countText = ({ count, filled }: Read) =>
  `${count} cells${filled < count ? `, ${filled} filled` : ""}`;
const placeText = ({ name, label }: CellSeen) => (label === "" ? name : `${name}, ${label}`);
const seenText = (cell: CellSeen) => `${placeText(cell)}: ${valueText(cell.value)}`;

function headLine(trace: Trace): string {
  return trace.kind === "blank" ? placeText(trace) : seenText(trace);
}

/** A value as the trace writes it: numbers to six digits, texts in quotes. */
export function valueText(value: CellValue): string {
  if (value === null || value === "") return "blank";
  if (typeof value === "number")
    return Number.isInteger(value) ? numberText(value) : significant(value);
  if (typeof value === "string") return `"${value}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value.message === undefined ? value.error : `${value.error} (${value.message})`;
}
