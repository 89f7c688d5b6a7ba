import { transitional } from "./dialect";
import { Package } from "./package";
import { blankStyles } from "./styles";

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const { main, relationships } = transitional;
const packageRels = "http://schemas.openxmlformats.org/package/2006/relationships";
const spreadsheetTypes = "application/vnd.openxmlformats-officedocument.spreadsheetml";

const parts: readonly (readonly [name: string, xml: string])[] = [
  [
    "[Content_Types].xml",
    `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${spreadsheetTypes}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${spreadsheetTypes}.styles+xml"/><Override PartName="/docProps/app.xml" ContentType="application/vnd.openxmlformats-officedocument.extended-properties+xml"/></Types>`,
  ],
  [
    "_rels/.rels",
    `<Relationships xmlns="${packageRels}"><Relationship Id="rId1" Type="${relationships}/officeDocument" Target="xl/workbook.xml"/><Relationship Id="rId2" Type="${relationships}/extended-properties" Target="docProps/app.xml"/></Relationships>`,
  ],
  // LibreOffice shows stored text results only of files whose application begins like this.
  [
    "docProps/app.xml",
    '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>Microsoft Excel Compatible / Fanrow</Application></Properties>',
  ],
  [
    "xl/workbook.xml",
    `<workbook xmlns="${main}" xmlns:r="${relationships}"><bookViews><workbookView/></bookViews><sheets/></workbook>`,
  ],
  [
    "xl/_rels/workbook.xml.rels",
    `<Relationships xmlns="${packageRels}"><Relationship Id="rId1" Type="${relationships}/styles" Target="styles.xml"/></Relationships>`,
  ],
];

/** A package without sheets yet: the same bytes on every machine. */
export function blankPackage(): Package {
  const pkg = Package.empty();
  const encoder = new TextEncoder();
  for (const [name, xml] of parts) pkg.set(name, encoder.encode(declaration + xml));
  pkg.set("xl/styles.xml", encoder.encode(blankStyles(main)));
  return pkg;
}
