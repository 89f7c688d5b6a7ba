import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { toJobFile } from "../../src/command";
import { acceptanceHeadings, checkJob, fingerprintOf, isOpen } from "../../src/job";
import { type CellSpec, Workbook } from "../../src/workbook";

// One cause is told once, in however many cells it stands, so that what else is told is seen.

const heads = ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"];
const row = (i: number, pressure: CellSpec["value"]): CellSpec[] =>
  [`Lot ${i}`, "B1", pressure, 10].map((value) => ({ value }));

/** A job of a few fans, with formulas in a column beside them. */
function job(
  pressures: readonly CellSpec["value"][],
  formulas: readonly (readonly [formula: string, value: number])[] = [],
): Workbook {
  const book = Workbook.create();
  const rows = pressures.map((pressure, i) => row(i, pressure));
  book.addSheet("Fans", { rows: [heads.map((value) => ({ value })), ...rows] });
  const cells = formulas.map(([formula, value]): CellSpec[] => [{ formula, value }]);
  if (cells.length > 0) book.addSheet("Sums", { rows: cells });
  return book;
}

const found = (book: Workbook) => checkJob(toJobFile(book), 46_000, auditFormulas).findings;
/** What is told, but for what the audit says of a formula beside others. */
const brief = (book: Workbook) =>
  found(book)
    .filter(({ kind }) => !/^formula-(differs|other-row)$/.test(kind))
    .map(({ kind, cell, cells, what }) => `${kind} ${cell} ${cells.length}: ${what}`);

const fans = [4, 5.1, 6.3];

describe("Formulas that read each other in a circle", () => {
  it("are told once with all their cells, however long the way around is", () => {
    const circle = Array.from({ length: 5_000 }, (_, i) => [`A${((i + 1) % 5_000) + 1}+1`, 0]);
    const [told = "", ...others] = brief(job(fans, circle as [string, number][]));
    expect(others).toEqual([]);
    expect(told).toBe(
      "formula-circular A1 5000: the formulas of 5,000 cells read each other in a circle",
    );
  });

  it("are told by a sum that takes in its own cell, and by one that takes in the other", () => {
    expect(brief(job(fans, [["SUM(A1:A1)+2", 0]]))).toEqual([
      "formula-circular A1 1: the formula reads its own cell",
    ]);
    const two = job(fans, [
      ["SUM(A2:A9)", 0],
      ["A1+1", 0],
      ["A2*3", 3],
    ]);
    expect(brief(two)).toEqual([
      "formula-circular A1 3: the formulas of 3 cells read each other in a circle",
    ]);
  });

  it("are none where a stale value stands below them all", () => {
    const chain = Array.from({ length: 30 }, (_, i): [string, number] =>
      i === 0 ? ["Fans!C2", 99] : [`A${i}+1`, 99 + i],
    );
    expect(brief(job(fans, chain))).toEqual([
      "value-stale A1 1: 99 is stored where the formula gives 4",
    ]);
  });
});

describe("Many faults that ask for the same", () => {
  const texts = Array.from({ length: 40 }, (_, i) => `${i + 1} x`);

  it("are one with all their cells; a few are told each for itself", () => {
    expect(brief(job([...fans, ...texts]))).toEqual([
      'number-as-text C5 40: Pressure (Pa) holds the text "1 x"; alike in 39 more',
    ]);
    expect(brief(job([...fans, ...texts.slice(0, 8)]))).toHaveLength(8);
  });

  it("are one of values that were not worked out again", () => {
    const stale = Array.from({ length: 60 }, (_, i): [string, number] => [`Fans!C2*${i + 3}`, 1]);
    expect(brief(job(fans, stale))).toEqual([
      "value-stale A1 60: 1 is stored where the formula gives 12; alike in 59 more",
    ]);
  });

  it("leave apart what someone accepted, and may be accepted together", () => {
    const book = job([...fans, ...texts]);
    const apart = job([...fans, ...texts.slice(0, 8)]);
    const file = toJobFile(book);
    const accept = (cell: string, fingerprint: string): CellSpec[] =>
      ["Fans", cell, "number-as-text", "", "as read", "QT", 46_000, fingerprint].map((value) => ({
        value,
      }));
    const single = found(apart)[1];
    const all = found(book)[0];
    if (!single || !all) throw new Error("not told");
    const sheet = [acceptanceHeadings.map((value): CellSpec => ({ value }))];
    sheet.push(accept(single.cell, fingerprintOf(file, single)));
    book.addSheet("Accepted", { rows: sheet });
    const [first, second, ...others] = found(book);
    expect(others).toEqual([]);
    expect(
      [first, second].map((one) => [one?.cell, one?.cells.length, one && isOpen(one)]),
    ).toEqual([
      ["C5", 39, true],
      ["C6", 1, false],
    ]);
    const whole = job([...fans, ...texts]);
    whole.addSheet("Accepted", {
      rows: [sheet[0] as CellSpec[], accept(all.cell, fingerprintOf(file, all))],
    });
    expect(found(whole).map((one) => [one.cells.length, isOpen(one)])).toEqual([[40, false]]);
  });
});
