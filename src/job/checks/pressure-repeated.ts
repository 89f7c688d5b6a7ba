import { shown } from "../../cells";
import type { Job, Table } from "../read";
import type { Check } from "./check";

/** So many rows alike do not happen by chance when a manometer shows tenths (common practice). */
const leastRows = 4;

/** The same typed readings in a block of rows that follow each other. */
export const checkPressureRepeated: Check = ({ fans }, report, { byRow }) => {
  if (!fans) return;
  const { table } = fans;
  const signatures = byRow("typed pressures", "fans", typedPressures);
  for (let start = 0; start < fans.length; ) {
    let end = start + 1;
    const first = signatures[start] as string;
    while (end < fans.length && first !== "" && signatures[end] === first && follows(table, end))
      end++;
    if (end - start >= leastRows) {
      const cell = fans.typedPressure(start + 1);
      const [from, next, to] = [start, start + 1, end - 1].map((i) => table.where(i));
      report.at("pressure-repeated", table, cell, start + 1, fans.label(start + 1), {
        what: `the same reading (${first.split(" ").map(Number).map(shown).join(", ")} Pa) stands in ${from} to ${to}`,
        effect: `The flows of ${next} to ${to} are probably those of ${from}.`,
        mend: "Compare with the field notes or photos, and read again the fans that were not measured.",
      });
    }
    start = end;
  }
};

function typedPressures({ fans }: Job): string[] {
  if (!fans) return [];
  const { table } = fans;
  const keys = [...fans.readingKeys, "pressure"].filter((key) => table.has(key));
  return Array.from({ length: fans.length }, (_, i) =>
    keys
      .filter((key) => !Number.isNaN(table.number(key, i)) && !table.hasFormula(key, i))
      .map((key) => table.number(key, i))
      .join(" "),
  );
}

/** Whether a reading stands right after the one before it: next row or next column of a sheet. */
function follows(table: Table, i: number): boolean {
  const [before, own] = [table.home(i - 1), table.home(i)];
  if (before.grid !== own.grid) return false;
  return before.col === own.col ? own.row === before.row + 1 : own.row === before.row;
}
