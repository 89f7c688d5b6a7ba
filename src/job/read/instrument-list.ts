import type { Table } from "./table";

/** One instrument, or one range setting of one: flow = constant × reading ^ exponent. */
interface Instrument {
  readonly name: string;
  readonly kind: string;
  readonly constant: number;
  readonly exponent: number;
  /** Readings between which it may be used; NaN where not stated. */
  readonly lowest: number;
  readonly highest: number;
  /** Limit: the larger of a percentage and a floor; NaN where not stated. */
  readonly percent: number;
  readonly floor: number;
  readonly resolution: number;
  /** Row of the table. */
  readonly row: number;
}

/** The instruments of a job. Names are compared without case. */
export class InstrumentList {
  private readonly byName = new Map<string, Instrument>();
  readonly names: readonly string[];

  constructor(readonly table: Table) {
    const names: string[] = [];
    table.texts("instrument").forEach((name, row) => {
      if (name === "" || this.byName.has(name.toUpperCase())) return;
      const number = (key: string) => table.number(key, row);
      const or = (value: number, usual: number) => (Number.isNaN(value) ? usual : value);
      names.push(name);
      this.byName.set(name.toUpperCase(), {
        name,
        kind: table.text("kind", row).toLowerCase(),
        constant: or(number("constant"), 1),
        exponent: or(number("exponent"), 1),
        lowest: number("lowest"),
        highest: number("highest"),
        percent: number("percent"),
        floor: number("floor"),
        resolution: or(number("resolution"), 0),
        row,
      });
    });
    this.names = names;
  }

  find(name: string): Instrument | undefined {
    return this.byName.get(name.trim().toUpperCase());
  }
}
