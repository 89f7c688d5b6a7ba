/**
 * What working out formulas costs, counted in cells looked at: the same on every machine, and no
 * workbook can ask for more than its share.
 */

/** Of one workbook's formulas together; a large job asks for some three millions. */
const most = 30_000_000;

/** Thrown where the share of a workbook is spent. */
export class Spent extends Error {}

let current: Work | undefined;

/** Counts cells that a formula looks at, or steps that cost as much. */
export function spend(cells: number): void {
  if (current === undefined) return;
  current.left -= cells;
  if (current.left < 0) throw new Spent();
}

/** A character of a formula met for the first time costs, to be read and kept, what so many cells do. */
const cellsPerCharacter = 30;

/** Counts a formula that is about to be read; a copy of one that was read costs nothing. */
export function spendOnReading(formula: string): void {
  spend(formula.length * cellsPerCharacter);
}

export class Work {
  left = most;

  get isSpent(): boolean {
    return this.left < 0;
  }

  /** What `run` gives where there is work left for it; what it looks at is counted. */
  within<T>(run: () => T): T | { readonly unsupported: string } {
    const outer = current;
    current = this;
    try {
      spend(1);
      return run();
    } catch (problem) {
      if (problem instanceof Spent) return { unsupported: overspent };
      throw problem;
    } finally {
      current = outer;
    }
  }
}

/** What is told of a formula that there was no work left for. */
const overspent = `more than ${most.toLocaleString("en")} cells to look at`;
