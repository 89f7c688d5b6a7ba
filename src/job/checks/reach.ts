import { holdsCell, type Spot } from "../../cells";
import type { Field } from "../columns";
import { type Input, restsOn } from "../facts";
import type { Job, Table } from "../read";

/** Where these point is known only when they run. */
const seeks = /\b(OFFSET|INDIRECT)\s*\(/i;

/** Further back than so many formulas nobody keeps a reading. */
const mostSteps = 200;

/**
 * The columns that a computed field should follow but its formula, the same in these rows, does not
 * read, directly or through other formulas. None where that cannot be told.
 */
export function unreachedBy(
  job: Job,
  table: Table,
  field: Field,
  rows: readonly number[],
): readonly Input[] {
  const { calculator } = job.file;
  const [i] = rows;
  const place = i === undefined ? undefined : table.place(field.key, i);
  if (!calculator || !place || i === undefined) return [];
  const { read, isKnown } = readsOf(job, { ...place, sheet: place.grid.name });
  if (!isKnown) return [];
  const reaches = (input: Input): boolean => {
    const other = job.tables[input.kind] as Table;
    const areas = read.filter(({ sheet }) => other.sheets.includes(sheet));
    if (areas.length === 0) return false;
    const own = other === table ? [i] : Array.from({ length: other.length }, (_, at) => at);
    return own.some((at) => {
      const spot = other.place(input.key, at);
      return areas.some(
        (area) => spot && area.sheet === spot.grid.name && holdsCell(area, spot.row, spot.col),
      );
    });
  };
  const follows = (input: Input): boolean => {
    if (reaches(input)) return true;
    const other = job.tables[input.kind] as Table;
    const computed = other.field(input.key);
    // What is worked out may be worked out again in the formula itself.
    const behind = computed.is && other === table ? restsOn(job, other, computed, rows) : [];
    return behind.length > 0 && behind.every(follows);
  };
  const isMissed = (input: Input) => !reaches(input);
  return restsOn(job, table, field, rows, isMissed).filter((input) => !follows(input));
}

/** All that a formula reads, through the formulas of the cells that it reads. */
function readsOf({ file: { calculator, sheets } }: Job, from: Spot) {
  const read: ReturnType<NonNullable<typeof calculator>["precedents"]>[number][] = [];
  const open: Spot[] = [from];
  const seen = new Set<string>();
  for (let steps = 0; open.length > 0 && steps < mostSteps; steps++) {
    const { sheet, row, col } = open.pop() as Spot;
    const formula = sheets.find(({ name }) => name === sheet)?.formula(row, col) ?? null;
    if (formula === null) continue;
    const again = calculator?.recompute(sheet, row, col);
    if (!again || "unsupported" in again || seeks.test(formula)) return { read, isKnown: false };
    for (const area of calculator?.precedents(sheet, row, col) ?? []) {
      const key = JSON.stringify(area);
      if (seen.has(key)) continue;
      seen.add(key);
      read.push(area);
      for (let r = area.top; r <= Math.min(area.bottom, area.top + mostSteps); r++)
        for (let c = area.left; c <= area.right; c++)
          open.push({ sheet: area.sheet, row: r, col: c });
    }
  }
  return { read, isKnown: true };
}
