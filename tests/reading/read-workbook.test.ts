import { describe, expect, test } from "vitest";
import { readWorkbook } from "../../src/reading";
import { letters, type Made, sheet, workbook } from "./books";

const rooms = ["Bath", "Powder", "Kitchen", "Laundry"];

/** A firm's log in its own order: pressure before opening, required by a word, verdict by formula. */
function log(rows: number): Made[][] {
  const made: Made[][] = [
    ["Lot", "Where", "Runs", "Box Pa", "Hole sq in", "CFM", "Need", "P/F", "By"],
  ];
  for (let i = 0; i < rows; i++) {
    const r = i + 2;
    const pressure = -(1.3 + ((i * 7) % 41) / 10);
    const area = [12, 24, 48][i % 3]!;
    const flow = 1.07 * area * Math.sqrt(-pressure);
    const need = rooms[i % 4] === "Kitchen" ? 100 : 50;
    made.push([
      `Lot ${1 + Math.floor(i / 4)}`,
      rooms[i % 4]!,
      i % 5 ? "switch" : "always on",
      pressure,
      area,
      { f: `1.07*E${r}*SQRT(ABS(D${r}))`, v: flow },
      need,
      { f: `IF(F${r}>=G${r},"P","F")`, v: flow >= need ? "P" : "F" },
      i % 2 ? "KM" : "JT",
    ]);
  }
  return made;
}

describe("a firm's log, a row a fan", () => {
  const { blocks, noFans } = readWorkbook(workbook([sheet("Log", log(24))]));
  const block = blocks[0]!;

  test("gives every line its role", () => {
    expect(noFans).toBe(false);
    expect(letters(block.roles)).toEqual({
      dwelling: "A",
      room: "B",
      duty: "C",
      pressure: "D",
      area: "E",
      flow: "F",
      required: "G",
      verdict: "H",
      tester: "I",
    });
  });

  test("tells each field with its own cell", () => {
    expect(block.field(2, "room")).toEqual({
      value: "Kitchen",
      place: { sheet: "Log", row: 3, col: 1 },
      from: "cell",
    });
    expect(block.number(0, "pressure")).toBe(-1.3);
  });

  test("learns the sheet's habits", () => {
    expect(block.habits.sign).toMatchObject({ value: "box", share: 1 });
    expect(block.habits.constant?.value).toBe(1.07);
    expect(block.habits.units).toMatchObject({ pressure: "Pa", area: "in²", flow: "cfm" });
    expect(block.habits.pass).toEqual(["P"]);
    expect(block.habits.fail).toEqual(["F"]);
    expect(block.habits.rates).toContainEqual(
      expect.objectContaining({ room: "Kitchen", duty: "switch", rate: 100 }),
    );
  });

  test("gives a reason for each role", () => {
    expect(block.roles.get("pressure")?.evidence.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["words", "values", "formulas"]),
    );
  });
});

test("the user's own choice outranks all evidence", () => {
  const { blocks } = readWorkbook(workbook([sheet("Log", log(24))]), {
    choices: [{ sheet: "Log", heading: "By", role: "note" }],
    meanings: [],
  });
  expect(blocks[0]?.roles.get("note")?.line).toBe(8);
  expect(blocks[0]?.roles.has("tester")).toBe(false);
});

test("a price list holds no fans, and says so in one line", () => {
  const rows: Made[][] = [["Item", "Unit Cost", "Qty", "Total", "Email Address"]];
  for (let i = 0; i < 12; i++)
    rows.push([
      `Part ${i}`,
      3.5 + i,
      i + 1,
      { f: `B${i + 2}*C${i + 2}`, v: (3.5 + i) * (i + 1) },
      "shop@example.org",
    ]);
  const reading = readWorkbook(workbook([sheet("Prices", rows)]));
  expect(reading.noFans).toBe(true);
  expect(reading.blocks).toEqual([]);
  expect(reading.because).toMatch(/^no readings of exhaust fans/);
});
