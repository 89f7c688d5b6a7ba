import type { ConditionalLook } from "./arrange/spec";
import { checkedColor } from "./color";
import { isOn, rgbOf } from "./restyle";
import type { Element, XmlPart } from "./tree";

/** The look of a conditional format as the styles part holds it, without colours of the theme. */
export function readDifferential(doc: XmlPart, dxf: Element | undefined): ConditionalLook {
  if (dxf === undefined) return {};
  const font = doc.child(dxf, "font");
  const fill = doc.child(dxf, "fill");
  const pattern = fill && doc.child(fill, "patternFill");
  return {
    fill: rgbOf(pattern && doc.child(pattern, "bgColor")),
    color: rgbOf(font && doc.child(font, "color")),
    bold: isOn(doc, font, "b"),
    italic: isOn(doc, font, "i"),
  };
}

/** A dxf element: the fill of a conditional format stands in the background colour. */
export function differentialXml(p: string, { fill, color, bold, italic }: ConditionalLook): string {
  const flag = (local: string, on: boolean | undefined) =>
    on === undefined ? "" : `<${p}${local}${on ? "" : ' val="0"'}/>`;
  const rgb = (local: string, text: string) => `<${p}${local} rgb="FF${checkedColor(text)}"/>`;
  const font =
    flag("b", bold) + flag("i", italic) + (color === undefined ? "" : rgb("color", color));
  const pattern =
    fill === undefined ? "" : `<${p}patternFill>${rgb("bgColor", fill)}</${p}patternFill>`;
  return `<${p}dxf>${font === "" ? "" : `<${p}font>${font}</${p}font>`}${
    pattern === "" ? "" : `<${p}fill>${pattern}</${p}fill>`
  }</${p}dxf>`;
}
