import { describe, expect, it } from "vitest";
import { addressesOf } from "../../src/excel/areas";

describe("cells as few addresses", () => {
  it("joins neighbours in a column and names each cell once", () => {
    expect(addressesOf(["K3", "K5", "K4", "B7", "K4", "AA1"])).toEqual(["B7,K3:K5,AA1"]);
  });

  it("starts another address where one would be longer than Excel takes", () => {
    const cells = Array.from({ length: 5_000 }, (_, i) => `K${2 * i + 1}`);
    const sheet = "The fans of phase 2";
    const addresses = addressesOf(cells, sheet);
    // Excel gives them back with the sheet's name before each cell.
    const given = addresses.map((each) => each.replace(/^|,/g, `$&'${sheet}'!`));
    expect(given.every((address) => address.length <= 8_192)).toBe(true);
    expect(addresses.length).toBeLessThan(25);
    expect(addresses.join(",").split(",")).toEqual(cells);
  });

  it("has none for no cells", () => {
    expect(addressesOf([])).toEqual([]);
  });
});
