import { describe, expect, it } from "vitest";
import { addressesOf } from "../../src/excel/marks/areas";

describe("cells as few addresses", () => {
  it("joins neighbours in a column and names each cell once", () => {
    expect(addressesOf(["K3", "K5", "K4", "B7", "K4", "AA1"])).toEqual(["B7,K3:K5,AA1"]);
  });

  it("starts another address where one would be longer than Excel takes", () => {
    const cells = Array.from({ length: 5_000 }, (_, i) => `K${2 * i + 1}`);
    const addresses = addressesOf(cells);
    expect(addresses.every((address) => address.length <= 8_192)).toBe(true);
    expect(addresses.join(",").split(",")).toEqual(cells);
  });

  it("has none for no cells", () => {
    expect(addressesOf([])).toEqual([]);
  });
});
