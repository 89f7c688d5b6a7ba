import { describe, expect, it } from "vitest";
import type { Spot } from "../../src/cells";
import {
  firstWalk,
  follow,
  hold,
  spotAt,
  stepTo,
  tracedSpot,
  type Walk,
} from "../../src/pane/model/trace-walk";

const at = (cell: string): Spot => spotAt("Fans", cell) as Spot;
const cells = ({ path }: Walk) => path.map(({ row, col }) => `${"ABCDEFGH"[col]}${row + 1}`);

describe("the way of a reviewer", () => {
  const there = stepTo(stepTo(follow(firstWalk, at("A1")), at("B2")), at("C3"));

  it("begins at the selection and grows with each cell gone to", () => {
    expect(cells(there)).toEqual(["A1", "B2", "C3"]);
    expect(tracedSpot(there)).toEqual(at("C3"));
  });

  it("begins anew where another cell is selected by hand", () => {
    expect(cells(follow(there, at("H8")))).toEqual(["H8"]);
  });

  it("goes back to a cell that it has been at, by a click or by selecting it", () => {
    expect(cells(stepTo(there, at("B2")))).toEqual(["A1", "B2"]);
    expect(cells(follow(there, at("B2")))).toEqual(["A1", "B2"]);
  });

  it("does not follow a selection twice: a cell that cannot be selected stays traced", () => {
    expect(follow(there, at("A1"))).toBe(there);
  });

  it("stays where it is held, goes on with a click all the same, and follows once let go", () => {
    const held = hold(there, true, at("C3"));
    expect(follow(held, at("H8"))).toBe(held);
    expect(cells(stepTo(held, at("D4")))).toEqual(["A1", "B2", "C3", "D4"]);
    expect(cells(hold(held, false, at("H8")))).toEqual(["H8"]);
    expect(cells(hold(held, false, undefined))).toEqual(["A1", "B2", "C3"]);
  });

  it("forgets its beginning when it grows long", () => {
    let walk = firstWalk;
    for (let row = 1; row <= 30; row++) walk = stepTo(walk, at(`A${row}`));
    expect(walk.path).toHaveLength(20);
    expect(tracedSpot(walk)).toEqual(at("A30"));
  });
});

describe("an address", () => {
  it("is a spot counted from 0", () => {
    expect(spotAt("Fans", "A1")).toEqual({ sheet: "Fans", row: 0, col: 0 });
    expect(spotAt("Fans", "AB12")).toEqual({ sheet: "Fans", row: 11, col: 27 });
  });

  it("is none where it names more than a cell", () => {
    expect(spotAt("Fans", "A1:B2")).toBeUndefined();
    expect(spotAt("Fans", "A:A")).toBeUndefined();
  });
});
