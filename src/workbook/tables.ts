import { kindOf, openXml, readRels } from "./opc";
import type { Package } from "./package";
import { decodeXString } from "./text";
import type { TableInfo } from "./types";

/** The tables of one sheet. */
export function readTables(pkg: Package, sheetPart: string, sheet: string): TableInfo[] {
  return readRels(pkg, sheetPart)
    .filter((rel) => kindOf(rel.type) === "table" && !rel.external)
    .map((rel) => {
      const doc = openXml(pkg, rel.target);
      const { name, displayName, ref = "", headerRowCount, totalsRowCount } = doc.root.attributes;
      const columns = doc.child(doc.root, "tableColumns");
      return {
        name: decodeXString(displayName ?? name ?? ""),
        sheet,
        ref,
        columns: (columns === undefined ? [] : doc.children(columns, "tableColumn")).map((column) =>
          decodeXString(column.attributes.name ?? ""),
        ),
        headerRow: headerRowCount !== "0",
        totalsRow: totalsRowCount !== undefined && totalsRowCount !== "0",
      };
    });
}
