import { damaged } from "./error";
import type { Package } from "./package";
import { escapeAttribute } from "./text";
import { type Element, XmlPart } from "./tree";

/** Relationships and content types of a package (ECMA-376 part 2). */

export interface Relationship {
  readonly id: string;
  /** Full type URI; the last segment tells the kind in both dialects of the format. */
  readonly type: string;
  /** Part name without leading slash, or the address of something outside. */
  readonly target: string;
  readonly external: boolean;
}

const contentTypes = "[Content_Types].xml";

export function kindOf(type: string): string {
  return type.slice(type.lastIndexOf("/") + 1);
}

/** "xl/workbook.xml" gives "xl/_rels/workbook.xml.rels"; "" gives the package's own. */
function relsName(source: string): string {
  const slash = source.lastIndexOf("/") + 1;
  return `${source.slice(0, slash)}_rels/${source.slice(slash)}.rels`;
}

export function openXml(pkg: Package, part: string): XmlPart {
  const bytes = pkg.markupOf(part);
  if (bytes === undefined) throw damaged(part, "the part is missing");
  return new XmlPart(part, bytes, pkg.depth);
}

function resolve(source: string, target: string): string {
  const path = target.startsWith("/") ? [] : source.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
}

export function readRels(pkg: Package, source: string): Relationship[] {
  const name = relsName(source);
  if (!pkg.has(name)) return [];
  const doc = openXml(pkg, name);
  return doc.children(doc.root, "Relationship").map(({ attributes }) => {
    const { Id: id, Type: type, Target: target, TargetMode: mode } = attributes;
    if (id === undefined || type === undefined || target === undefined) {
      throw damaged(name, "a relationship lacks its Id, Type or Target");
    }
    const external = mode === "External";
    return { id, type, target: external ? target : resolve(source, target), external };
  });
}

const noRels =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"/>';

/** Shortest way of naming a part that lies in or below the source's folder; else from the root. */
function relativeTarget(source: string, target: string): string {
  const folder = source.slice(0, source.lastIndexOf("/") + 1);
  return target.startsWith(folder) ? target.slice(folder.length) : `/${target}`;
}

/** Adds a relationship and gives its new id. */
export function addRel(pkg: Package, source: string, type: string, target: string): string {
  const name = relsName(source);
  const taken = new Set(readRels(pkg, source).map((rel) => rel.id));
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  const id = `rId${number}`;
  if (!pkg.has(name)) pkg.set(name, new TextEncoder().encode(noRels));
  const doc = openXml(pkg, name);
  doc.append(
    doc.root,
    `<${doc.prefix}Relationship Id="${id}" Type="${escapeAttribute(type)}" Target="${escapeAttribute(relativeTarget(source, target))}"/>`,
  );
  pkg.set(name, doc.toBytes());
  return id;
}

export function removeRel(pkg: Package, source: string, id: string): void {
  const doc = openXml(pkg, relsName(source));
  for (const rel of doc.children(doc.root, "Relationship")) {
    if (rel.attributes.Id === id) doc.remove(rel);
  }
  pkg.set(relsName(source), doc.toBytes());
}

function overridesOf(doc: XmlPart, part: string): Element[] {
  const wanted = `/${part}`.toLowerCase();
  return doc
    .children(doc.root, "Override")
    .filter(({ attributes }) => attributes.PartName?.toLowerCase() === wanted);
}

export function contentTypeOf(pkg: Package, part: string): string | undefined {
  const doc = openXml(pkg, contentTypes);
  const own = overridesOf(doc, part)[0];
  if (own !== undefined) return own.attributes.ContentType;
  const extension = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
  return doc
    .children(doc.root, "Default")
    .find(({ attributes }) => attributes.Extension?.toLowerCase() === extension)?.attributes
    .ContentType;
}

export function setContentType(pkg: Package, part: string, type: string): void {
  if (contentTypeOf(pkg, part) === type) return;
  const doc = openXml(pkg, contentTypes);
  for (const own of overridesOf(doc, part)) doc.remove(own);
  doc.append(
    doc.root,
    `<${doc.prefix}Override PartName="${escapeAttribute(`/${part}`)}" ContentType="${escapeAttribute(type)}"/>`,
  );
  pkg.set(contentTypes, doc.toBytes());
}

/** Removes a part, its relationships and its content type. */
export function removePart(pkg: Package, part: string): void {
  pkg.delete(part);
  pkg.delete(relsName(part));
  const doc = openXml(pkg, contentTypes);
  const own = overridesOf(doc, part);
  if (own.length === 0) return;
  for (const element of own) doc.remove(element);
  pkg.set(contentTypes, doc.toBytes());
}
