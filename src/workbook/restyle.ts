import { changedBorderXml, readEdges, sides } from "./borders";
import { checkedColor } from "./color";
import { type Element, openingTag, type XmlPart } from "./tree";
import type { StyleSpec } from "./types";
import { isTrue } from "./xml";

/** What changing a format needs of the styles part. */
interface StyleParts {
  /** The part as it stands; another object after each addition. */
  doc(): XmlPart;
  /** Index of an item with this text in a container, appended when there is none. */
  ensure(container: string, xml: string): number;
  formatId(code: string): number;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

function item(doc: XmlPart, container: string, index = -1): Element | undefined {
  return doc.child(doc.root, container)?.children[index];
}

export function rgbOf(color: Element | undefined): string | undefined {
  return /^(?:[0-9A-F]{2})?([0-9A-F]{6})$/i.exec(color?.attributes.rgb ?? "")?.[1]?.toUpperCase();
}

/** <b/> and <b val="1"/> are on, <b val="0"/> is off; undefined where nothing is said. */
export function isOn(doc: XmlPart, font: Element | undefined, local: string): boolean | undefined {
  const mark = font && doc.child(font, local);
  return mark && isTrue(mark.attributes.val ?? "1");
}

/** Height of the letters in cells without a format of their own. */
function usualSize(doc: XmlPart): number {
  const font = item(doc, "fonts", 0);
  return Number((font && doc.child(font, "sz")?.attributes.val) ?? 11);
}

/** The colours that a sheet has where none is set, and those of the theme that are black and white in every one met. */
const [black, white] = ["000000", "FFFFFF"];
const byTheme: Readonly<Record<string, string>> = { "0": white, "1": black };
const byIndex: Readonly<Record<string, string>> = {
  "8": black,
  "9": white,
  "64": black,
  "65": white,
};

/** A colour so that equal ones are equal: six digits where they are known. */
function colorName(color: Element | undefined, usual: string): string {
  const { rgb, theme, tint, indexed } = color?.attributes ?? {};
  if (rgb !== undefined) return rgbOf(color) ?? rgb;
  if (theme !== undefined)
    return Number(tint ?? 0) === 0
      ? (byTheme[theme] ?? `theme ${theme}`)
      : `theme ${theme} ${tint}`;
  return indexed === undefined ? usual : (byIndex[indexed] ?? `indexed ${indexed}`);
}

/** Six digits each, or the name of a colour that only the theme knows. */
export interface CellColors {
  readonly ink: string;
  readonly ground: string;
}
export const plainColors: CellColors = { ink: black, ground: white };

/** The colours of text and of what it stands on, so that equal ones are equal. */
export function colorsOf(doc: XmlPart, style: number): CellColors {
  const xf = item(doc, "cellXfs", style);
  if (xf === undefined) return plainColors;
  const font = item(doc, "fonts", Number(xf.attributes.fontId ?? 0));
  const fill = item(doc, "fills", Number(xf.attributes.fillId ?? 0));
  const pattern = fill && doc.child(fill, "patternFill");
  const kind = pattern?.attributes.patternType ?? "none";
  const ink = colorName(font && doc.child(font, "color"), black);
  if (kind === "none") return { ink, ground: white };
  const ground = colorName(doc.child(pattern as Element, "fgColor"), white);
  return { ink, ground: kind === "solid" ? ground : `${kind} ${ground}` };
}

/** What a cell format looks like; without colours that need the theme. */
export function readStyle(doc: XmlPart, style: number, numberFormat: string): StyleSpec {
  const spec: Mutable<StyleSpec> = {};
  const xf = item(doc, "cellXfs", style);
  if (xf === undefined) return spec;
  if (numberFormat !== "General") spec.numberFormat = numberFormat;
  const font = item(doc, "fonts", Number(xf.attributes.fontId ?? 0));
  if (font !== undefined) {
    if (isOn(doc, font, "b")) spec.bold = true;
    if (isOn(doc, font, "i")) spec.italic = true;
    const size = Number(doc.child(font, "sz")?.attributes.val);
    if (size > 0 && size !== usualSize(doc)) spec.size = size;
    spec.color = rgbOf(doc.child(font, "color"));
  }
  const fill = item(doc, "fills", Number(xf.attributes.fillId ?? 0));
  const pattern = fill === undefined ? undefined : doc.child(fill, "patternFill");
  if (pattern?.attributes.patternType === "solid") spec.fill = rgbOf(doc.child(pattern, "fgColor"));
  const border = item(doc, "borders", Number(xf.attributes.borderId ?? 0));
  const edges = readEdges(doc, border);
  if (edges !== undefined && sides.every((side) => edges[side] !== undefined)) spec.border = true;
  else if (edges !== undefined) spec.edges = edges;
  const alignment = doc.child(xf, "alignment")?.attributes;
  if (isTrue(alignment?.wrapText)) spec.wrap = true;
  const protection = doc.child(xf, "protection")?.attributes;
  if (protection?.locked !== undefined && !isTrue(protection.locked)) spec.unlocked = true;
  const align = alignment?.horizontal;
  if (align === "left" || align === "center" || align === "right") spec.align = align;
  const valign = alignment?.vertical;
  if (valign === "top" || valign === "center") spec.valign = valign;
  return spec;
}

/** Index of a format like another with the looks changed that are named. */
export function restyle(style: number | undefined, changes: StyleSpec, parts: StyleParts): number {
  const named = (key: keyof StyleSpec) => Object.hasOwn(changes, key);
  const set: Record<string, string> = {};
  if (named("numberFormat")) {
    set.numFmtId = String(parts.formatId(changes.numberFormat ?? "General"));
    set.applyNumberFormat = "1";
  }
  if (named("bold") || named("italic") || named("color") || named("size")) {
    set.fontId = String(parts.ensure("fonts", fontXml(parts.doc(), style, changes)));
    set.applyFont = "1";
  }
  if (named("fill")) {
    set.fillId = String(fillId(changes.fill, parts));
    set.applyFill = "1";
  }
  if (named("border") || named("edges")) {
    const line = changes.border === true ? ("thin" as const) : undefined;
    const box = named("border") ? { left: line, right: line, top: line, bottom: line } : {};
    const doc = parts.doc();
    const old = item(doc, "borders", Number(item(doc, "cellXfs", style)?.attributes.borderId ?? 0));
    const xml = changedBorderXml(doc, old, { ...box, ...changes.edges });
    set.borderId = String(parts.ensure("borders", xml));
    set.applyBorder = "1";
  }
  if (named("wrap") || named("align") || named("valign")) set.applyAlignment = "1";
  if (named("unlocked")) set.applyProtection = "1";
  const doc = parts.doc();
  const base = item(doc, "cellXfs", style);
  const plain = { numFmtId: "0", fontId: "0", fillId: "0", borderId: "0", xfId: "0" };
  const attributes = { ...(base?.attributes ?? plain), ...set };
  const inner = xfContent(doc, base, changes);
  const name = base?.name ?? `${doc.prefix}xf`;
  const open = openingTag(name, attributes, inner === "");
  return parts.ensure("cellXfs", inner === "" ? open : `${open}${inner}</${name}>`);
}

function fillId(fill: string | undefined, parts: StyleParts): number {
  if (fill === undefined) return 0;
  const p = parts.doc().prefix;
  const color = `<${p}fgColor rgb="FF${checkedColor(fill)}"/><${p}bgColor indexed="64"/>`;
  const pattern = `<${p}patternFill patternType="solid">${color}</${p}patternFill>`;
  return parts.ensure("fills", `<${p}fill>${pattern}</${p}fill>`);
}

/** The font of a format with weight, slant or colour changed and all else kept, in its order. */
function fontXml(doc: XmlPart, style: number | undefined, changes: StyleSpec): string {
  const p = doc.prefix;
  const fontId = Number(item(doc, "cellXfs", style)?.attributes.fontId ?? 0);
  const font = item(doc, "fonts", fontId);
  const has = (key: keyof StyleSpec) => Object.hasOwn(changes, key);
  const replaced = new Set<string>();
  let start = "";
  for (const [key, local] of [
    ["bold", "b"],
    ["italic", "i"],
  ] as const) {
    if (!has(key)) continue;
    replaced.add(p + local);
    if (changes[key] === true) start += `<${p}${local}/>`;
  }
  let color = "";
  if (has("color")) {
    replaced.add(`${p}color`);
    if (changes.color !== undefined) color = `<${p}color rgb="FF${checkedColor(changes.color)}"/>`;
  }
  const size = has("size") ? `<${p}sz val="${changes.size ?? usualSize(doc)}"/>` : "";
  if (has("size")) replaced.add(`${p}sz`);
  const kept = (font?.children ?? []).filter((child) => !replaced.has(child.name));
  // The colour stands after the size and before the name.
  const after = new Set(["name", "family", "charset", "scheme"].map((local) => p + local));
  const at = kept.findIndex((child) => after.has(child.name));
  const raw = (children: readonly Element[]) => children.map((child) => doc.raw(child)).join("");
  const split = at < 0 ? kept.length : at;
  return `<${p}font>${start}${raw(kept.slice(0, split))}${size}${color}${raw(kept.slice(split))}</${p}font>`;
}

/** The children of a format: alignment and protection as changed, and the rest as it was. */
function xfContent(doc: XmlPart, base: Element | undefined, changes: StyleSpec): string {
  const child = (local: string) => base && doc.child(base, local);
  const changed = (local: string, keys: Partial<Record<keyof StyleSpec, string>>) => {
    const attributes = { ...child(local)?.attributes };
    for (const [key, name] of Object.entries(keys) as [keyof StyleSpec, string][])
      if (Object.hasOwn(changes, key)) {
        delete attributes[name];
        const value = changes[key];
        if (value)
          attributes[name] = key === "wrap" ? "1" : key === "unlocked" ? "0" : String(value);
      }
    const isBare = Object.keys(attributes).length === 0;
    return isBare ? "" : openingTag(doc.prefix + local, attributes, true);
  };
  const alignment = changed("alignment", {
    align: "horizontal",
    valign: "vertical",
    wrap: "wrapText",
  });
  const protection = changed("protection", { unlocked: "locked" });
  const rest = (base?.children ?? []).filter(
    ({ local }) => local !== "alignment" && local !== "protection",
  );
  return alignment + protection + rest.map((each) => doc.raw(each)).join("");
}
