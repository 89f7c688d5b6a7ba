import type { Package } from "../package";
import { type Element, openingTag, XmlPart } from "../tree";

/** Children of a worksheet in the order that the format demands (ECMA-376 part 1, 18.3.1.99). */
const order = `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection
  protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells
  phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins
  pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors
  smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls
  webPublishItems tableParts extLst`.split(/\s+/);

/** What stands around the cells of a sheet part, to be changed element by element. */
export class SheetFrame {
  readonly doc: XmlPart;

  constructor(part: string, bytes: Uint8Array, depth: number) {
    this.doc = new XmlPart(part, bytes, depth, "sheetData");
  }

  static of(pkg: Package, part: string): SheetFrame {
    return new SheetFrame(part, pkg.get(part) as Uint8Array, pkg.depth);
  }

  get prefix(): string {
    return this.doc.prefix;
  }

  all(local: string): Element[] {
    return this.doc.children(this.doc.root, local);
  }

  first(local: string): Element | undefined {
    return this.all(local)[0];
  }

  /** Puts an element in the place of the one of its kind, or where one belongs; "" removes it. */
  put(local: string, xml: string): void {
    const old = this.first(local);
    if (old === undefined) this.insert(local, xml);
    else if (this.doc.raw(old) !== xml) this.doc.replace(old, xml);
  }

  /** Adds an element after those of its kind. Calls must come in the order of the format. */
  insert(local: string, xml: string): void {
    if (xml === "") return;
    const later = new Set(order.slice(order.indexOf(local) + 1).map((name) => this.prefix + name));
    const next = this.doc.root.children.find(({ name }) => later.has(name));
    if (next === undefined) this.doc.append(this.doc.root, xml);
    else this.doc.insertBefore(next, xml);
  }

  /** The attributes of the element of a kind with some changed; null takes one away. */
  merged(local: string, changes: Readonly<Record<string, string | null>>): Record<string, string> {
    return mergedAttributes(this.first(local)?.attributes ?? {}, changes);
  }

  /** An element of this part's own vocabulary. */
  element(local: string, attributes: Record<string, string>, inner = ""): string {
    const name = this.prefix + local;
    const open = openingTag(name, attributes, inner === "");
    return inner === "" ? open : `${open}${inner}</${name}>`;
  }

  /** The children of an element as they stand, those of some kinds left out. */
  rest(element: Element | undefined, ...without: readonly string[]): string {
    const names = new Set(without.map((local) => this.prefix + local));
    return (element?.children ?? [])
      .filter(({ name }) => !names.has(name))
      .map((child) => this.doc.raw(child))
      .join("");
  }
}

export function mergedAttributes(
  attributes: Readonly<Record<string, string>>,
  changes: Readonly<Record<string, string | null>>,
): Record<string, string> {
  const merged = Object.entries({ ...attributes, ...changes });
  return Object.fromEntries(merged.filter((entry): entry is [string, string] => entry[1] !== null));
}
