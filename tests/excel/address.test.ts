import { describe, expect, it } from "vitest";
import { blockOf, lastColOfSheet, lastRowOfSheet } from "../../src/excel/address";
import { addressesOf } from "../../src/excel/marks/areas";

describe("an address of an event", () => {
  it.each([
    ["K3", { top: 2, left: 10, bottom: 2, right: 10 }],
    ["$A$1:B9", { top: 0, left: 0, bottom: 8, right: 1 }],
    ["'Lot list'!AA10:AB11", { top: 9, left: 26, bottom: 10, right: 27 }],
    ["C:D", { top: 0, left: 2, bottom: lastRowOfSheet, right: 3 }],
    ["5:7", { top: 4, left: 0, bottom: 6, right: lastColOfSheet }],
    ["B2,D9:E9", { top: 1, left: 1, bottom: 8, right: 4 }],
  ])("%s is read as rows and columns from 0", (address, block) => {
    expect(blockOf(address)).toEqual(block);
  });

  it.each(["", "Total", "A", "7", "A1:C", "A1;B2", "A1,"])("%j is no address", (text) => {
    expect(blockOf(text)).toBeUndefined();
  });
});

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
