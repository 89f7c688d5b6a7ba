import type { Rectangle } from "../../cells";
import type { ListRule } from "./book";
import type { HostRange } from "./host-range";
import { overlaps, subtract } from "./subtract";
import { HostError, invalidArgument } from "./wire/errors";

/** Reads a rule as a client sets it. Only lists are served. */
export function readRule(value: unknown): ListRule {
  if (typeof value !== "object" || value === null || Object.keys(value).length === 0)
    throw invalidArgument("A validation rule must name its kind, such as { list: … }.");
  const { list } = value as { list?: { source?: unknown; inCellDropDown?: unknown } };
  if (list === undefined)
    throw new HostError("UnsupportedOperation", "Only lists are available as validation rules.");
  const { source, inCellDropDown } = list;
  if (typeof source !== "string" || source === "")
    throw invalidArgument("The source of a list must be a text of entries or a formula.");
  return { list: { inCellDropDown: inCellDropDown !== false, source } };
}

export function setRule(range: HostRange, rule: ListRule): void {
  clearRules(range);
  range.tab.validations.push({ ranges: [range], rule });
  range.tab.book.touched({ kind: "layout", sheet: range.tab.name });
}

function clearRules(range: HostRange): void {
  const { validations } = range.tab;
  for (const validation of validations)
    if (validation.ranges.some((rect) => overlaps(rect, range)))
      validation.ranges = validation.ranges.flatMap((rect) => subtract(rect, range));
  const kept = validations.filter(({ ranges }) => ranges.length > 0);
  validations.splice(0, validations.length, ...kept);
}

/** The list of all cells of a range; null for none, undefined where they differ or have another rule. */
export function ruleOf(range: HostRange): ListRule | null | undefined {
  const touching = range.tab.validations.filter(({ ranges }) =>
    ranges.some((rect) => overlaps(rect, range)),
  );
  const [only, ...more] = touching;
  if (only === undefined) return null;
  let left: Rectangle[] = [range];
  for (const rect of only.ranges) left = left.flatMap((part) => subtract(part, rect));
  return more.length === 0 && left.length === 0 ? (only.rule ?? undefined) : undefined;
}
