import type { Served } from "./served";

/** Objects the client keeps from one request to the next. */
export class References {
  private readonly kept = new Map<string, Served>();
  private last = 0;

  get count(): number {
    return this.kept.size;
  }

  /** Keeps an object and gives the name under which the client asks for it again. */
  keep(served: Served): string {
    const name = `kept:${++this.last}`;
    this.kept.set(name, served);
    return name;
  }

  get(name: string): Served | undefined {
    return this.kept.get(name);
  }

  release(name: string): void {
    this.kept.delete(name);
  }

  releaseAll(): void {
    this.kept.clear();
  }
}
