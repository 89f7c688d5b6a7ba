import { kept } from "../cells";
import { decodeText, detectEncoding, encodeText } from "./decode";
import { damaged } from "./error";
import { applySplices, type Splice } from "./splice";
import { escapeAttribute } from "./text";
import { localName, prefixOf, scanXml } from "./xml";

/** An element of a small part, with its place in the text: [start, openEnd) is the opening tag. */
export interface Element {
  readonly name: string;
  readonly local: string;
  readonly attributes: Record<string, string>;
  readonly children: Element[];
  readonly selfClosing: boolean;
  readonly start: number;
  readonly openEnd: number;
  closeStart: number;
  end: number;
  /** The element's own text, without that of its children. */
  text: string;
}

/** An opening tag written anew from its attributes. */
export function openingTag(name: string, attributes: Record<string, string>, empty: boolean) {
  let tag = `<${name}`;
  for (const [key, value] of Object.entries(attributes))
    tag += ` ${key}="${escapeAttribute(value)}"`;
  return tag + (empty ? "/>" : ">");
}

/**
 * A small part (workbook, relationships, styles…) as a tree whose changes are spliced into the
 * original text, so that all that was not touched stays as it was, unknown elements included.
 */
export class XmlPart {
  readonly text: string;
  readonly root: Element;
  readonly #splices: Splice[] = [];
  /** Changed attributes (null removes) and content appended, by element. */
  readonly #changes = new Map<
    Element,
    { attributes: Record<string, string | null>; inner: string }
  >();

  constructor(
    readonly part: string,
    private readonly bytes: Uint8Array,
    maxDepth: number,
    /** Local name of an element whose content is left out of the tree. */
    closed?: string,
  ) {
    this.text = decodeText(part, bytes);
    const open: Element[] = [];
    let root: Element | undefined;
    /** Depth in the closed element, itself included. */
    let left = 0;
    scanXml(part, this.text, maxDepth, {
      open: (tag, start, end) => {
        if (left > 0) {
          left++;
          return;
        }
        const element: Element = {
          name: tag.name,
          local: localName(tag.name),
          attributes: tag.attributes,
          children: [],
          selfClosing: tag.isSelfClosing,
          start,
          openEnd: end,
          closeStart: end,
          end,
          text: "",
        };
        open.at(-1)?.children.push(element);
        root ??= element;
        open.push(element);
        if (element.local === closed) left = 1;
      },
      close: (_, start, end) => {
        if (left > 0 && --left > 0) return;
        const element = open.pop();
        if (element === undefined || element.selfClosing) return;
        element.closeStart = start;
        element.end = end;
      },
      text: (text) => {
        const element = open.at(-1);
        if (left === 0 && element !== undefined) element.text += text;
      },
    });
    if (root === undefined) throw damaged(part, "it holds no element");
    this.root = root;
  }

  /** Prefix of the part's own elements, with its colon. */
  get prefix(): string {
    return prefixOf(this.root.name);
  }

  /** Child elements of the same vocabulary as the root. */
  children(parent: Element, local: string): Element[] {
    const name = this.prefix + local;
    return parent.children.filter((child) => child.name === name);
  }

  child(parent: Element, local: string): Element | undefined {
    return this.children(parent, local)[0];
  }

  raw(element: Element): string {
    return this.text.slice(element.start, element.end);
  }

  append(parent: Element, xml: string): void {
    this.#change(parent).inner += xml;
  }

  insertBefore(element: Element, xml: string): void {
    this.#splices.push({ start: element.start, end: element.start, text: xml });
  }

  remove(element: Element): void {
    this.#splices.push({ start: element.start, end: element.end, text: "" });
  }

  replace(element: Element, xml: string): void {
    this.#splices.push({ start: element.start, end: element.end, text: xml });
  }

  setAttribute(element: Element, name: string, value: string | null): void {
    this.#change(element).attributes[name] = value;
  }

  /** The part with the changes made, in its own encoding. */
  toBytes(): Uint8Array {
    const splices = [...this.#splices];
    for (const [element, { attributes, inner }] of this.#changes) {
      const { name, start, openEnd, closeStart, selfClosing } = element;
      const fills = selfClosing && inner !== "";
      if (fills || Object.keys(attributes).length > 0) {
        const merged = Object.entries({ ...element.attributes, ...attributes });
        const left = merged.filter((entry): entry is [string, string] => entry[1] !== null);
        let text = openingTag(name, Object.fromEntries(left), selfClosing && !fills);
        if (fills) text += `${inner}</${name}>`;
        splices.push({ start, end: openEnd, text });
      }
      if (!selfClosing && inner !== "") {
        splices.push({ start: closeStart, end: closeStart, text: inner });
      }
    }
    return encodeText(applySplices(this.text, splices), detectEncoding(this.bytes));
  }

  #change(element: Element) {
    return kept(this.#changes, element, () => {
      const attributes: Record<string, string | null> = {};
      return { attributes, inner: "" };
    });
  }
}
