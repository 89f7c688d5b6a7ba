import { shown } from "../words";
import type { Check } from "./check";

/** So many rows alike do not happen by chance when a manometer shows tenths (common practice). */
const leastRows = 4;

/** The same typed readings in a block of rows that follow each other. */
export const checkPressureRepeated: Check = (job, report) => {
  const { fans } = job;
  if (!fans) return;
  const { table } = fans;
  const keys = [...fans.readingKeys, "pressure"].filter((key) => table.has(key));
  const signature = (i: number) =>
    keys
      .map((key) => (!table.hasFormula(key, i) ? table.number(key, i) : Number.NaN))
      .filter((value) => !Number.isNaN(value))
      .join(" ");
  for (let start = 0; start < fans.length; ) {
    let end = start + 1;
    const first = signature(start);
    while (
      end < fans.length &&
      first !== "" &&
      signature(end) === first &&
      table.rows[end] === (table.rows[end - 1] as number) + 1
    )
      end++;
    if (end - start >= leastRows) {
      const cell = fans.typedPressure(start + 1);
      const [from, to] = [(table.rows[start] as number) + 1, (table.rows[end - 1] as number) + 1];
      report.at("pressure-repeated", table, cell, start + 1, fans.label(start + 1), {
        what: `the same reading (${first.split(" ").map(Number).map(shown).join(", ")} Pa) stands in rows ${from} to ${to}`,
        effect: `The flows of rows ${from + 1} to ${to} are probably those of row ${from}.`,
        mend: "Compare with the field notes or photos, and read again the fans that were not measured.",
      });
    }
    start = end;
  }
};
