/** Timers, so that a test can turn the clock itself. */
export interface Clock {
  set(run: () => void, delay: number): unknown;
  clear(timer: unknown): void;
}

export const wallClock: Clock = {
  set: (run, delay) => setTimeout(run, delay),
  clear: (timer) => clearTimeout(timer as ReturnType<typeof setTimeout>),
};

/** Gathers items until none has come for `delay` ms, then hands them over together. */
export class Gather<T> {
  private items: T[] = [];
  /** Items that have come so far. */
  arrived = 0;
  private timer: unknown;

  constructor(
    public delay: number,
    private readonly handOver: (items: readonly T[]) => void,
    private readonly clock: Clock = wallClock,
  ) {}

  add(item: T): void {
    this.arrived++;
    this.items.push(item);
    this.clock.clear(this.timer);
    this.timer = this.clock.set(() => {
      const items = this.items;
      this.items = [];
      this.handOver(items);
    }, this.delay);
  }

  stop(): void {
    this.clock.clear(this.timer);
    this.items = [];
  }
}
