import { damaged, WorkbookError } from "./error";
import { contentTypeOf, kindOf, readRels } from "./opc";
import type { Package } from "./package";

function notXlsx(what: string): WorkbookError {
  return new WorkbookError(
    "not-xlsx",
    `This is ${what}, not an .xlsx workbook. Open it in a spreadsheet program and save it as .xlsx.`,
  );
}

/** Name of the workbook part; refuses other kinds of package by what they are. */
export function findWorkbookPart(pkg: Package): string {
  const mimetype = pkg.get("mimetype");
  if (mimetype !== undefined && !pkg.has("[Content_Types].xml")) {
    const type = new TextDecoder().decode(mimetype.subarray(0, 200));
    throw notXlsx(
      type.includes("opendocument.spreadsheet")
        ? "an OpenDocument table (.ods)"
        : "another kind of document",
    );
  }
  if (!pkg.has("[Content_Types].xml")) {
    if (pkg.has("xl/workbook.xml")) throw damaged("[Content_Types].xml", "the part is missing");
    throw notXlsx("a zip archive");
  }
  const main = readRels(pkg, "").find((rel) => kindOf(rel.type) === "officeDocument");
  if (main === undefined) {
    if (pkg.has("xl/workbook.xml")) throw damaged("_rels/.rels", "it does not name the workbook");
    throw notXlsx("a package without a workbook");
  }
  const type = contentTypeOf(pkg, main.target) ?? "";
  if (type.includes("sheet.binary") || main.target.toLowerCase().endsWith(".bin")) {
    throw notXlsx("a binary workbook (.xlsb)");
  }
  if (type.includes("wordprocessingml") || type.includes("presentationml")) {
    throw notXlsx("a document of another kind");
  }
  if (!pkg.has(main.target)) throw damaged(main.target, "the part is missing");
  return main.target;
}
