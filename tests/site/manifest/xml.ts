import { SaxesParser } from "saxes";

/** One element of a parsed document. Names are local, without a prefix. */
export interface Element {
  readonly name: string;
  readonly space: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly Element[];
  readonly parent: Element | undefined;
  readonly text: string;
  readonly line: number;
}

interface Growing extends Element {
  children: Element[];
  text: string;
}

/** Parses a document whole. Throws, with line and column, where it is not well-formed. */
export function parseXml(xml: string): Element {
  const parser = new SaxesParser({ xmlns: true });
  let root: Growing | undefined;
  const open: Growing[] = [];
  parser.on("opentag", (tag) => {
    const parent = open.at(-1);
    const attributes = new Map(
      Object.values(tag.attributes).map(({ local, value }) => [local, value]),
    );
    const element: Growing = {
      name: tag.local,
      space: tag.uri,
      attributes,
      children: [],
      parent,
      text: "",
      line: parser.line,
    };
    parent?.children.push(element);
    root ??= element;
    open.push(element);
  });
  const addText = (text: string) => {
    const top = open.at(-1);
    if (top) top.text += text;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", () => open.pop());
  parser.on("error", (error) => {
    throw error;
  });
  parser.write(xml).close();
  if (!root) throw new Error("the document is empty");
  return root;
}

/** The children of this name. */
export const childrenOf = (element: Element | undefined, name: string): Element[] =>
  element?.children.filter((child) => child.name === name) ?? [];

/** The first element at this path of names below `element`. */
export function at(element: Element | undefined, ...path: readonly string[]): Element | undefined {
  return path.reduce<Element | undefined>((from, name) => childrenOf(from, name)[0], element);
}

/** The element and everything below it, in document order. */
export function* within(element: Element): Generator<Element> {
  yield element;
  for (const child of element.children) yield* within(child);
}

/** Everything below `element` of one of these names. */
export const named = (element: Element | undefined, ...names: readonly string[]): Element[] =>
  element ? [...within(element)].filter((each) => names.includes(each.name)) : [];

/** How a finding names an element: its name, what tells it from others, and its line. */
export function label(element: Element): string {
  const key = ["id", "resid", "Name", "size"].find((name) => element.attributes.has(name));
  const mark = key ? ` ${key}="${element.attributes.get(key)}"` : "";
  const of = key === "id" || !element.parent ? "" : ` of ${element.parent.name}`;
  return `${element.name}${mark}${of} (line ${element.line})`;
}
