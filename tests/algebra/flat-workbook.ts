import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A cell of a flat workbook: a number, or native formula text without "=". */
export type FlatCell = number | { readonly formula: string };

/**
 * Lets LibreOffice compute a sheet, and gives what it shows for each cell as text.
 *
 * The sheet is written as one flat XML file whose formula cells hold no values, so nothing but a
 * recalculation can fill them; their grammar is declared as that of Excel, so the formula text
 * is read as Excel would read it. Values come back with 15 digits.
 */
export function recalculated(rows: readonly (readonly FlatCell[])[]): string[][] {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-recalculation-"));
  try {
    const file = join(folder, "sheet.fods");
    writeFileSync(file, flatXml(rows));
    const profile = pathToFileURL(join(folder, "profile")).href;
    // Comma, double quote, UTF-8, from line 1; "as shown" off, so that values keep their digits.
    const filter = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false";
    execFileSync(
      "soffice",
      [
        `-env:UserInstallation=${profile}`,
        "--headless",
        "--convert-to",
        filter,
        "--outdir",
        folder,
        file,
      ],
      { stdio: "pipe", timeout: 100_000 },
    );
    const text = readFileSync(join(folder, "sheet.csv"), "utf8");
    return text
      .trimEnd()
      .split("\n")
      .map((line) => line.split(","));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function flatXml(rows: readonly (readonly FlatCell[])[]): string {
  const urn = "urn:oasis:names:tc:opendocument:xmlns";
  const body = rows.map((row) => `<table:table-row>${row.map(cellXml).join("")}</table:table-row>`);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<office:document xmlns:office="${urn}:office:1.0" xmlns:table="${urn}:table:1.0"`,
    ' xmlns:msoxl="http://schemas.microsoft.com/office/excel/formula" office:version="1.2"',
    ' office:mimetype="application/vnd.oasis.opendocument.spreadsheet">',
    `<office:body><office:spreadsheet><table:table table:name="Sheet">${body.join("")}`,
    "</table:table></office:spreadsheet></office:body></office:document>",
  ].join("\n");
}

function cellXml(cell: FlatCell): string {
  if (typeof cell === "number")
    return `<table:table-cell office:value-type="float" office:value="${cell}"/>`;
  const text = cell.formula
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll('"', "&quot;");
  return `<table:table-cell table:formula="msoxl:=${text}"/>`;
}
