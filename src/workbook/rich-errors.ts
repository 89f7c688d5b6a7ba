import { kindOf, openXml, readRels } from "./opc";
import type { Package } from "./package";
import type { Element } from "./tree";

/** Errors newer than the file format, by the errorType of their rich value: one less than ERROR.TYPE gives. */
const newer: Readonly<Record<string, string>> = { 8: "#SPILL!", 12: "#FIELD!", 13: "#CALC!" };

/**
 * The newer errors of a workbook by the vm attribute of their cells, which store #VALUE! for them: it counts
 * (from 1) into valueMetadata, whose record leads to a rich value of the structure _error ([MS-XLSX]).
 */
export function richErrors(pkg: Package, workbookPart: string): ReadonlyMap<string, string> {
  const rels = readRels(pkg, workbookPart);
  const lists = (kind: string): readonly Element[] => {
    const part = rels.find((rel) => kindOf(rel.type) === kind)?.target;
    return part !== undefined && pkg.has(part) ? openXml(pkg, part).root.children : [];
  };
  const metadata = lists("sheetMetadata");
  const structures = lists("rdRichValueStructure");
  const values = lists("rdRichValue");
  const rich = metadata.find(
    ({ local, attributes }) => local === "futureMetadata" && attributes.name === "XLRICHVALUE",
  );
  const records = metadata.find(({ local }) => local === "valueMetadata")?.children ?? [];
  const found = new Map<string, string>();
  for (const [i, record] of records.entries()) {
    const entry = rich?.children[Number(record.children[0]?.attributes.v)];
    const value = values[Number(entry && indexIn(entry))];
    const structure = structures[Number(value?.attributes.s)];
    const place = structure?.children.findIndex(({ attributes }) => attributes.n === "errorType");
    const error = newer[value?.children[place ?? -1]?.text ?? ""];
    if (error !== undefined && structure?.attributes.t === "_error") found.set(`${i + 1}`, error);
  }
  return found;
}

/** Which rich value an entry names, somewhere within its extensions. */
function indexIn(entry: Element): string | undefined {
  if (entry.local === "rvb") return entry.attributes.i;
  return entry.children.map(indexIn).find((index) => index !== undefined);
}
