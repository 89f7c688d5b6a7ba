import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { type Limits, Workbook, WorkbookError } from "../../src/workbook";
import { pack, parts, thrownBy, worksheet } from "./packages";

function refusal(bytes: Uint8Array, limits: Partial<Limits> = {}): WorkbookError {
  const error = thrownBy(() => Workbook.open(bytes, limits).sheets[0]?.rowCount);
  expect(error).toBeInstanceOf(WorkbookError);
  return error as WorkbookError;
}

const plain = parts(worksheet('<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>'));

function centralOffsets(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer);
  const found: number[] = [];
  for (let at = 0; at + 4 <= bytes.length; at++) {
    if (view.getUint32(at, true) === 0x02014b50) found.push(at);
  }
  return found;
}

describe("bounds of what is read", () => {
  it("a bomb is refused by its stated size before it is unpacked", () => {
    const bytes = pack({ ...plain, "xl/media/zeros.bin": new Uint8Array(30 * 2 ** 20) });
    expect(bytes.length).toBeLessThan(100_000);
    expect(refusal(bytes, { expandedBytes: 2 ** 20 }).code).toBe("too-large");
    expect(Workbook.open(bytes).sheets).toHaveLength(1);
  });

  it("a bomb that understates its size is caught while it unpacks", () => {
    const bytes = pack({ ...plain, "xl/media/zeros.bin": new Uint8Array(30 * 2 ** 20) });
    const last = centralOffsets(bytes).at(-1) ?? 0;
    new DataView(bytes.buffer).setUint32(last + 24, 100, true);
    expect(refusal(bytes, { expandedBytes: 2 ** 20 }).code).toBe("too-large");
    expect(refusal(bytes).code).toBe("damaged");
  });

  it("an entry that overstates its size is damaged and takes no memory for the claim", () => {
    const bytes = pack(plain);
    const last = centralOffsets(bytes).at(-1) ?? 0;
    new DataView(bytes.buffer).setUint32(last + 24, 150 * 2 ** 20, true);
    const before = process.memoryUsage().arrayBuffers;
    expect(refusal(bytes).code).toBe("damaged");
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50 * 2 ** 20);
  });

  it("file size, entries, depth and cells are bounded", () => {
    const bytes = pack(plain);
    expect(refusal(bytes, { fileBytes: bytes.length - 1 }).code).toBe("too-large");
    expect(refusal(bytes, { entries: 4 }).code).toBe("too-large");
    expect(refusal(bytes, { cells: 0 }).code).toBe("too-large");
    expect(
      Workbook.open(bytes, { fileBytes: bytes.length, entries: 5, cells: 1 }).sheet("data"),
    ).toBeDefined();
    expect(refusal(bytes, { markup: 500 }).message).toContain("of formats, names, links");
    const deep = worksheet(`<sheetData/>${"<x>".repeat(200)}${"</x>".repeat(200)}`);
    expect(refusal(pack(parts(deep))).message).toContain("nested more than 100 deep");
  });

  it("entries that share their bytes are refused, before anything is unpacked", () => {
    const stored = new Uint8Array(1_000_000).map((_, i) => (i * 7919) >> 3);
    const bytes = zipSync({ "a.bin": [stored, { level: 0 }], "b.bin": strToU8("b") });
    const view = new DataView(bytes.buffer);
    const [first, second] = centralOffsets(bytes) as [number, number];
    for (const field of [16, 20, 24, 42])
      view.setUint32(second + field, view.getUint32(first + field, true), true);
    expect(refusal(bytes).message).toContain("its entries lie over each other");
  });

  it("names that leave the package or come twice are refused", () => {
    expect(refusal(zipSync({ "xl/../../evil.xml": strToU8("x") })).message).toContain(
      "unsafe name",
    );
    const twice = pack({ ...plain, "xl/Workbook.xml": "<x/>" });
    expect(refusal(twice).message).toContain("twice");
  });

  it("columns described over and over cost no more than once", () => {
    const col = '<col min="1" max="16384" width="9" hidden="1"/>';
    const sheet = worksheet(`<cols>${col.repeat(20_000)}</cols><sheetData/>`);
    const started = performance.now();
    expect(Workbook.open(pack(parts(sheet))).sheets[0]?.hiddenCols.size).toBe(16_384);
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});
