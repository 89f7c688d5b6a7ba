import { type Cells, intersections } from "./area";
import { Remembered } from "./compile/remembered";
import type { Outcome } from "./outcome";
import type { Program } from "./program";

/** A cell that a formula reads: fixed, or so many rows and columns from its own. */
interface Input {
  readonly grid: Cells;
  readonly row: number;
  readonly col: number;
  readonly fixed: { readonly top: boolean; readonly left: boolean };
}

/** More cells than these in a row's own part of a formula make its rows unlike anyway. */
const mostInputs = 12;

/**
 * What a formula gave, by the values that it reads: where rows hold the same, it is worked out once.
 * Only of formulas that go by nothing but these values; ranges fixed in every row are the same to all,
 * until something is written.
 */
export class Recall {
  private memory = new Remembered<Outcome>();
  private writes = -1;

  private constructor(private readonly inputs: readonly Input[]) {}

  /** Undefined for a formula that goes by more than what it reads. */
  static of({ reads, ...program }: Program): Recall | undefined {
    const { isPlaced, isVolatile, seeks, needsArray, unsupported } = program;
    if (isPlaced || isVolatile || seeks || needsArray || unsupported !== null) return undefined;
    const inputs: Input[] = [];
    for (const { grid, top, left, bottom, right, fixed, isFixed } of reads) {
      if (isFixed) continue;
      if (fixed.top !== fixed.bottom || fixed.left !== fixed.right) return undefined;
      if ((bottom - top + 1) * (right - left + 1) > mostInputs) return undefined;
      for (let row = top; row <= bottom; row++)
        for (let col = left; col <= right; col++) inputs.push({ grid, row, col, fixed });
    }
    const isOfUse = inputs.length > 0 && inputs.length <= mostInputs;
    return isOfUse ? new Recall(inputs) : undefined;
  }

  /** What `run` gives for the formula at a cell, or gave where it read the same. */
  of(row: number, col: number, run: () => Outcome): Outcome {
    const { inputs, memory } = this;
    const { writes } = (inputs[0] as Input).grid.clock;
    if (writes !== this.writes) {
      this.writes = writes;
      this.memory = new Remembered();
      return run();
    }
    if (memory.isUseless) return run();
    const keys: unknown[] = new Array(inputs.length);
    for (let i = 0; i < inputs.length; i++) {
      const input = inputs[i] as Input;
      const { fixed } = input;
      const key = input.grid.get(
        fixed.top ? input.row : row + input.row,
        fixed.left ? input.col : col + input.col,
      );
      if (typeof key === "object" && key !== null) return run();
      keys[i] = key;
    }
    const known = memory.look(keys);
    if (known) return known;
    const { met } = intersections;
    const outcome = run();
    if (met === intersections.met && !("spills" in outcome)) memory.keep(outcome);
    return outcome;
  }
}
