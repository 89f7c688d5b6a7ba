import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holdsCell } from "../../src/cells";
import { rectangles } from "../../src/desk/host/cells/rectangles";
import { subtract } from "../../src/desk/host/subtract";

const place = fc.record({ row: fc.nat(12), col: fc.nat(12) });
const rect = fc
  .tuple(fc.nat(12), fc.nat(12), fc.nat(5), fc.nat(5))
  .map(([top, left, rows, cols]) => ({ top, left, bottom: top + rows, right: left + cols }));

/** Every place of a small sheet, as text, that a test holds for. */
function places(holds: (row: number, col: number) => boolean): string[] {
  const found: string[] = [];
  for (let row = 0; row < 20; row++)
    for (let col = 0; col < 20; col++) if (holds(row, col)) found.push(`${row} ${col}`);
  return found;
}

describe("Rectangles", () => {
  it("of cells hold these cells, each once", () => {
    fc.assert(
      fc.property(fc.array(place), (cells) => {
        const rects = rectangles(cells);
        const wanted = new Set(cells.map(({ row, col }) => `${row} ${col}`));
        expect(places((row, col) => rects.some((each) => holdsCell(each, row, col)))).toEqual(
          places((row, col) => wanted.has(`${row} ${col}`)),
        );
        const size = rects.reduce(
          (sum, { top, left, bottom, right }) => sum + (bottom - top + 1) * (right - left + 1),
          0,
        );
        expect(size).toBe(wanted.size);
      }),
    );
  });

  it("are as few as a block of cells needs", () => {
    const cells = [0, 1, 2].flatMap((row) => [4, 5].map((col) => ({ row, col })));
    expect(rectangles(cells)).toEqual([{ top: 0, left: 4, bottom: 2, right: 5 }]);
  });

  it("cut out of each other leave what is in the first alone", () => {
    fc.assert(
      fc.property(rect, rect, (from, cut) => {
        const left = subtract(from, cut);
        expect(places((row, col) => left.some((each) => holdsCell(each, row, col)))).toEqual(
          places((row, col) => holdsCell(from, row, col) && !holdsCell(cut, row, col)),
        );
      }),
    );
  });
});
