import type { EventEntry } from "./wire/messages";

/** Numbers of the events in the client library. */
export const eventType = {
  changed: 10,
  activated: 11,
  selectionChanged: 14,
  calculated: 16,
} as const;

/** Target of handlers that hear of every sheet. */
const wholeWorkbook = "Workbook";

/** A write to cells of one sheet, as handlers are told. */
interface CellsChanged {
  /** Id of the sheet. */
  readonly sheet: string;
  /** The written rectangles as addresses, "A1:B2,D4". */
  readonly address: string;
  readonly isByPane: boolean;
  /** Given where a single cell was written. */
  readonly detail?: {
    readonly valueBefore: unknown;
    readonly valueAfter: unknown;
    readonly valueTypeBefore: string;
    readonly valueTypeAfter: string;
  };
}

/** The event handlers the client has registered, and the messages due to them. */
export class Events {
  private readonly handlers = new Map<string, number>();
  private waiting: EventEntry[] = [];

  /** `send` is called once after something was queued; it should take the entries soon. */
  constructor(private readonly send: () => void) {}

  /** `sheet` is the id of a sheet; null registers for every sheet. */
  register(type: number, sheet: string | null): void {
    const key = keyOf(type, sheet);
    this.handlers.set(key, (this.handlers.get(key) ?? 0) + 1);
  }

  unregister(type: number, sheet: string | null): void {
    const key = keyOf(type, sheet);
    this.handlers.set(key, Math.max(0, (this.handlers.get(key) ?? 0) - 1));
  }

  /** Drops handlers of single sheets and what waits, when another workbook is opened. */
  forgetSheets(): void {
    for (const key of this.handlers.keys())
      if (!key.endsWith(` ${wholeWorkbook}`)) this.handlers.delete(key);
    this.waiting = [];
  }

  /** The entries due, taken off the queue. */
  take(): EventEntry[] {
    const { waiting } = this;
    this.waiting = [];
    return waiting;
  }

  changed({ sheet, address, isByPane, detail }: CellsChanged): void {
    this.post(eventType.changed, sheet, {
      changeType: "RangeEdited",
      source: "Local",
      triggerSource: isByPane ? "ThisLocalAddin" : "Unknown",
      address,
      shiftDirection: "None",
      ...detail,
    });
  }

  /** `address`, of all cells of a sheet that were worked out again, is without the sheet. */
  calculated(sheet: string, address: string): void {
    this.post(eventType.calculated, sheet, { address });
  }

  /** `address` is without the sheet. */
  selectionChanged(sheet: string, address: string): void {
    this.post(eventType.selectionChanged, sheet, { address });
  }

  activated(sheet: string): void {
    this.post(eventType.activated, sheet, {});
  }

  private post(type: number, sheet: string, args: Readonly<Record<string, unknown>>): void {
    for (const target of [sheet, null]) {
      if ((this.handlers.get(keyOf(type, target)) ?? 0) === 0) continue;
      this.waiting.push({
        messageCategory: 65536,
        messageType: type,
        targetId: target ?? wholeWorkbook,
        message: JSON.stringify({ worksheetId: sheet, ...args }),
      });
    }
    if (this.waiting.length > 0) this.send();
  }
}

function keyOf(type: number, sheet: string | null): string {
  return `${type} ${sheet ?? wholeWorkbook}`;
}
