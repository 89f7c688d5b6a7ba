import { WorkbookError } from "./error";
import type { Limits } from "./types";

/** Far above any real job, low enough that a hostile file cannot fill the memory. */
export const defaultLimits: Limits = {
  fileBytes: 100 * 2 ** 20,
  entries: 10_000,
  expandedBytes: 200 * 2 ** 20,
  depth: 100,
  cells: 3_000_000,
  text: 32_000_000,
  markup: 16 * 2 ** 20,
};

/** Counts down what is left of a limit and refuses the file when nothing is. */
export class Budget {
  constructor(
    private remaining: number,
    private readonly refusal: string,
  ) {}

  get left(): number {
    return this.remaining;
  }

  take(amount: number): void {
    this.remaining -= amount;
    if (this.remaining < 0) throw new WorkbookError("too-large", this.refusal);
  }
}

export function megabytes(bytes: number): string {
  const value = bytes / 2 ** 20;
  return `${value >= 10 ? Math.round(value) : Number(value.toPrecision(2))} MB`;
}
