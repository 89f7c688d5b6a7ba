import { toldOf } from "../../cells";
import { fresh, type SessionState } from "./state";

/** State that screens watch, and work on the workbook done one piece at a time. */
export class Store {
  state: SessionState = fresh;
  protected closed = false;
  private readonly listeners = new Set<() => void>();
  /** A reading must not meet a half-written mend. */
  private last: Promise<void> = Promise.resolve();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly getState = (): SessionState => this.state;

  /** Does a piece of work after those before it. What goes wrong stands in `state.problem`. */
  protected queue(busy: SessionState["busy"], work: () => Promise<void>): Promise<void> {
    const run = async () => {
      if (this.closed) return;
      this.set(busy === "" ? { problem: "" } : { busy, problem: "" });
      try {
        await work();
      } catch (error) {
        this.set({ problem: toldOf(error) });
      } finally {
        this.set({ busy: "", progress: undefined });
      }
    };
    this.last = this.last.then(run);
    return this.last;
  }

  protected set(change: Partial<SessionState>): void {
    const keys = Object.keys(change) as (keyof SessionState)[];
    if (this.closed || keys.every((key) => this.state[key] === change[key])) return;
    this.state = { ...this.state, ...change };
    for (const listener of this.listeners) listener();
  }
}
