import { kept } from "../cells";
import type { ConditionalLook } from "./arrange/spec";
import type { Dialect } from "./dialect";
import { differentialXml, readDifferential } from "./differential";
import { WorkbookError } from "./error";
import { builtInFormats, firstOwnFormat } from "./number-formats";
import { addRel, openXml, setContentType } from "./opc";
import type { Package } from "./package";
import { type CellColors, colorsOf, plainColors, readStyle, restyle } from "./restyle";
import { escapeAttribute } from "./text";
import type { Element, XmlPart } from "./tree";
import type { StyleSpec } from "./types";

/** Children of the styles part in the order the format demands, with what each holds at the least. */
const containers: readonly (readonly [name: string, least: (p: string) => string])[] = [
  ["numFmts", () => ""],
  [
    "fonts",
    (p) => `<${p}font><${p}sz val="11"/><${p}name val="Calibri"/><${p}family val="2"/></${p}font>`,
  ],
  [
    "fills",
    (p) =>
      ["none", "gray125"]
        .map((kind) => `<${p}fill><${p}patternFill patternType="${kind}"/></${p}fill>`)
        .join(""),
  ],
  [
    "borders",
    (p) => `<${p}border><${p}left/><${p}right/><${p}top/><${p}bottom/><${p}diagonal/></${p}border>`,
  ],
  ["cellStyleXfs", (p) => `<${p}xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>`],
  ["cellXfs", (p) => `<${p}xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>`],
  ["cellStyles", (p) => `<${p}cellStyle name="Normal" xfId="0" builtinId="0"/>`],
];
/** The longest number format that a spreadsheet program takes: common practice. */
const longestCode = 255;
const later = ["dxfs", "tableStyles", "colors", "extLst"];
const order = [...containers.map(([name]) => name), ...later];

/** The text of a styles part with the plain format alone. */
export function blankStyles(namespace: string): string {
  const inner = containers
    .filter(([name]) => name !== "numFmts")
    .map(([name, least]) => `<${name}>${least("")}</${name}>`)
    .join("");
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<styleSheet xmlns="${namespace}">${inner}</styleSheet>`;
}

/** The cell formats of a workbook. */
export class Styles {
  #doc: XmlPart | null | undefined;
  readonly #added = new Map<string, number>();
  /** Format codes already looked up, by cell format. */
  readonly #codes = new Map<number, string>();
  readonly #colors = new Map<number, CellColors>();
  /** The file's own number formats by id. */
  #own: ReadonlyMap<number, string | undefined> | undefined;

  constructor(
    private readonly pkg: Package,
    private readonly workbookPart: string,
    /** Name of the styles part, null when the workbook has none. */
    private part: string | null,
    private readonly dialect: Dialect,
  ) {}

  formatCode(style: number): string {
    return kept(this.#codes, style, () => this.#findCode(style));
  }

  #findCode(style: number): string {
    const doc = this.#open();
    if (doc === null) return "General";
    const xf = this.#items(doc, "cellXfs")[style];
    const id = Number(xf?.attributes.numFmtId ?? 0);
    // Of two formats with one number the first counts.
    this.#own ??= new Map(
      [...this.#items(doc, "numFmts")]
        .reverse()
        .map(({ attributes }) => [Number(attributes.numFmtId), attributes.formatCode]),
    );
    const code = this.#own.get(id) ?? builtInFormats.get(id) ?? "General";
    if (code.length > longestCode)
      throw new WorkbookError(
        "too-large",
        `A number format of the workbook has ${code.length} characters, more than the ${longestCode} that spreadsheet programs take: give its cells another format, and save.`,
      );
    return code;
  }

  /** A format that is plain but for these looks. */
  add(spec: StyleSpec): number {
    const isPlain = (look: unknown) => !look || look === "General";
    const looks = Object.entries(spec).filter(([, look]) => !isPlain(look));
    const key = JSON.stringify(looks.sort(([a], [b]) => (a < b ? -1 : 1)));
    return kept(this.#added, key, () => this.restyle(undefined, Object.fromEntries(looks)));
  }

  /** The colours of text of a cell format and of what it stands on. */
  colors(style: number): CellColors {
    return kept(this.#colors, style, () => {
      const doc = this.#open();
      return doc === null ? plainColors : colorsOf(doc, style);
    });
  }

  spec(style: number): StyleSpec {
    const doc = this.#open();
    return doc === null ? {} : readStyle(doc, style, this.formatCode(style));
  }

  /** Like a format (the plain one where left out) with some looks changed; undefined takes a look away. */
  restyle(style: number | undefined, changes: StyleSpec): number {
    this.#make();
    return restyle(style, changes, {
      doc: () => this.#open() as XmlPart,
      ensure: (container, xml) => this.#ensure(container, xml),
      formatId: (code) => this.#formatId(code),
    });
  }

  /** The look of a conditional format. */
  look(dxfId: number): ConditionalLook {
    const doc = this.#open();
    return doc === null ? {} : readDifferential(doc, this.#items(doc, "dxfs")[dxfId]);
  }

  addLook(look: ConditionalLook): number {
    this.#make();
    return this.#ensure("dxfs", differentialXml(this.#open()?.prefix ?? "", look));
  }

  #open(): XmlPart | null {
    if (this.#doc === undefined)
      this.#doc = this.part === null ? null : openXml(this.pkg, this.part);
    return this.#doc;
  }

  #items(doc: XmlPart, container: string): Element[] {
    return doc.child(doc.root, container)?.children ?? [];
  }

  #save(doc: XmlPart): void {
    this.pkg.set(this.part as string, doc.toBytes());
    this.#doc = undefined;
    this.#codes.clear();
    this.#own = undefined;
    this.#colors.clear();
  }

  /** A workbook may come without a styles part. */
  #make(): void {
    if (this.part !== null) return;
    const folder = this.workbookPart.slice(0, this.workbookPart.lastIndexOf("/") + 1);
    this.part = `${folder}styles.xml`;
    this.pkg.set(this.part, new TextEncoder().encode(blankStyles(this.dialect.main)));
    addRel(this.pkg, this.workbookPart, `${this.dialect.relationships}/styles`, this.part);
    setContentType(
      this.pkg,
      this.part,
      "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml",
    );
    this.#doc = undefined;
  }

  /** Index of an item with this very text, appended when there is none. */
  #ensure(container: string, xml: string): number {
    let doc = this.#open() as XmlPart;
    if (doc.child(doc.root, container) === undefined) {
      this.#addContainer(doc, container);
      doc = this.#open() as XmlPart;
    }
    const parent = doc.child(doc.root, container) as Element;
    const found = parent.children.findIndex((item) => doc.raw(item) === xml);
    if (found >= 0) return found;
    doc.append(parent, xml);
    doc.setAttribute(parent, "count", String(parent.children.length + 1));
    this.#save(doc);
    return parent.children.length;
  }

  #addContainer(doc: XmlPart, name: string): void {
    const p = doc.prefix;
    const least = containers.find(([known]) => known === name)?.[1](p) ?? "";
    const xml = `<${p}${name}>${least}</${p}${name}>`;
    const after = order.slice(order.indexOf(name) + 1).map((next) => p + next);
    const next = doc.root.children.find((child) => after.includes(child.name));
    if (next === undefined) doc.append(doc.root, xml);
    else doc.insertBefore(next, xml);
    this.#save(doc);
  }

  #formatId(code: string): number {
    for (const [id, known] of builtInFormats) if (known === code) return id;
    const doc = this.#open() as XmlPart;
    const own = this.#items(doc, "numFmts");
    const known = own.find((item) => item.attributes.formatCode === code);
    if (known !== undefined) return Number(known.attributes.numFmtId);
    const id =
      Math.max(firstOwnFormat - 1, ...own.map((item) => Number(item.attributes.numFmtId))) + 1;
    this.#ensure(
      "numFmts",
      `<${doc.prefix}numFmt numFmtId="${id}" formatCode="${escapeAttribute(code)}"/>`,
    );
    return id;
  }
}
