import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { type CellValue, cellName } from "../../src/cells";
import { toJobFile } from "../../src/command";
import type { Grid, JobFile } from "../../src/job";
import { answerKey, demo } from "../excel/demo";

const file = toJobFile(demo());
const planted = new Set(answerKey().map(({ sheet, cell }) => `${sheet}!${cell}`));

interface Place {
  readonly grid: Grid;
  readonly row: number;
  readonly col: number;
  readonly formula: string;
}

/** Every formula cell that nobody has tampered with. */
const places: Place[] = file.sheets.flatMap((grid) => {
  const list: Place[] = [];
  for (let row = 0; row < grid.rowCount; row++)
    for (let col = 0; col < grid.colCount; col++) {
      const formula = grid.formula(row, col);
      if (formula !== null && !planted.has(`${grid.name}!${cellName(row, col)}`))
        list.push({ grid, row, col, formula });
    }
  return list;
});

/** A reference to a cell of the own sheet that moves with its row. */
const relative = /(?<![$A-Za-z_.!:])([A-Z]{1,2})(\d+)(?![\d(:])/;
const literal = /(?<![$A-Za-z_.!:\d"])(\d+(?:\.\d+)?)(?![\d.:(A-Za-z])/;
const range = /\$([A-Z]+)\$(\d+):\$([A-Z]+)\$(\d+)/;

/** What a hasty hand does to a formula; undefined where it cannot be done to this one. */
const edits: Readonly<
  Record<string, (formula: string, by: number) => string | number | undefined>
> = {
  "changes a constant": (formula, by) =>
    literal.test(formula)
      ? formula.replace(literal, (digits) => String(Number(digits) + by))
      : `${formula}*1.0${by}`,
  "shifts a reference": (formula, by) =>
    relative.test(formula)
      ? formula.replace(relative, (_, letters, digits) => `${letters}${Number(digits) + by}`)
      : undefined,
  "fixes a reference": (formula) =>
    relative.test(formula)
      ? formula.replace(relative, (_, letters, digits) => `$${letters}$${digits}`)
      : undefined,
  "types a value": (_, by) => 40 + by / 8,
  "shortens a range": (formula, by) =>
    range.test(formula)
      ? formula.replace(range, (_, a, from, b, to) => `$${a}$${from}:$${b}$${Number(to) - by}`)
      : undefined,
};

function edited({ grid, row, col }: Place, to: string | number): JobFile {
  const is = (r: number, c: number) => r === row && c === col;
  const value = (r: number, c: number): CellValue =>
    is(r, c) && typeof to === "number" ? to : grid.value(r, c);
  const formula = (r: number, c: number) =>
    is(r, c) ? (typeof to === "number" ? null : to) : grid.formula(r, c);
  const changed: Grid = {
    name: grid.name,
    rowCount: grid.rowCount,
    colCount: grid.colCount,
    value,
    formula,
  };
  return { ...file, sheets: file.sheets.map((sheet) => (sheet === grid ? changed : sheet)) };
}

describe("an edit of any formula cell of the demo job", () => {
  it.each(Object.keys(edits))("that %s is found", (name) => {
    const edit = edits[name] as (typeof edits)[string];
    let made = 0;
    fc.assert(
      fc.property(fc.nat(places.length - 1), fc.integer({ min: 1, max: 6 }), (at, by) => {
        const place = places[at] as Place;
        const to = edit(place.formula, by);
        fc.pre(to !== undefined && to !== place.formula);
        made++;
        const cell = cellName(place.row, place.col);
        const findings = auditFormulas(edited(place, to as string | number), []);
        const own = findings.filter(
          (finding) => finding.sheet === place.grid.name && finding.cell === cell,
        );
        expect(own, `${place.grid.name}!${cell} ${place.formula} → ${to}`).toHaveLength(1);
        expect(own[0]?.apply?.writes).toHaveLength(1);
      }),
      { numRuns: 40 },
    );
    expect(made).toBeGreaterThanOrEqual(40);
  });
});
