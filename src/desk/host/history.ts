import type { SheetTab } from "./book";
import type { Content } from "./cells/content";

/** One cell before and after an edit. */
export interface CellStep {
  readonly tab: SheetTab;
  readonly row: number;
  readonly col: number;
  readonly before: Content;
  readonly after: Content;
}

/** The format of one cell before and after an edit. */
export interface LookStep {
  readonly tab: SheetTab;
  readonly row: number;
  readonly col: number;
  readonly before: number;
  readonly after: number;
}

/** Cell edits that are undone together, with what formats came with them. */
export interface Step {
  readonly group: string;
  cells: CellStep[];
  looks: readonly LookStep[];
}

/** Most steps kept; older ones are dropped. */
const mostSteps = 200;

/** The cell edits that can be undone and redone. */
export class History {
  private past: Step[] = [];
  private future: Step[] = [];

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Edits of the same group as the last step join it. */
  record(group: string, cells: readonly CellStep[]): void {
    if (cells.length === 0) return;
    this.future = [];
    const last = this.past.at(-1);
    if (last?.group === group) last.cells.push(...cells);
    else this.past.push({ group, cells: [...cells], looks: [] });
    if (this.past.length > mostSteps) this.past.shift();
  }

  /** Formats that the last edit brought along. */
  restyled(looks: readonly LookStep[]): void {
    const last = this.past.at(-1);
    if (last) last.looks = looks;
  }

  /** The step to set back. */
  undo(): Step | undefined {
    const step = this.past.pop();
    if (step) this.future.push(step);
    return step;
  }

  /** The step to do again. */
  redo(): Step | undefined {
    const step = this.future.pop();
    if (step) this.past.push(step);
    return step;
  }

  /** Drops the edits of a sheet that is gone. */
  forget(tab: SheetTab): void {
    const without = (steps: readonly Step[]) =>
      steps
        .map((step) => ({ ...step, cells: step.cells.filter((cell) => cell.tab !== tab) }))
        .filter((step) => step.cells.length > 0);
    this.past = without(this.past);
    this.future = without(this.future);
  }
}
