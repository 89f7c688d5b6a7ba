import type { Dialect } from "./dialect";
import { addRel, kindOf, openXml, readRels, setContentType } from "./opc";
import type { Package } from "./package";
import type { Element, XmlPart } from "./tree";

/*
 * The mark of a dynamic array ([MS-XLSX], XLDAPR): a cell's cm attribute counts (from 1)
 * into cellMetadata, whose record names a metadata type (t, from 1) and an entry of that type (v, from 0).
 */
const arrayNamespace = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";

const typeXml = (p: string) =>
  `<${p}metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const entryXml = (p: string) =>
  `<${p}bk><${p}extLst><${p}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="${arrayNamespace}" fDynamic="1" fCollapsed="0"/></${p}ext></${p}extLst></${p}bk>`;
const recordXml = (p: string, type: number, entry: number) =>
  `<${p}bk><${p}rc t="${type}" v="${entry}"/></${p}bk>`;

const order = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata", "cellMetadata"];

/** Appends to a counted list of the root, or makes the list in its place. */
function appendTo(
  doc: XmlPart,
  list: Element | undefined,
  name: string,
  extra: string,
  xml: string,
) {
  const p = doc.prefix;
  if (list !== undefined) {
    doc.append(list, xml);
    doc.setAttribute(list, "count", String(list.children.length + 1));
    return;
  }
  const made = `<${p}${name}${extra} count="1">${xml}</${p}${name}>`;
  const before = [...order.slice(order.indexOf(name) + 1), "valueMetadata", "extLst"].map(
    (n) => p + n,
  );
  const next = doc.root.children.find((child) => before.includes(child.name));
  if (next === undefined) doc.append(doc.root, made);
  else doc.insertBefore(next, made);
}

function isDynamic(element: Element): boolean {
  if (element.local === "dynamicArrayProperties") return element.attributes.fDynamic === "1";
  return element.children.some(isDynamic);
}

/** The cm value for a dynamic array in an existing metadata part, which gains what it lacks. */
function markIn(pkg: Package, part: string): number {
  const doc = openXml(pkg, part);
  const types = doc.child(doc.root, "metadataTypes");
  const future = doc
    .children(doc.root, "futureMetadata")
    .find((list) => list.attributes.name === "XLDAPR");
  const records = doc.child(doc.root, "cellMetadata");
  let type = (types?.children.findIndex((item) => item.attributes.name === "XLDAPR") ?? -1) + 1;
  let entry = future?.children.findIndex(isDynamic) ?? -1;
  if (type > 0 && entry >= 0) {
    const known = records?.children.findIndex((record) =>
      record.children.some(
        ({ attributes }) => attributes.t === String(type) && attributes.v === String(entry),
      ),
    );
    if (known !== undefined && known >= 0) return known + 1;
  }
  const p = doc.prefix;
  if (type === 0) {
    type = (types?.children.length ?? 0) + 1;
    appendTo(doc, types, "metadataTypes", "", typeXml(p));
  }
  if (entry < 0) {
    entry = future?.children.length ?? 0;
    appendTo(doc, future, "futureMetadata", ' name="XLDAPR"', entryXml(p));
  }
  appendTo(doc, records, "cellMetadata", "", recordXml(p, type, entry));
  pkg.set(part, doc.toBytes());
  return (records?.children.length ?? 0) + 1;
}

/** The cm value that marks a dynamic array in this workbook; makes the metadata part when missing. */
export function dynamicArrayMark(pkg: Package, workbookPart: string, dialect: Dialect): number {
  const known = readRels(pkg, workbookPart).find((rel) => kindOf(rel.type) === "sheetMetadata");
  if (known !== undefined) return markIn(pkg, known.target);
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf("/") + 1);
  const part = `${folder}metadata.xml`;
  const text = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${dialect.main}"><metadataTypes count="1">${typeXml("")}</metadataTypes><futureMetadata name="XLDAPR" count="1">${entryXml("")}</futureMetadata><cellMetadata count="1">${recordXml("", 1, 0)}</cellMetadata></metadata>`;
  pkg.set(part, new TextEncoder().encode(text));
  addRel(pkg, workbookPart, `${dialect.relationships}/sheetMetadata`, part);
  setContentType(
    pkg,
    part,
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml",
  );
  return 1;
}
