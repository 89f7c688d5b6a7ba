import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { Workbook, WorkbookError } from "../../src/workbook";
import { openCells, pack, parts, thrownBy, worksheet } from "./packages";

function refusal(bytes: Uint8Array): WorkbookError {
  const error = thrownBy(() => {
    const workbook = Workbook.open(bytes);
    for (const sheet of workbook.sheets) for (const _ of sheet.cells());
  });
  expect(error).toBeInstanceOf(WorkbookError);
  const refused = error as WorkbookError;
  expect(refused.message).not.toContain("\n");
  return refused;
}

const good = pack(parts(worksheet("<sheetData/>")));

/** A compound file: the header of [MS-CFB] 2.2, then a stream name in UTF-16LE as its directory holds it. */
function compoundFile(streamName: string): Uint8Array {
  const bytes = new Uint8Array(2048);
  bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
  for (const [at, char] of [...streamName].entries()) bytes[1024 + 2 * at] = char.charCodeAt(0);
  return bytes;
}

function indexOfBytes(bytes: Uint8Array, wanted: readonly number[]): number {
  return bytes.findIndex((_, at) => wanted.every((byte, offset) => bytes[at + offset] === byte));
}

describe("files that are no workbook are refused by what they are", () => {
  it("an empty file is cut short", () => {
    const error = refusal(new Uint8Array());
    expect(error.code).toBe("truncated");
    expect(error.message).toContain("empty");
  });

  it("text is not an .xlsx workbook", () => {
    expect(refusal(strToU8("flow,area\n1,2\n")).code).toBe("not-xlsx");
  });

  it("an old binary workbook asks to be saved as .xlsx", () => {
    const error = refusal(compoundFile("Workbook"));
    expect(error.code).toBe("old-xls");
    expect(error.message).toContain("save it as .xlsx");
  });

  it("a password-protected workbook is told from an old one by its encrypted stream", () => {
    expect(refusal(compoundFile("EncryptedPackage")).code).toBe("password");
  });

  it("a zip entry that is encrypted asks for a copy without a password", () => {
    const bytes = good.slice();
    const central = indexOfBytes(bytes, [0x50, 0x4b, 1, 2]);
    bytes[central + 8] = (bytes[central + 8] ?? 0) | 1;
    expect(refusal(bytes).code).toBe("password");
  });

  it("a zip without workbook parts is called a zip archive", () => {
    const error = refusal(zipSync({ "notes.txt": strToU8("hello") }));
    expect(error.code).toBe("not-xlsx");
    expect(error.message).toContain("zip archive");
  });

  it("an OpenDocument table is named", () => {
    const mimetype = strToU8("application/vnd.oasis.opendocument.spreadsheet");
    const error = refusal(zipSync({ mimetype, "content.xml": strToU8("<x/>") }));
    expect(error.code).toBe("not-xlsx");
    expect(error.message).toContain(".ods");
  });

  it("a binary .xlsb workbook is named", () => {
    const source = parts(worksheet("<sheetData/>"));
    source["_rels/.rels"] = String(source["_rels/.rels"]).replace("workbook.xml", "workbook.bin");
    source["xl/workbook.bin"] = new Uint8Array([1, 2, 3]);
    const error = refusal(pack(source));
    expect(error.code).toBe("not-xlsx");
    expect(error.message).toContain(".xlsb");
  });

  it("a text document is not taken for a workbook", () => {
    const source = parts(worksheet("<sheetData/>"));
    source["[Content_Types].xml"] = String(source["[Content_Types].xml"]).replace(
      "spreadsheetml.sheet.main",
      "wordprocessingml.document.main",
    );
    expect(refusal(pack(source)).code).toBe("not-xlsx");
  });

  it("a workbook without a worksheet has no sheets", () => {
    const book = '<workbook xmlns="urn:x"><sheets/></workbook>';
    const bytes = pack(parts(worksheet("<sheetData/>"), { "xl/workbook.xml": book }));
    expect(refusal(bytes).code).toBe("no-sheets");
  });
});

describe("damage is told with its place", () => {
  it("a zip cut short at any point is refused as truncated", () => {
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      expect(refusal(good.slice(0, Math.floor(good.length * share))).code).toBe("truncated");
    }
  });

  it("a flipped byte in a stored entry fails its checksum", () => {
    const bytes = zipSync({ "a.xml": strToU8("<a>text</a>") }, { level: 0 });
    const at = indexOfBytes(bytes, [...strToU8("text")]);
    bytes[at] = 0x54;
    const error = refusal(bytes);
    expect(error.code).toBe("damaged");
    expect(error.message).toContain('"a.xml" fails its checksum');
  });

  it("a flipped byte in a deflated entry never goes unnoticed", () => {
    const sheet = worksheet(
      `<sheetData><row r="1">${'<c r="A1"><v>1</v></c>'.repeat(1)}</row></sheetData>`,
    );
    const bytes = pack(parts(sheet));
    const start = indexOfBytes(bytes, [...strToU8("xl/worksheets/sheet1.xml")]) + 24;
    for (let offset = 4; offset < 60; offset += 7) {
      const broken = bytes.slice();
      broken[start + offset] = (broken[start + offset] ?? 0) ^ 0x10;
      expect(refusal(broken).code).toBe("damaged");
    }
  });

  it("a method other than stored and deflated is refused", () => {
    const bytes = good.slice();
    bytes[indexOfBytes(bytes, [0x50, 0x4b, 1, 2]) + 10] = 14;
    const error = refusal(bytes);
    expect(error.code).toBe("damaged");
    expect(error.message).toContain("method 14");
  });

  it("broken XML names the part and the line", () => {
    const error = refusal(pack(parts(worksheet("<sheetData>\n<row>\n</sheetData>"))));
    expect(error.code).toBe("damaged");
    expect(error.message).toContain("xl/worksheets/sheet1.xml, line 4");
  });

  it("a sheet part that is missing is named", () => {
    const source = parts(worksheet("<sheetData/>"));
    delete source["xl/worksheets/sheet1.xml"];
    expect(refusal(pack(source)).message).toContain('"Data"');
  });

  it("a cell that names no string, holds no number or stands in the wrong row is named", () => {
    const messages = [
      '<row r="1"><c r="A1" t="s"><v>7</v></c></row>',
      '<row r="1"><c r="B1"><v>many</v></c></row>',
      '<row r="2"><c r="C1"><v>1</v></c></row>',
      '<row r="1"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>',
      '<row r="1"><c r="A1" t="zz"><v>1</v></c></row>',
    ].map((cells) => String(thrownBy(() => openCells(cells).sheet.rowCount)));
    expect(messages[0]).toContain("A1 names a string that is missing");
    expect(messages[1]).toContain('B1 holds "many" for a number');
    expect(messages[2]).toContain('row 2 holds a cell named "C1"');
    expect(messages[3]).toContain("A1 twice");
    expect(messages[4]).toContain('unknown type "zz"');
  });

  it("a document type declaration is refused, so that no entity can be defined", () => {
    const sheet = `<!DOCTYPE x [<!ENTITY a "boom">]>${worksheet("<sheetData/>").slice(39)}`;
    const error = refusal(pack(parts(sheet)));
    expect(error.code).toBe("damaged");
    expect(error.message).toContain("document type");
  });

  it("text that is not valid UTF-8, and encodings other than Unicode, are refused", () => {
    const bad = strToU8(worksheet("<sheetData/>"));
    bad[bad.length - 3] = 0xff;
    expect(refusal(pack(parts("", { "xl/worksheets/sheet1.xml": bad }))).message).toContain(
      "UTF-8",
    );
    const latin = worksheet("<sheetData/>").replace("UTF-8", "ISO-8859-1");
    expect(refusal(pack(parts(latin))).message).toContain("ISO-8859-1");
  });
});

describe("any damage", () => {
  it("ends in an opened workbook or a WorkbookError, never in an error of another kind", () => {
    const cells = '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1" t="b"><v>1</v></c></row>';
    const files = Object.entries(parts(worksheet(`<sheetData>${cells}</sheetData>`)));
    const contents = files.map(([name, text]) => [name, strToU8(String(text))] as const);
    const flip = fc.record({ file: fc.nat(4), at: fc.nat(4000), bit: fc.nat(7) });
    fc.assert(
      fc.property(fc.array(flip, { minLength: 1, maxLength: 4 }), fc.boolean(), (flips, packed) => {
        // Either in the zip itself or, with right checksums, in the parts.
        const copies = contents.map(([name, bytes]) => [name, bytes.slice()] as const);
        const zip = zipSync(Object.fromEntries(contents));
        for (const { file, at, bit } of flips) {
          const target = packed ? zip : (copies[file]?.[1] ?? zip);
          const place = at % target.length;
          target[place] = (target[place] ?? 0) ^ (1 << bit);
        }
        try {
          const workbook = Workbook.open(packed ? zip : zipSync(Object.fromEntries(copies)));
          for (const sheet of workbook.sheets) for (const _ of sheet.cells());
        } catch (error) {
          expect(error).toBeInstanceOf(WorkbookError);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
