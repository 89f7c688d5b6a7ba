import { counted, isBlankCell, isCellError } from "../../cells";
import type { Edition } from "../../editions";
import { evaluate, layoutOf, type SheetKind, type Source, type Values } from "../columns";
import { Columns, definedAs, type Job, type Table } from "../read";
import { type Cell, num, type Row, text } from "./row";
import { totalsRows } from "./totals-rows";
import { type UnfitDuct, unfitDucts } from "./unfit-ducts";

/** What an estimate comes to: flows in the job's units, costs in the currency that was typed. */
export interface Estimate {
  readonly edition: Edition | undefined;
  /** Required rates, by kind of room, how it runs and whether it serves the whole dwelling. */
  readonly rates: readonly PlannedRate[];
  readonly dwellings: readonly Total[];
  readonly fans: readonly Item[];
  /** Ducts; `quantity` is a length. */
  readonly ducts: readonly (Item & { readonly runs: number; readonly unfit: number })[];
  /** Ducts that the duct check rejects, as drawn, with one that would pass where there is any. */
  readonly unfit: readonly UnfitDuct[];
  /** The openings to bring, box by box, with the fans for which each is expected. */
  readonly openings: readonly {
    readonly box: string;
    readonly openings: string;
    readonly fans: number;
  }[];
  /** Rooms for which no rate is required and no fan is planned. */
  readonly noneRequired: readonly PlannedRate[];
  /** Planned fans that nothing in the catalogue will do for, with what the schedule says. */
  readonly unmet: readonly { readonly said: string; readonly fans: number }[];
  readonly totals: readonly Total[];
}

export interface PlannedRate {
  readonly room: string;
  readonly duty: string;
  readonly whole: boolean;
  /** NaN where none is required. */
  readonly least: number;
  readonly most: number;
  readonly fans: number;
}

export interface Item {
  readonly item: string;
  /** NaN for a duct. */
  readonly rated: number;
  readonly quantity: number;
  /** NaN where no cost is typed. */
  readonly cost: number;
  readonly all: number;
}

/** Of a dwelling, a plan, a phase or all; NaN where something is missing that goes into it. */
export interface Total {
  /** "dwelling", "plan", "phase" or "all". */
  readonly by: string;
  readonly name: string;
  /** The rate of a single dwelling; NaN for more than one. */
  readonly required: number;
  readonly dwellings: number;
  readonly planned: number;
  /** Fans and ducts without a cost. */
  readonly unpriced: number;
  readonly materials: number;
  readonly hours: number;
  readonly labour: number;
  readonly expense: number;
  readonly price: number;
}

/**
 * The estimate of a job with a schedule of planned fans, as its sheets stand; under another edition
 * all but what was typed over is worked out anew. Undefined where no fan is planned.
 */
export function estimateOf(job: Job, other?: Edition): Estimate | undefined {
  const { schedule } = job.tables;
  if (!schedule || schedule.length === 0) return undefined;
  const settings = other ? { ...job.settings, edition: other } : job.settings;
  const columns: Columns = new Columns({ tables: job.tables, settings }, (kind, key) =>
    standing(job.tables[kind], key, definedAs(kind, key, columns) ?? [], other === undefined),
  );
  const rows = rowsOf(columns, "schedule", schedule.length, [
    ...["roomKind", "duty", "whole", "required", "buy", "count", "box", "openings"],
    ...["ductItem", "duct", "ductKind", "ductDiameter", "ductLength", "elbows", "allowed"],
  ]);
  const items = itemsOf(columns, job.tables.catalogue?.length ?? 0);
  const asked = rows.filter(({ required }) => required !== null && required !== "");
  const runs = counted(rows.map(({ ductItem }) => text(ductItem)));
  const unfit = unfitDucts(rows, settings);
  const isNone = (row: Row) => text(row.required) === "none";
  return {
    edition: settings.edition,
    rates: ratesOf(asked.filter((row) => !isNone(row))),
    noneRequired: ratesOf(asked.filter((row) => isNone(row) && !(num(row.count) > 0))),
    dwellings: totalsIn(columns, "dwellings", job.tables.dwellings?.length ?? 0),
    fans: items.filter(({ rated, quantity }) => rated > 0 && quantity > 0),
    ducts: items
      .filter(({ rated, quantity }) => Number.isNaN(rated) && quantity > 0)
      .map((item) => ({
        ...item,
        runs: runs.get(item.item) ?? 0,
        unfit: unfit.reduce((sum, each) => sum + (each.item === item.item ? each.runs : 0), 0),
      })),
    unfit,
    openings: [
      ...counted(
        rows
          .filter(({ openings }) => text(openings) !== "")
          .map(({ box, openings }) => `${text(box)}\u0000${text(openings)}`),
      ),
    ].map(([key, fans]) => {
      const [box = "", openings = ""] = key.split("\u0000");
      return { box, openings, fans };
    }),
    unmet: [
      ...counted(rows.flatMap(({ buy }) => (typeof buy === "string" && buy ? [buy] : []))),
    ].map(([said, fans]) => ({ said, fans })),
    totals: totalled(columns),
  };
}

/** What stands in a column's cells, and what follows where nothing usable does. */
function standing(
  table: Table | undefined,
  key: string,
  defined: Values,
  withFormulas: boolean,
): Values {
  if (!table?.has(key)) return defined;
  const numbers = table.numbers(key);
  return table.raws(key).map((raw, i) => {
    const stands = !isBlankCell(raw) && !isCellError(raw);
    if (!stands || !(withFormulas || !table.hasFormula(key, i))) return defined[i] ?? null;
    return typeof raw === "number" ? (numbers[i] as number) : raw;
  });
}

function rowsOf(columns: Columns, kind: SheetKind, length: number, keys: readonly string[]): Row[] {
  const values = keys.map((key) => [key, columns.of(kind, key)] as const);
  return Array.from({ length }, (_, i) =>
    Object.fromEntries(values.map(([key, column]) => [key, column[i] ?? null])),
  );
}

function itemsOf(columns: Columns, length: number): Item[] {
  return rowsOf(columns, "catalogue", length, ["model", "rated", "quantity", "cost", "all"]).map(
    ({ model, rated, quantity, cost, all }) => ({
      item: text(model),
      rated: num(rated),
      quantity: num(quantity),
      cost: num(cost),
      all: num(all),
    }),
  );
}

function ratesOf(rows: readonly Row[]): PlannedRate[] {
  const groups = new Map<string, PlannedRate>();
  for (const row of rows) {
    const whole = text(row.whole).toLowerCase() === "yes";
    const [room, duty, rate] = [text(row.roomKind), text(row.duty), num(row.required)];
    const key = `${room} ${duty} ${whole}`;
    const { least, most, fans } = groups.get(key) ?? { least: rate, most: rate, fans: 0 };
    groups.set(key, {
      ...{ room, duty, whole, fans: fans + 1 },
      ...{ least: Math.min(least, rate), most: Math.max(most, rate) },
    });
  }
  return [...groups.values()];
}

const sums = ["planned", "unpriced", "materials", "hours", "labour", "expense", "price"] as const;

function toTotal(row: Row, by: string, name: Cell | undefined, dwellings: number): Total {
  const numbers = Object.fromEntries(sums.map((key) => [key, num(row[key])]));
  return {
    ...{ by, name: text(name), required: num(row.required), dwellings },
    ...(numbers as Record<(typeof sums)[number], number>),
  };
}

function totalsIn(columns: Columns, kind: SheetKind, length: number): Total[] {
  return rowsOf(columns, kind, length, ["dwelling", "required", ...sums]).map((row) =>
    toTotal(row, "dwelling", row.dwelling, 1),
  );
}

/** By plan, by phase and in all, as the rows of a Totals sheet would have it. */
function totalled(columns: Columns): Total[] {
  const names = (key: string) => columns.of("dwellings", key).map(text);
  const [plans, phases] = [names("plan"), names("phase")];
  const rows = totalsRows(plans.map((plan, i) => ({ plan, phase: phases[i] ?? "" })));
  const typed: Readonly<Record<string, Values>> = {
    by: rows.map(({ by }) => by),
    name: rows.map(({ name }) => name),
  };
  const known = new Map<string, Values>(Object.entries(typed));
  const fields = layoutOf("totals").fields;
  const source: Source = {
    ...columns.source("dwellings"),
    length: rows.length,
    field: (key) => {
      const { is } = fields.find((field) => field.key === key) ?? {};
      const found = known.get(key) ?? (is ? evaluate(is, source) : []);
      known.set(key, found);
      return found;
    },
  };
  return rows.map(({ by, name }, i) => {
    const of = (key: string) => [key, source.field(key)[i] ?? null] as const;
    return toTotal(Object.fromEntries(sums.map(of)), by, name, num(of("dwellings")[1]));
  });
}
