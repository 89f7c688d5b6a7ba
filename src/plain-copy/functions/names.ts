import { EditionTables } from "../aids/edition-tables";
import type { NameKindId } from "../aids/names";
import type { Table } from "../aids/table-sheet";
import type { TableMaker } from "../aids/tables/shared";
import { sumOver, wrong } from "../native-text";
import type { Guards } from "./guards";
import type { Call } from "./writer";

/** An argument as any sheet may write it; a number where it is left out. */
export function far(call: Call, name: string, otherwise = '""'): string {
  return call.at(name)?.far ?? otherwise;
}

/** Where the number of the name in an argument stands; 0 for an unknown name. */
export function nameNumber(call: Call, kind: NameKindId, argument: string): string {
  const operand = call.at(argument);
  if (operand === undefined) return "0";
  if (operand.literal !== undefined)
    return String(EditionTables.numberOf(kind, String(operand.literal)));
  return call.step(`${argument}: its number`, call.aids.tables.numberOf(kind, operand.far));
}

/** The system of units as the tables name it, as native text good on any sheet. */
export function systemText(call: Call): string {
  const operand = call.at("units");
  if (operand === undefined) return '"ip"';
  if (operand.literal !== undefined)
    return String(operand.literal).trim().toLowerCase() === "si" ? '"si"' : '"ip"';
  return `IF(TRIM(${operand.far})="si","si","ip")`;
}

/** One of two texts by the units, good on any sheet. */
export function bySystemFar(call: Call, ip: string, si: string): string {
  const system = systemText(call);
  if (system === '"ip"') return ip;
  return system === '"si"' ? si : `IF(${system}="si",${si},${ip})`;
}

/** A row of a table that a step has found. */
export interface Found {
  /** 0 where the table has no such row. */
  readonly row: string;
  readonly of: (heading: string) => string;
  /** `value` where the row is there, an error where it is not. */
  readonly orNone: (value: string) => string;
}

/** Finds the row of a table where each of these columns has its value. */
export function rowWhere(
  call: Call,
  make: TableMaker,
  wanted: Readonly<Record<string, string>>,
): Found {
  const table = call.aids.tables.get(make);
  const conditions = Object.entries(wanted).map(
    ([heading, value]) => `${table.column(heading)}=${value}`,
  );
  return foundBy(call, table, sumOver(table.column("No."), conditions));
}

export function foundBy(call: Call, table: Table, formula: string): Found {
  const row = call.step("row of a table", formula);
  return {
    row,
    of: (heading) => `INDEX(${table.column(heading)},MAX(1,${row}))`,
    orNone: (value) => `IF(${row}=0,${wrong("no such rule in the edition tables")},${value})`,
  };
}

/**
 * What a function gives that goes by an edition: a blank while `kind` is not filled in, `#N/A`
 * where the edition is missing or one of the `others` holds an error.
 */
export function byEdition(
  call: Call,
  guards: Guards,
  { edition = "edition", kind }: { readonly edition?: string; readonly kind?: string },
  others: readonly string[],
  value: string,
): string {
  const named = guards.text(edition);
  const filled = kind === undefined ? undefined : guards.text(kind);
  const late = others.flatMap((name) => {
    const operand = call.at(name);
    return operand && operand.literal === undefined ? [`ISERROR(${operand.text})`] : [];
  });
  const sound = late.length > 0 ? `IF(OR(${late.join(",")}),NA(),${value})` : value;
  const whole = `IF(${named}="",NA(),${sound})`;
  return guards.result(filled === undefined ? whole : `IF(${filled}="","",${whole})`);
}

/** A yes or no as native text: 1, 0, −1 for a blank, an error for anything else. */
export function yesNo(call: Call, name: string): string {
  const operand = call.at(name);
  if (operand === undefined) return "-1";
  const x = `TRIM(${operand.far})`;
  const any = (words: readonly string[]) =>
    `OR(${words.map((word) => `${x}="${word}"`).join(",")})`;
  const otherwise = wrong(`${name}: say yes or no`);
  const word = `IF(${any(["yes", "y", "true"])},1,IF(${any(["no", "n", "false"])},0,IF(${x}="",-1,${otherwise})))`;
  // TRIM of a truth value is an error in some programs.
  const truth = `IF(${operand.far},1,0)`;
  return call.step(`${name}: 1 yes, 0 no`, `IF(ISLOGICAL(${operand.far}),${truth},${word})`);
}
