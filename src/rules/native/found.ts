import type { NameTable } from "../contract/argument";
import { numberOfSpelling } from "./names";
import type { NativeCall } from "./native-call";
import type { Table, TableMaker } from "./table";
import { sumOver, wrong } from "./text";

/** A row of a table that a step has found. */
export interface Found {
  /** 0 where the table has no such row. */
  readonly row: string;
  readonly of: (heading: string) => string;
  /** `value` where the row is there, an error where it is not. */
  readonly orNone: (value: string) => string;
}

/** What a call looks up in the tables of the editions. */
export class EditionNumbers {
  constructor(private readonly call: NativeCall) {}

  /** The system of units as the tables name it, as native text good on any sheet. */
  system(): string {
    const operand = this.call.at("units");
    if (operand === undefined) return '"ip"';
    if (operand.literal !== undefined)
      return String(operand.literal).trim().toLowerCase() === "si" ? '"si"' : '"ip"';
    return `IF(TRIM(${operand.far})="si","si","ip")`;
  }

  number(kind: NameTable, argument: string): string {
    const operand = this.call.at(argument);
    if (operand === undefined) return "0";
    if (operand.literal !== undefined)
      return String(numberOfSpelling(kind, String(operand.literal)));
    return this.call.step(`${argument}: its number`, this.call.numberOf(kind, operand.far));
  }

  rowWhere(make: TableMaker, wanted: Readonly<Record<string, string>>): Found {
    const table = this.call.table(make);
    const conditions = Object.entries(wanted).map(
      ([heading, value]) => `${table.column(heading)}=${value}`,
    );
    return this.found(table, sumOver(table.column("No."), conditions));
  }

  rowBy(make: TableMaker, formula: string): Found {
    return this.found(this.call.table(make), formula);
  }

  private found(table: Table, formula: string): Found {
    const row = this.call.step("row of a table", formula);
    return {
      row,
      of: (heading) => `INDEX(${table.column(heading)},MAX(1,${row}))`,
      orNone: (value) => `IF(${row}=0,${wrong("no such rule in the edition tables")},${value})`,
    };
  }

  /** A yes or no as native text: 1, 0, −1 for a blank, an error for anything else. */
  yesNo(name: string): string {
    const operand = this.call.at(name);
    if (operand === undefined) return "-1";
    const x = `TRIM(${operand.far})`;
    const any = (words: readonly string[]) =>
      `OR(${words.map((word) => `${x}="${word}"`).join(",")})`;
    const otherwise = wrong(`${name}: say yes or no`);
    const word = `IF(${any(["yes", "y", "true"])},1,IF(${any(["no", "n", "false"])},0,IF(${any(["", "0"])},-1,${otherwise})))`;
    // TRIM of a truth value is an error in some programs.
    const truth = `IF(${operand.far},1,0)`;
    return this.call.step(`${name}: 1 yes, 0 no`, `IF(ISLOGICAL(${operand.far}),${truth},${word})`);
  }
}
