import type { Extent } from "../extent";
import type { SheetInfo } from "../host";

/** One row of the grid: the row of the sheet it shows. */
export interface Line {
  readonly row: number;
}

interface RowPlace {
  readonly index: number;
  readonly pinned: "top" | null;
}

/** Most rows kept in view at the top; a sheet may freeze more than a screen holds. */
const mostFrozen = 8;

/** Which line of the grid shows which row of the sheet; hidden rows have none. */
export class Lines {
  readonly frozen: readonly Line[];
  readonly body: readonly Line[];

  constructor(facts: SheetInfo, extent: Extent) {
    const frozenRows = facts.frozenRows > mostFrozen ? 0 : facts.frozenRows;
    const frozen: Line[] = [];
    const body: Line[] = [];
    for (let row = 0; row < extent.rows; row++) {
      if (facts.hiddenRows.has(row)) continue;
      (row < frozenRows ? frozen : body).push({ row });
    }
    this.frozen = frozen;
    this.body = body;
  }

  placeOf(row: number): RowPlace | null {
    const pinned = this.frozen.findIndex((line) => line.row === row);
    if (pinned >= 0) return { index: pinned, pinned: "top" };
    const index = search(this.body, row);
    return index < 0 ? null : { index, pinned: null };
  }
}

function search(lines: readonly Line[], row: number): number {
  let low = 0;
  let high = lines.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const at = (lines[middle] as Line).row;
    if (at === row) return middle;
    if (at < row) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}
