import { checkedColor } from "./color";
import type { Element, XmlPart } from "./tree";
import { openingTag } from "./tree";
import type { Edges } from "./types";

/** The sides of a border in the order of the format. */
export const sides = ["left", "right", "top", "bottom"] as const;

/** A border with some of its sides changed; undefined takes a side's line away. */
export function changedBorderXml(doc: XmlPart, border: Element | undefined, edges: Edges): string {
  const p = doc.prefix;
  const color = `<${p}color ${edges.color === undefined ? 'auto="1"' : `rgb="FF${checkedColor(edges.color)}"`}/>`;
  const side = (name: (typeof sides)[number]) => {
    const old = border && doc.child(border, name);
    if (!Object.hasOwn(edges, name)) return old === undefined ? `<${p}${name}/>` : doc.raw(old);
    const style = edges[name];
    return style === undefined
      ? `<${p}${name}/>`
      : `<${p}${name} style="${style}">${color}</${p}${name}>`;
  };
  const known = new Set<string>(sides);
  const rest = (border?.children ?? []).filter(({ local }) => !known.has(local));
  const kept = rest.length === 0 ? `<${p}diagonal/>` : rest.map((each) => doc.raw(each)).join("");
  const inner = sides.map(side).join("") + kept;
  return `${openingTag(`${p}border`, border?.attributes ?? {}, false)}${inner}</${p}border>`;
}

/** The lines on the sides of a border; undefined where there is none. */
export function readEdges(doc: XmlPart, border: Element | undefined): Edges | undefined {
  const edges: { -readonly [K in keyof Edges]: Edges[K] } = {};
  for (const name of sides) {
    const style = border && doc.child(border, name)?.attributes.style;
    if (style !== undefined && style !== "none") edges[name] = style as Edges["left"];
  }
  return Object.keys(edges).length === 0 ? undefined : edges;
}
