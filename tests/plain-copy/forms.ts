import { type CellSpec, Workbook } from "../../src/workbook";
import { pack, unpack } from "../workbook/packages";

/** A formula in the form in which a file may hold it. */
export interface Form {
  readonly what: string;
  readonly formula: string;
  /** "A1:B3" where it is an array formula: rows and columns from its own cell. */
  readonly size?: readonly [rows: number, cols: number];
}

const flow = "_xldudf_FANROW_FLOW";

/** Formulas with our functions in every place that they may stand in. */
export const forms: readonly Form[] = [
  { what: "as it is typed", formula: "FANROW.FLOW(Data!A2,Data!B2)" },
  { what: "as it is stored", formula: `${flow}(Data!A2,Data!B2)` },
  { what: "loaded from another file once", formula: `[2]!${flow}(Data!A2,Data!B2)` },
  { what: "in small letters", formula: "fanrow.flow(Data!A2,Data!B2)" },
  { what: "of numbers alone", formula: `${flow}(24,4)` },
  { what: "amid arithmetic", formula: `2*${flow}(24,4)^2-1/${flow}(12,9)` },
  { what: "a number with a sign", formula: `${flow}(24,-4)` },
  { what: "a blank written out", formula: `${flow}(24,"")` },
  { what: "nothing between the commas", formula: `${flow}(24,4,,"si")` },
  {
    what: "inside native functions",
    formula: `IF(Data!B2>1,ROUND(${flow}(Data!A2,Data!B2),1),"no")`,
  },
  { what: "picked by INDEX", formula: "INDEX(_xldudf_FANROW_REACH(Data!A2),1,2)" },
  { what: "picked by one number", formula: "INDEX(_xldudf_FANROW_REACH(Data!A2),2)" },
  { what: "picked by a cell", formula: "INDEX(_xldudf_FANROW_REACH(Data!A2),1,Data!D2)" },
  { what: "two results summed", formula: "SUM(_xldudf_FANROW_REACH(Data!A2))" },
  { what: "several rows summed", formula: `SUM(${flow}(Data!A2:A3,Data!B2:B3))` },
  { what: "the largest of several rows", formula: `MAX(${flow}(Data!A2:A3,4),1)` },
  { what: "the first of several rows", formula: `ROUND(${flow}(Data!A2:A3,Data!B2:B3),2)` },
  { what: "an argument to work out", formula: `${flow}(Data!A2*2,AVERAGE(Data!B2:B3))` },
  { what: "an argument that is a blank cell", formula: `${flow}(Data!A2,Data!B4)` },
  { what: "a choice that is a blank cell", formula: `${flow}(Data!A2,IF(TRUE,Data!B4,1))` },
  { what: "a lookup that is a blank cell", formula: `${flow}(Data!A2,INDEX(Data!B2:B6,3))` },
  { what: "a row number", formula: `${flow}(ROW()*2,ROW(Data!B4))` },
  {
    what: "functions inside functions",
    formula: `_xldudf_FANROW_VERDICT(${flow}(Data!A2,Data!B2),_xldudf_FANROW_ROOM_RATE("62.2-2016","bath","on demand"),_xldudf_FANROW_RANGE_STATUS(Data!B2))`,
  },
  {
    what: "functions of rows inside functions",
    formula: `SUM(_xldudf_FANROW_BOX_PRESSURE(Data!A2:A3,${flow}(Data!A2:A3,Data!B2:B3)))`,
  },
  { what: "a name for a cell", formula: `${flow}(Area_now,Data!B2)` },
  { what: "a name for a number", formula: `${flow}(Data!A2,Data!B2,Usual_constant)` },
  { what: "a column of a table", formula: `SUM(${flow}(Readings[Area],4))` },
  { what: "a list of ratings", formula: "_xldudf_FANROW_FAN_SIZE(50,10,{110,50;60,80})" },
  {
    what: "whole columns as a list",
    formula: '_xldudf_FANROW_OPEN_AREA("Small+A",Data!F:F,Data!G:G)',
  },
  {
    what: "an array formula",
    formula: `${flow}(Data!A2:A6,Data!B2:B6)`,
    size: [5, 1],
  },
  {
    what: "an array formula of two columns",
    formula: "_xldudf_FANROW_REACH(Data!A2:A6)",
    size: [5, 2],
  },
  {
    what: "an array formula over a row and a column",
    formula: `${flow}(Data!A2:A3,Data!F8:H8)`,
    size: [2, 3],
  },
  {
    what: "an array formula with arithmetic around it",
    formula: `${flow}(Data!A2:A3,Data!B2:B3)*2+1`,
    size: [2, 1],
  },
  {
    what: "an array formula with arithmetic inside",
    formula: `${flow}(Data!A2:A3*2,IF(Data!B2:B3>4,Data!B2:B3,4))`,
    size: [2, 1],
  },
  {
    what: "an array formula of functions inside functions",
    formula: `_xldudf_FANROW_RANGE_STATUS(_xldudf_FANROW_BOX_PRESSURE(Data!A2:A3,${flow}(Data!A2:A3,Data!B2:B3)))`,
    size: [2, 1],
  },
  { what: "ranges of other sizes", formula: `${flow}(Data!A2:A3,Data!B2:B4)` },
];

/** Formulas that have no native equivalent, with a word of the reason. */
export const withoutEquivalent: readonly (readonly [string, string])[] = [
  ["_xldudf_FANROW_NOPE(1)", "NOPE"],
  [`${flow}(24)`, "1 arguments"],
  [`${flow}(INDIRECT("A2"),4)`, "INDIRECT"],
  [`${flow}([3]Other!A2*2,4)`, "Other"],
  [`${flow}(Data!A2:A3*2,4)`, "own row"],
  [`${flow}(Data!A2,not_there)`, "not_there"],
  [`${flow}({1,2},4)`, "array constant"],
  [`_xlfn.LET(_xlpm.x,4,${flow}(24,_xlpm.x))`, "_xlpm.x"],
  ['_xldudf_FANROW_SOURCE("62.2-2016")', "text"],
];

const dataRows: readonly (readonly (number | string | null)[])[] = [
  ["Area", "Pressure", "Constant", "Pick", null, "Label", "Area", null],
  [24, 4, 1.07, 2, null, "A", 12, null],
  [12, 6.25, 1.05, null, null, "Small", 3.5, null],
  [36, null, null, null, null, "B", 24, null],
  ["wide", 3, 1.07, null, null, null, null, null],
  [16, -2, 1.07, null, null, null, null, null],
  [null, null, null, null, null, null, null, null],
  [null, null, null, null, null, 2, 4, 6],
];

/** Rows that each form has for itself. */
export const rowsEach = 6;

/** The forms on a sheet of their own, those without an equivalent on another. */
export function formsWorkbook(): Workbook {
  const workbook = Workbook.create();
  workbook.addSheet("Forms", {
    rows: forms.flatMap(({ formula, size }, i) => {
      const top = i * rowsEach + 1;
      const end = size && `${String.fromCharCode(64 + size[1])}${top + size[0] - 1}`;
      const cell: CellSpec = size
        ? { formula, value: 0, arrayRef: `A${top}:${end}` }
        : { formula, value: 0 };
      return [[cell], ...Array.from({ length: rowsEach - 1 }, () => [])];
    }),
  });
  workbook.addSheet("Without", {
    rows: withoutEquivalent.map(([formula], i) => [{ formula, value: 100 + i }]),
  });
  workbook.addSheet("Data", {
    rows: dataRows.map((cells) => cells.map((value) => ({ value }))),
  });
  return Workbook.open(withNames(workbook.save()));
}

/** Adds two defined names and a table over A1:D6 of the third sheet. */
function withNames(bytes: Uint8Array): Uint8Array {
  const parts: Record<string, string> = unpack(bytes);
  const insert = (part: string, before: string, text: string) => {
    const own = parts[part] ?? "";
    const at = own.indexOf(before);
    if (at < 0) throw new Error(`no ${before} in ${part}`);
    parts[part] = own.slice(0, at) + text + own.slice(at);
  };
  const book = parts["xl/workbook.xml"] ?? "";
  const end = book.indexOf("</sheets>") + "</sheets>".length;
  parts["xl/workbook.xml"] =
    `${book.slice(0, end)}<definedNames><definedName name="Area_now">Data!$A$2</definedName><definedName name="Usual_constant">1.07</definedName></definedNames>${book.slice(end)}`;
  insert(
    "[Content_Types].xml",
    "</Types>",
    '<Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/>',
  );
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  insert(
    "xl/worksheets/sheet3.xml",
    "</worksheet>",
    `<tableParts count="1"><tablePart xmlns:r="${office}" r:id="rId1"/></tableParts>`,
  );
  parts["xl/worksheets/_rels/sheet3.xml.rels"] =
    `<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/table" Target="../tables/table1.xml"/></Relationships>`;
  const columns = ["Area", "Pressure", "Constant", "Pick"]
    .map((name, i) => `<tableColumn id="${i + 1}" name="${name}"/>`)
    .join("");
  parts["xl/tables/table1.xml"] =
    `<?xml version="1.0" encoding="UTF-8"?><table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Readings" displayName="Readings" ref="A1:D4" totalsRowShown="0"><tableColumns count="4">${columns}</tableColumns></table>`;
  return pack(parts);
}
