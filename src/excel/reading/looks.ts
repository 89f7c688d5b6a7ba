import type { Rectangle } from "../../cells";
import { areasInPieces, rectanglesOf, visibleIn } from "../areas";
import type { Book } from "../run";

/** What is known of a sheet's cells besides what they hold. Rows and columns count from 0. */
export interface SheetLooks {
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenCols: ReadonlySet<number>;
  /** Whether text of a cell has the colour of its ground. */
  isUnseen(row: number, col: number): boolean;
}

export const plainLooks: SheetLooks = {
  hiddenRows: new Set(),
  hiddenCols: new Set(),
  isUnseen: () => false,
};

/** A used range of which some lines may be hidden. */
interface Lines {
  readonly used: Excel.Range;
  /** null where some are hidden and some are not. */
  readonly rowsHidden: boolean | null;
  readonly columnsHidden: boolean | null;
}

interface Hidden {
  readonly rows: Set<number>;
  readonly cols: Set<number>;
}

/** Asks which lines of some used ranges are hidden, along with something else that is read. */
export class HiddenLines {
  private asked: (Excel.RangeAreas | undefined)[];
  /** Whether some sheet hides only some of its lines; else there is nothing to ask. */
  readonly isNeeded: boolean;

  constructor(private readonly sheets: readonly Lines[]) {
    this.asked = [];
    this.isNeeded = sheets.some(hidesSome);
  }

  /** Queues the question. It is lost when the round trip fails, and may be asked again. */
  ask(): void {
    this.asked = this.sheets.map((lines) => {
      if (!hidesSome(lines)) return undefined;
      const visible = visibleIn(lines.used);
      visible.load("address");
      return visible;
    });
  }

  /** Takes back a question that Excel will not answer: nothing is then known to be hidden. */
  drop(): void {
    this.asked = [];
  }

  /** The hidden lines of each sheet, once answered; asked in pieces where there are very many. */
  async answer(book: Book): Promise<Hidden[]> {
    const found: Hidden[] = [];
    for (const [i, lines] of this.sheets.entries()) {
      const visible = this.asked[i];
      const isUnknown = hidesSome(lines) && visible === undefined;
      if (lines.used.isNullObject || isUnknown) found.push({ rows: new Set(), cols: new Set() });
      else if (!visible) found.push(hiddenOf(lines));
      else {
        const areas = rectanglesOf(visible) ?? (await areasInPieces(book, lines.used, visibleIn));
        found.push(hiddenOf(lines, areas));
      }
    }
    return found;
  }
}

function hidesSome({ rowsHidden, columnsHidden }: Lines): boolean {
  return rowsHidden === null || columnsHidden === null;
}

function hiddenOf(
  { used, rowsHidden, columnsHidden }: Lines,
  visible?: readonly Rectangle[],
): Hidden {
  const rows = lines(used.rowIndex, used.rowCount);
  const cols = lines(used.columnIndex, used.columnCount);
  if (!visible)
    return { rows: rowsHidden ? rows : new Set(), cols: columnsHidden ? cols : new Set() };
  for (const { top, left, bottom, right } of visible) {
    for (let row = top; row <= bottom; row++) rows.delete(row);
    for (let col = left; col <= right; col++) cols.delete(col);
  }
  return { rows, cols };
}

function lines(first: number, count: number): Set<number> {
  return new Set(Array.from({ length: count }, (_, i) => first + i));
}
