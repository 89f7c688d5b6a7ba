import type { ConditionalLook } from "./arrange/spec";
import { checkedColor } from "./color";
import type { Element, XmlPart } from "./tree";
import { isTrue } from "./xml";

/** The look of a conditional format as the styles part holds it, without colours of the theme. */
export function readDifferential(doc: XmlPart, dxf: Element | undefined): ConditionalLook {
  if (dxf === undefined) return {};
  const font = doc.child(dxf, "font");
  const fill = doc.child(dxf, "fill");
  const pattern = fill && doc.child(fill, "patternFill");
  const rgb = (color: Element | undefined) =>
    /^(?:[0-9A-F]{2})?([0-9A-F]{6})$/i.exec(color?.attributes.rgb ?? "")?.[1]?.toUpperCase();
  const flag = (local: string) => {
    const mark = font && doc.child(font, local);
    return mark === undefined ? undefined : isTrue(mark.attributes.val ?? "1");
  };
  return {
    fill: rgb(pattern && doc.child(pattern, "bgColor")),
    color: rgb(font && doc.child(font, "color")),
    bold: flag("b"),
    italic: flag("i"),
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
