interface Choice {
  readonly label: string;
  readonly run: () => void;
}

interface Message {
  readonly id: number;
  readonly kind: "error" | "info";
  readonly text: string;
  /** What can be done about it; such a line stays until that is chosen. */
  readonly choices: readonly Choice[];
}

/** Most lines shown at once; the oldest go first. */
const most = 4;

/** The lines the page shows until they are dismissed. */
export class Messages {
  list: readonly Message[] = [];
  private lastId = 0;

  constructor(private readonly changed: () => void) {}

  /** Returns the id by which the line can be dismissed. */
  add(kind: Message["kind"], text: string, choices: readonly Choice[] = []): number {
    const others = this.list.filter((message) => message.text !== text);
    this.list = [...others, { id: ++this.lastId, kind, text, choices }].slice(-most);
    this.changed();
    return this.lastId;
  }

  dismiss(id: number): void {
    this.list = this.list.filter((message) => message.id !== id);
    this.changed();
  }

  clear(): void {
    const lasting = this.list.filter(({ choices }) => choices.length > 0);
    if (this.list.length === lasting.length) return;
    this.list = lasting;
    this.changed();
  }
}
