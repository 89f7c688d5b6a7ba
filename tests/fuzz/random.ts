/** A stream of numbers that a seed tells whole (mulberry32, from memory), so that any case comes again. */
export class Random {
  constructor(private state: number) {}

  /** From 0 up to, but not, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  of<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }
}
