import type { System } from "../../editions";
import { readYesNo } from "../rules";

/** An argument that keeps a call from being worked out. */
export class ArgumentError extends Error {
  constructor(
    /** "blank": nothing was given yet. "unusable": what was given will not do. */
    readonly reason: "blank" | "unusable",
    message: string,
    /** The error value that stood in the cell, where that was the reason. */
    readonly cell?: object,
  ) {
    super(message);
  }
}

interface NumberOptions {
  /** Serves where the argument is left out. */
  readonly otherwise?: number;
  /** Why a number will not do. */
  readonly refuse?: (value: number) => string | undefined;
}

/** Where in a range the row stands that is worked out, from 0. */
export interface At {
  readonly row: number;
  readonly col: number;
}

const first: At = { row: 0, col: 0 };

/** The arguments of one call, of which each range gives the cell of one row. */
export class Given {
  /** What served for arguments left out, by name. */
  readonly stoodIn = new Map<string, number | string>();

  constructor(
    private readonly takes: readonly string[],
    private readonly args: readonly unknown[],
    private readonly at: At = first,
  ) {}

  /** Whether the argument was given at all. A blank cell is given. */
  has(name: string): boolean {
    const argument = this.argument(name);
    return argument !== null && argument !== undefined;
  }

  /** The number in the row's cell. Throws an ArgumentError that says what is wrong. */
  number(name: string, { otherwise, refuse }: NumberOptions = {}): number {
    if (!this.has(name)) {
      if (otherwise === undefined) throw new ArgumentError("blank", `${name} is missing`);
      this.stoodIn.set(name, otherwise);
      return otherwise;
    }
    return usable(name, this.cell(name), refuse);
  }

  /** The number in the row's cell; undefined where the argument is left out or blank. */
  optionalNumber(name: string, options: NumberOptions = {}): number | undefined {
    if (!this.has(name) || isBlank(this.cell(name))) return undefined;
    return this.number(name, options);
  }

  /** The text in the row's cell. Throws where it is blank. */
  text(name: string): string {
    const text = this.optionalText(name);
    if (text === "") throw new ArgumentError("blank", `${name} is blank`);
    return text;
  }

  /** The text in the row's cell; "" where the argument is left out or blank. */
  optionalText(name: string): string {
    const cell = this.has(name) ? this.cell(name) : null;
    if (isError(cell)) throw erroneous(name, cell);
    return isBlank(cell) ? "" : String(cell).trim();
  }

  /** "yes" or "no" in the row's cell; undefined where the argument is left out or blank. */
  yesNo(name: string): boolean | undefined {
    try {
      return readYesNo(name, this.optionalText(name));
    } catch (error) {
      if (error instanceof ArgumentError) throw error;
      throw new ArgumentError("unusable", (error as Error).message);
    }
  }

  /** All cells of an argument that is a whole column or row. */
  list(name: string): unknown[] {
    return this.has(name) ? matrixOf(this.argument(name)).flat() : [];
  }

  /** The numbers among all cells of an argument; blanks are passed over. Throws where one is text. */
  numbers(name: string, refuse?: NumberOptions["refuse"]): number[] {
    return numbersAmong(name, this.list(name), refuse);
  }

  /** The same for an argument of a row of cells: of several rows the one that is worked out. */
  rowNumbers(name: string, refuse?: NumberOptions["refuse"]): number[] {
    const matrix = matrixOf(this.argument(name));
    const line = matrix[matrix.length === 1 ? 0 : this.at.row] ?? [];
    return numbersAmong(name, line, refuse);
  }

  /** The unit system of the call; undefined for a function that takes no `units`. */
  get system(): System | undefined {
    if (!this.takes.includes("units")) return undefined;
    const cell = this.list("units")[0];
    if (isError(cell)) throw erroneous("units", cell);
    const text = isBlank(cell) ? "ip" : String(cell).trim().toLowerCase();
    if (text === "ip" || text === "si") return text;
    throw new ArgumentError(
      "unusable",
      `units "${String(cell)}": use "ip" (in², Pa, cfm, ft²) or "si" (cm², Pa, L/s, m²)`,
    );
  }

  private argument(name: string): unknown {
    return this.args[this.takes.indexOf(name)];
  }

  private cell(name: string): unknown {
    const matrix = matrixOf(this.argument(name));
    const line = matrix[matrix.length === 1 ? 0 : this.at.row] ?? [];
    return line[line.length === 1 ? 0 : this.at.col];
  }
}

/** A number above zero, as most sizes must be. */
export const aboveZero = (value: number): string | undefined =>
  value > 0 ? undefined : "give a number above 0";

/** A number of zero or more. */
export const notNegative = (value: number): string | undefined =>
  value >= 0 ? undefined : "give a number of 0 or more";

/** A pressure that can be turned into a flow. */
export const roomMinusBox = (value: number): string | undefined =>
  value >= 0 ? undefined : "negative: read room minus box, or swap the hoses";

function numbersAmong(
  name: string,
  cells: readonly unknown[],
  refuse: NumberOptions["refuse"],
): number[] {
  const given = cells.filter((cell) => !isBlank(cell));
  if (given.length === 0) throw new ArgumentError("blank", `${name} is blank`);
  return given.map((cell) => usable(name, cell, refuse));
}

function usable(name: string, cell: unknown, refuse: NumberOptions["refuse"]): number {
  if (isBlank(cell)) throw new ArgumentError("blank", `${name} is blank`);
  if (isError(cell)) throw erroneous(name, cell);
  if (typeof cell === "string")
    throw new ArgumentError("unusable", `${name} "${cell}" is text: type it as a number`);
  if (typeof cell !== "number" || !Number.isFinite(cell))
    throw new ArgumentError("unusable", `${name} ${String(cell)} is not a number`);
  const reason = refuse?.(cell);
  if (reason) throw new ArgumentError("unusable", `${name} ${cell}: ${reason}`);
  return cell;
}

function erroneous(name: string, cell: object): ArgumentError {
  const { code, error } = cell as { code?: unknown; error?: unknown };
  return new ArgumentError(
    "unusable",
    `${name} holds ${String(code ?? error ?? "an error")}`,
    cell,
  );
}

function isBlank(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

function isError(cell: unknown): cell is object {
  return typeof cell === "object" && cell !== null;
}

function matrixOf(argument: unknown): unknown[][] {
  if (!Array.isArray(argument)) return [[argument]];
  return Array.isArray(argument[0]) ? (argument as unknown[][]) : [argument as unknown[]];
}
