import { Kind } from "../cells/cells";
import type { Pool } from "../tables/section";
import { cellWord } from "../text/vocabulary";
import type { Ledger } from "./ledger";
import type { LineStats } from "./stats";

/** A line says something beside the totals where so many of them have it. */
const most = 0.6;
const mostWords = 5;

/** What a line tells that is filled beside means and totals alone: verdicts, or what is required. */
export function addBesideTotals(
  { sections }: Pool,
  stats: ReadonlyMap<number, LineStats>,
  ledger: Ledger,
): void {
  const rows = sections.flatMap(({ cells, shift, totals }) =>
    totals.map((row) => ({ cells, shift, row })),
  );
  for (const [line, { filled }] of stats) {
    if (filled > 0 || rows.length < 2) continue;
    const kinds = rows.map(({ cells, shift, row }) => cells.kind(row, line + shift));
    const share = (kind: number) => kinds.filter((each) => each === kind).length / rows.length;
    if (share(Kind.number) >= most)
      ledger.add(line, "required", "values", 2, "its amounts stand beside the means");
    if (share(Kind.text) < most) continue;
    const words = new Set(
      rows.map(({ cells, shift, row }) => cells.text(row, line + shift).trim()),
    );
    words.delete("");
    const known = [...words].filter((word) => cellWord(word).verdict).length / words.size;
    if (words.size <= mostWords)
      ledger.add(line, "verdict", "values", 2 + 4 * known, "its words stand beside the means");
  }
}
