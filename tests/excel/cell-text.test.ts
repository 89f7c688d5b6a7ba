import { describe, expect, it } from "vitest";
import { asText, formulaOf, toCellValue } from "../../src/excel/cell-text";
import { readTyped } from "../../src/sheet";

describe("a text that is to stay text", () => {
  it.each([
    "=1+1",
    "+A",
    "-0.3 Pa read",
    "@home",
    "'quoted",
    "12",
    "4.1",
    ".5",
    "1/2",
    "2026-03-04",
    "12%",
    "TRUE",
    "false ",
    "May 5",
    "jan-20",
    "#N/A",
    "$5",
    "(3)",
    "A+C",
    "read 9.2 with A",
    "",
  ])("%j is taken as the same text", (text) => {
    // The sheet model reads typed text as a spreadsheet does.
    const written = asText(text);
    expect(written.startsWith("=")).toBe(false);
    expect(readTyped(written, false).value).toBe(text === "" ? null : text);
  });

  it("is left as it is where nothing else could be meant", () => {
    expect(asText("read 9.2 with A")).toBe("read 9.2 with A");
  });
});

describe("a cell of Excel", () => {
  it("has a formula only where its text is not the value itself", () => {
    expect(formulaOf(3, "=1+2")).toBe("1+2");
    expect(formulaOf("=1+2", "=1+2")).toBeNull();
    expect(formulaOf("a", "a")).toBeNull();
    expect(formulaOf("=", "=")).toBeNull();
  });

  it("is an error only by its value type", () => {
    expect(toCellValue("#N/A", "=NA()", "Error")).toEqual({ error: "#N/A" });
    expect(toCellValue("#N/A", "#N/A", "String")).toBe("#N/A");
    expect(toCellValue("#N/A", "#N/A")).toBe("#N/A");
  });

  it("is blank without a formula, and an empty text with one", () => {
    expect(toCellValue("", "", "Empty")).toBeNull();
    expect(toCellValue("", '=""', "String")).toBe("");
  });
});
