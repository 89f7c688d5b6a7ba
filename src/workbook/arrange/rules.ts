import { parseRectangle } from "../../cells";
import { escapeText } from "../text";
import type { Element } from "../tree";
import { isTrue } from "../xml";
import type { SheetFrame } from "./frame";
import type { ConditionalFormat, ConditionalLook, ConditionalOperator } from "./spec";

/** The looks of conditional formats, which stand in the styles part. */
export interface Looks {
  look(dxfId: number): ConditionalLook;
  addLook(look: ConditionalLook): number;
}

/** A rule as it stands in the file; null for kinds that are left as they are. */
interface RuleElement {
  readonly element: Element;
  readonly parent: Element;
  readonly priority: number;
  readonly format: ConditionalFormat | null;
}

function ruleElements(frame: SheetFrame, looks: Looks): RuleElement[] {
  return frame.all("conditionalFormatting").flatMap((parent) =>
    frame.doc.children(parent, "cfRule").map((element) => {
      const priority = Number(element.attributes.priority ?? 0);
      return { element, parent, priority, format: readFormat(frame, parent, element, looks) };
    }),
  );
}

function readFormat(
  frame: SheetFrame,
  parent: Element,
  element: Element,
  looks: Looks,
): ConditionalFormat | null {
  const { type, operator, stopIfTrue, dxfId } = element.attributes;
  const { sqref = "" } = parent.attributes;
  if ((type !== "expression" && type !== "cellIs") || !isPlainRef(sqref)) return null;
  const id = dxfId === undefined ? undefined : Number(dxfId);
  return Object.freeze({
    ref: sqref,
    operator: type === "cellIs" ? ((operator ?? "equal") as ConditionalOperator) : null,
    formulas: frame.doc.children(element, "formula").map(({ text }) => text),
    stopIfTrue: isTrue(stopIfTrue),
    look: id === undefined ? {} : looks.look(id),
    dxfId: id,
  });
}

/** Whether a text is ranges of cells with spaces between, as the format wants. */
function isPlainRef(text: string): boolean {
  try {
    return text.split(" ").map(parseRectangle).length > 0;
  } catch {
    return false;
  }
}

/** The conditional formats by formula or value: in the order of the file, and the first to count first. */
export function readConditionalFormats(frame: SheetFrame, looks: Looks) {
  const inFile = ruleElements(frame, looks).flatMap(({ format, priority }) =>
    format === null ? [] : { format, priority },
  );
  const byPriority = [...inFile].sort((a, b) => a.priority - b.priority);
  return {
    inFile: inFile.map(({ format }) => format),
    byPriority: byPriority.map(({ format }) => format),
  };
}

/**
 * Makes these the conditional formats of the sheet. `known` are the objects that stand for the
 * rules in the file, in its order; the result stands for those it has then.
 */
export function arrangeConditionalFormats(
  frame: SheetFrame,
  known: readonly ConditionalFormat[],
  next: readonly ConditionalFormat[],
  looks: Looks,
): ConditionalFormat[] {
  const { doc } = frame;
  let place = 0;
  const rules = ruleElements(frame, looks).map((rule) => ({
    ...rule,
    format: rule.format === null ? null : (known[place++] as ConditionalFormat),
  }));
  const wanted = new Set(next);
  const gone = new Set(rules.filter(({ format }) => format !== null && !wanted.has(format)));
  const kept = rules.filter((rule) => !gone.has(rule));
  const priorities = orderOf(kept, next);
  for (const parent of new Set(rules.map((rule) => rule.parent))) {
    const own = rules.filter((rule) => rule.parent === parent);
    if (own.every((rule) => gone.has(rule))) doc.remove(parent);
    else for (const { element } of own.filter((rule) => gone.has(rule))) doc.remove(element);
  }
  for (const { element, priority } of kept) {
    const given = priorities.get(element) as number;
    if (given !== priority) doc.setAttribute(element, "priority", String(given));
  }
  const inFile = new Set(kept.map(({ format }) => format));
  const added = next.filter((format) => !inFile.has(format));
  for (const format of added)
    frame.insert("conditionalFormatting", formatXml(frame, format, priorities, looks));
  return [...kept.flatMap(({ format }) => format ?? []), ...added];
}

/** Priorities from 1 for all rules: the given order, with other kinds behind those they followed. */
function orderOf(
  kept: readonly RuleElement[],
  next: readonly ConditionalFormat[],
): Map<Element | ConditionalFormat, number> {
  const elements = new Map(kept.map((rule) => [rule.format, rule]));
  const order: (RuleElement | ConditionalFormat)[] = next.map((each) => elements.get(each) ?? each);
  const others = kept.filter(({ format }) => format === null);
  for (const other of others.sort((a, b) => a.priority - b.priority)) {
    const before = (each: RuleElement | ConditionalFormat) =>
      "element" in each && each.priority < other.priority;
    const after = order.findLastIndex(before);
    const first = order.findIndex((each) => "element" in each);
    order.splice(after >= 0 ? after + 1 : first >= 0 ? first : order.length, 0, other);
  }
  return new Map(order.map((each, i) => ["element" in each ? each.element : each, i + 1]));
}

function formatXml(
  frame: SheetFrame,
  format: ConditionalFormat,
  priorities: ReadonlyMap<Element | ConditionalFormat, number>,
  looks: Looks,
): string {
  const { ref, operator, formulas, stopIfTrue, look, dxfId } = format;
  const attributes: Record<string, string> = {
    type: operator === null ? "expression" : "cellIs",
    dxfId: String(dxfId ?? looks.addLook(look)),
    priority: String(priorities.get(format)),
  };
  if (stopIfTrue) attributes.stopIfTrue = "1";
  if (operator !== null) attributes.operator = operator;
  const inner = formulas.map((text) => frame.element("formula", {}, escapeText(text))).join("");
  const rule = frame.element("cfRule", attributes, inner);
  return frame.element("conditionalFormatting", { sqref: ref }, rule);
}
