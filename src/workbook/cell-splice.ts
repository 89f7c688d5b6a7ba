import { cellName } from "../cells";
import { formulaXml, valueXml } from "./cell-xml";
import type { CellEdit } from "./edit";
import type { Span } from "./sheet-scan";
import { openingTag } from "./tree";

export interface SpliceContext {
  /** The cm attribute that marks a dynamic array; makes the metadata part when needed. */
  readonly dynamicArrayMark: () => number;
}

/** A cell written anew: its other attributes and children stay. */
export function cellXml(
  text: string,
  prefix: string,
  place: { attributes: Record<string, string>; children: readonly Span[] },
  edit: CellEdit,
  context: SpliceContext,
): string {
  const { t, cm, vm, ...attributes } = place.attributes;
  const isFormula = (span: Span) => span.tag.name === `${prefix}f`;
  const isValue = (span: Span) => [`${prefix}v`, `${prefix}is`].includes(span.tag.name);
  const raw = (test: (span: Span) => boolean) =>
    place.children
      .filter(test)
      .map((span) => text.slice(span.start, span.end))
      .join("");

  let formula = raw(isFormula);
  let mark = cm;
  if (edit.formula === null) {
    formula = "";
    mark = undefined;
  } else if (edit.formula !== undefined) {
    const { arrayRef, isFixed } = edit.formula;
    formula = formulaXml(prefix, edit.formula.text, arrayRef);
    mark = arrayRef === null || isFixed ? undefined : String(context.dynamicArrayMark());
  }

  let type = t ?? null;
  let value = raw(isValue);
  let valueMark = vm;
  if (edit.value !== undefined) {
    const written = valueXml(prefix, edit.value, formula !== "");
    type = written.type;
    value = written.xml;
    valueMark = undefined;
  }
  if (edit.style === 0) delete attributes.s;
  else if (edit.style !== undefined) attributes.s = String(edit.style);
  if (type !== null) attributes.t = type;
  if (mark !== undefined) attributes.cm = mark;
  if (valueMark !== undefined) attributes.vm = valueMark;
  const inner = formula + value + raw((span) => !isFormula(span) && !isValue(span));
  const open = openingTag(`${prefix}c`, attributes, inner === "");
  return inner === "" ? open : `${open}${inner}</${prefix}c>`;
}

export function newCellXml(
  prefix: string,
  row: number,
  col: number,
  edit: CellEdit,
  context: SpliceContext,
) {
  const attributes: Record<string, string> = { r: cellName(row, col) };
  if (edit.newStyle !== 0) attributes.s = String(edit.newStyle);
  return cellXml("", prefix, { attributes, children: [] }, edit, context);
}
