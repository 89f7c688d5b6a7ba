import type { SheetBlock } from "./blocks/block";
import { enoughForFans } from "./blocks/judge";
import type { Listed } from "./blocks/listing";
import type { NotRead } from "./types";

/** Less than this speaks for no fans at all: rooms beside a named pressure without an opening have more. */
const leastTold = 0.5;

/** Tables that look somewhat like fans and were passed over, each in one line. */
export function notReadOf(upright: readonly Listed[], blocks: readonly SheetBlock[]): NotRead[] {
  const readSheets = new Set(blocks.map(({ sheet }) => sheet));
  const found: NotRead[] = [];
  for (const { block, listings } of upright) {
    const { score, against } = block.verdict;
    if (score < leastTold || score >= enoughForFans) continue;
    for (const { cells, rows, read } of listings) {
      const count = read.reduce((sum, one) => sum + one, 0);
      const place = blocks.some(
        (other) => other.sheet === cells.grid.name && other.from.pool === block.pool,
      );
      if (count < 2 || place || cells.turned) continue;
      if (
        readSheets.has(cells.grid.name) &&
        blocks.some((other) => other.sheet === cells.grid.name && other.turned)
      )
        continue;
      found.push({
        sheet: cells.grid.name,
        lines: [...rows],
        because: `Sheet ${cells.grid.name}: ${count} readings not checked, because ${against[0] ?? "too little tells that they are of fans"}`,
      });
    }
  }
  return found;
}
