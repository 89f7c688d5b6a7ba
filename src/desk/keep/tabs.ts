const prefix = "fanrow-desk ";

/** This tab among those that have a desk open, each known by a lock that ends with its page. */
export class Tab {
  readonly id = crypto.randomUUID();
  private release: () => void = () => {};

  /** Says that this tab has a file open; true where another tab has one of that name. */
  async opens(fileName: string): Promise<boolean> {
    this.release();
    const held = new Promise<void>((done) => {
      this.release = done;
    });
    void navigator.locks.request(`${prefix}${this.id} ${fileName}`, () => held);
    return (await others(this.id)).some((name) => name.slice(idLength + 1) === fileName);
  }

  /** Whether the tab that kept something is still open elsewhere. */
  async livesElsewhere(): Promise<(id: string) => boolean> {
    const ids = new Set((await others(this.id)).map((name) => name.slice(0, idLength)));
    return (id) => ids.has(id);
  }
}

const idLength = crypto.randomUUID().length;

async function others(own: string): Promise<string[]> {
  const { held = [] } = await navigator.locks.query();
  return held
    .map(({ name = "" }) => name)
    .filter((name) => name.startsWith(prefix) && !name.startsWith(prefix + own))
    .map((name) => name.slice(prefix.length));
}
