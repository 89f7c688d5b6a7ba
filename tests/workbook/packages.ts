import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { Workbook } from "../../src/workbook";

/** Test packages written part by part, so that they hold what no library of ours would write. */

export const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const rels = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export type Parts = Record<string, string | Uint8Array>;

export function pack(parts: Parts): Uint8Array {
  const files = Object.entries(parts).map(([name, content]) => [
    name,
    typeof content === "string" ? strToU8(content) : content,
  ]);
  return zipSync(Object.fromEntries(files), { mtime: new Date(2020, 1, 2) });
}

export function unpack(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([name, content]) => [name, strFromU8(content)]),
  );
}

export function worksheet(inner: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="${main}" xmlns:r="${rels}">${inner}</worksheet>`;
}

/** A package of one sheet, "Data"; `more` adds or replaces parts, `entries` adds workbook relationships. */
export function parts(sheet: string, more: Parts = {}, entries: readonly string[] = []): Parts {
  const related = ["worksheets/sheet1.xml", ...entries].map((target, index) => {
    const kind = /^(?:.*\/)?([A-Za-z]+?)s?\d*\.xml$/.exec(target)?.[1] ?? "";
    const kinds: Record<string, string> = {
      sheet: "worksheet",
      sharedString: "sharedStrings",
      style: "styles",
      metadata: "sheetMetadata",
    };
    return `<Relationship Id="rId${index + 1}" Type="${rels}/${kinds[kind] ?? kind}" Target="${target}"/>`;
  });
  return {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${types}.worksheet+xml"/><Override PartName="/xl/calcChain.xml" ContentType="${types}.calcChain+xml"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${rels}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${rels}"><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${related.join("")}</Relationships>`,
    "xl/worksheets/sheet1.xml": sheet,
    ...more,
  };
}

/** The first sheet of a package that holds this cell data. */
export function openCells(cells: string, more: Parts = {}, entries: readonly string[] = []) {
  const text = worksheet(`<sheetData>${cells}</sheetData>`);
  const workbook = Workbook.open(pack(parts(text, more, entries)));
  const sheet = workbook.sheets[0];
  if (sheet === undefined) throw new Error("no sheet");
  return { workbook, sheet };
}

export function textOf(workbook: Workbook, part: string): string {
  const bytes = workbook.part(part);
  if (bytes === undefined) throw new Error(`no part ${part}`);
  return strFromU8(bytes);
}

/** What is thrown, for a look at its reason and message. */
export function thrownBy(action: () => unknown): unknown {
  try {
    action();
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}
