import type { Column } from "../../algebra";
import { InputError, once } from "../../cells";
import type { System } from "../../editions";
import type {
  Argument,
  Arguments,
  NameArgument,
  NumberArgument,
  NumbersArgument,
  PairsArgument,
} from "./argument";
import { inSystem } from "./argument";
import { CellFault, notANumber, plainCell, strange, toMatrix } from "./cell";
import { isMet, type Need } from "./need";

type Matrix = readonly (readonly unknown[])[];

/** The most cells a call may cover: one whole column of a sheet. */
const mostCells = 1_048_576;

/** What stands in the place of a row's result, and how much it outweighs another. */
export interface Fault {
  readonly weight: 1 | 2 | 3;
  /** "" for a row that is not filled in yet. */
  readonly code: string;
  readonly message: string;
  readonly about: string;
}

const blankNeeded = 1;
const nothingYet = 2;
const unusable = 3;

type Names = string | readonly string[];

/**
 * The arguments of one call, read by their contract and brought to one shape.
 *
 * Each argument that has a value a row is one cell, or a range; all ranges have the same shape, or
 * one row or column that repeats. A bad cell spoils only its own row. A blank where a reading goes
 * gives a blank: it is never taken as zero. Throws an InputError where the whole call fails.
 */
export class CallArguments {
  readonly system: System;
  readonly height: number;
  readonly width: number;
  readonly length: number;
  /** What served for arguments left out. */
  readonly stoodIn = new Map<string, number>();
  private readonly faults = new Map<number, Fault>();
  private readonly matrices = new Map<string, Matrix | undefined>();
  private readonly columns = new Map<string, Column>();
  private readonly names = new Map<string, Names>();
  private readonly lists = new Map<string, readonly unknown[]>();
  private readonly repeats = new Map<string, readonly (readonly number[])[]>();

  constructor(
    private readonly takes: Arguments,
    args: readonly unknown[],
    together: readonly (readonly string[])[] = [],
  ) {
    Object.keys(takes).forEach((name, i) => {
      const argument = args[i];
      const isGiven = argument !== null && argument !== undefined;
      this.matrices.set(name, isGiven ? toMatrix(argument) : undefined);
    });
    this.system = this.readUnits();
    [this.height, this.width] = this.shape();
    this.length = this.height * this.width;
    for (const [name, argument] of Object.entries(takes)) this.read(name, argument);
    this.readPairs();
    this.requireOneLength();
    for (const group of together) this.readTogether(group);
  }

  has(name: string): boolean {
    return this.matrices.get(name) !== undefined;
  }

  /** Whether every row has a result. */
  get isSound(): boolean {
    return this.faults.size === 0;
  }

  /** Why a row has no result; undefined for a sound one. */
  fault(i: number): Fault | undefined {
    return this.faults.get(i);
  }

  /** A number argument over all rows; NaN where it is blank or spoiled. */
  column(name: string): Column {
    return this.columns.get(name) as Column;
  }

  /** A name argument of one row as it is written; "" where it is blank or left out. */
  text(name: string, i: number): string {
    return nameAt(this.names.get(name) as Names, i);
  }

  /** What the work of one sound row gets. Throws an InputError for a name that means nothing. */
  row(i: number): Readonly<Record<string, unknown>> {
    const row: Record<string, unknown> = {};
    for (const name in this.takes) row[name] = this.value(name, this.takes[name] as Argument, i);
    return row;
  }

  private value(name: string, argument: Argument, i: number): unknown {
    switch (argument.kind) {
      case "number": {
        const value = pick(this.columns.get(name) as Column, i);
        return Number.isNaN(value) ? undefined : value;
      }
      case "name": {
        const text = this.text(name, i);
        return text === "" ? undefined : argument.read(text, name);
      }
      case "units":
        return this.system;
      case "word": {
        const plain = plainCell(this.matrices.get(name)?.[0]?.[0]);
        return typeof plain === "string" ? plain.trim() : "";
      }
      case "repeats": {
        const all = this.repeats.get(name) ?? [];
        return (all.length === 1 ? all[0] : all[Math.floor(i / this.width)]) ?? [];
      }
      default:
        return this.lists.get(name) ?? [];
    }
  }

  private read(name: string, argument: Argument): void {
    const matrix = this.matrices.get(name);
    switch (argument.kind) {
      case "number":
        this.columns.set(name, this.readNumbers(name, argument, matrix));
        break;
      case "name":
        this.names.set(name, this.readNames(name, argument, matrix));
        break;
      case "repeats":
        this.repeats.set(name, this.readRepeats(name, argument.need, matrix ?? [[null]]));
        break;
      case "list":
        this.lists.set(name, matrix ? flat(matrix) : none);
        break;
      case "numbers":
        this.lists.set(name, this.readList(name, argument, matrix ? flat(matrix) : []));
        break;
    }
  }

  private readNumbers(name: string, argument: NumberArgument, matrix: Matrix | undefined): Column {
    const { otherwise } = argument;
    if (!matrix && otherwise !== undefined) {
      const value = inSystem(otherwise, this.system);
      this.stoodIn.set(name, value);
      return value;
    }
    if (!matrix && argument.blank === "left out") return Number.NaN;
    const need = argument.need && inSystem(argument.need, this.system);
    const from = matrix ?? [[null]];
    const isPlain = (cell: unknown): cell is number =>
      typeof cell === "number" &&
      Number.isFinite(cell) &&
      (need === undefined || isMet(need, cell)) &&
      !(cell === 0 && argument.zeroIsTold);
    const only = from.length === 1 && from[0]?.length === 1 ? from[0][0] : undefined;
    if (isPlain(only)) return only + 0;
    const out = new Float64Array(this.length);
    for (let r = 0, i = 0; r < this.height; r++) {
      const line = (from.length === 1 ? from[0] : from[r]) as readonly unknown[];
      for (let c = 0; c < this.width; c++, i++) {
        const cell = line.length === 1 ? line[0] : line[c];
        out[i] = isPlain(cell) ? cell : this.awkward(i, name, argument, need, cell);
      }
    }
    return this.length === 1 ? (out[0] as number) : out;
  }

  /** A cell that is no sound number: spoils its row, or gives NaN for one that counts as left out. */
  private awkward(
    i: number,
    name: string,
    argument: NumberArgument,
    need: Need | undefined,
    cell: unknown,
  ): number {
    const plain = plainCell(cell);
    if (plain === null) this.spoilBlank(i, name, argument.blank, `${name} is blank`);
    else if (plain instanceof CellFault) this.spoilBy(i, name, plain);
    else if (typeof plain === "number" && Number.isFinite(plain)) {
      if (plain === 0 && argument.zeroIsTold)
        this.spoil(i, blankNeeded, "#N/A", `${name} is 0 or blank: read it again`, name);
      else if (need === undefined || isMet(need, plain)) return plain;
      else if (plain === 0)
        this.spoilBlank(i, name, argument.blank, `${name} is 0 or blank: ${need.say}`);
      else this.spoil(i, unusable, "#VALUE!", `${name} ${plain}: ${need.say}`, name);
    } else {
      const meant =
        typeof plain === "string" ? argument.words?.[plain.trim().toLowerCase()] : undefined;
      if (meant !== undefined) return meant;
      this.spoil(i, unusable, "#VALUE!", notANumber(name, plain), name);
    }
    return Number.NaN;
  }

  private readNames(name: string, argument: NameArgument, matrix: Matrix | undefined): Names {
    if (!matrix && argument.optional) return "";
    const from = matrix ?? [[null]];
    const isOne = from.length === 1 && from[0]?.length === 1;
    const text = (i: number, cell: unknown): string => {
      const plain = plainCell(cell);
      if (plain instanceof CellFault) this.spoilBy(i, name, plain);
      else if (plain === strange)
        this.spoil(i, unusable, "#VALUE!", `${name} is not a text: type it`, name);
      else if (plain !== null && plain !== 0) return String(plain).trim();
      else {
        const ask = argument.ask === undefined ? "" : `: ${argument.ask}`;
        this.spoilBlank(i, name, argument.blank, `${name} is blank${ask}`);
      }
      return "";
    };
    const all: string[] = new Array(this.length);
    for (let r = 0, i = 0; r < this.height; r++) {
      const line = (from.length === 1 ? from[0] : from[r]) as readonly unknown[];
      for (let c = 0; c < this.width; c++, i++) {
        all[i] = text(i, line.length === 1 ? line[0] : line[c]);
        // One sound text serves for all rows.
        if (isOne && i === 0 && all[0] !== "" && !this.faults.has(0)) return all[0] as string;
      }
    }
    return all;
  }

  private readRepeats(name: string, need: Need | undefined, matrix: Matrix) {
    return matrix.map((line, r) => {
      const sound: number[] = [];
      let zeros = 0;
      for (const cell of line) {
        const plain = plainCell(cell);
        const fault = this.numberFault(name, plain, need);
        if (fault) this.spoilRow(r, matrix.length, fault);
        else if (typeof plain === "number") {
          if (plain === 0 && need && !isMet(need, 0)) zeros++;
          else sound.push(plain);
        }
      }
      if (sound.length === 0)
        this.spoilRow(
          r,
          matrix.length,
          zeros > 0
            ? fault(blankNeeded, "#N/A", `${name} are 0 or blank: read again`, name)
            : fault(nothingYet, "", `${name} is blank`, name),
        );
      return sound;
    });
  }

  private readList(name: string, argument: NumbersArgument, cells: readonly unknown[]): number[] {
    const sound: number[] = [];
    cells.forEach((cell, i) => {
      const plain = plainCell(cell);
      const bad = this.numberFault(`${name}, cell ${i + 1}:`, plain, argument.need);
      if (bad) this.spoilAll(bad);
      else if (typeof plain === "number" && isMet(argument.need, plain)) sound.push(plain);
    });
    if (sound.length === 0 && argument.isReading)
      this.spoilAll(fault(nothingYet, "", `${name} is blank`, name));
    return sound;
  }

  /** Ranges of pairs, without those in which a reading is blank. */
  private readPairs(): void {
    const ranges = Object.entries(this.takes).filter(
      (entry): entry is [string, PairsArgument] => entry[1].kind === "pairs",
    );
    if (ranges.length === 0) return;
    const cells = ranges.map(([name]) => flat(this.matrices.get(name) ?? []).map(plainCell));
    for (const [name] of ranges) this.lists.set(name, []);
    const isBlank = (cell: unknown) => cell === null || cell === 0;
    const count = Math.max(...cells.map((range) => range.length));
    for (let i = 0; i < count; i++) {
      if (ranges.some(([, { isReading }], n) => isReading && isBlank(cells[n]?.[i] ?? null)))
        continue;
      ranges.forEach(([name, { need }], n) => {
        const plain = cells[n]?.[i] ?? null;
        const at = `${name}, pair ${i + 1}`;
        const bad = isBlank(plain)
          ? fault(blankNeeded, "#N/A", `${at} is blank`, name)
          : this.numberFault(`${at}:`, plain, need);
        if (bad) this.spoilAll(bad);
        else (this.lists.get(name) as number[]).push(plain as number);
      });
    }
    const [[first] = [""]] = ranges;
    if (this.lists.get(first)?.length === 0 && !this.faults.has(0))
      this.spoilAll(fault(nothingYet, "", `${first} is blank`, first));
  }

  /** Why a cell that is not blank will not do as a number; 0 that is never meant counts as blank. */
  private numberFault(
    name: string,
    plain: ReturnType<typeof plainCell>,
    need: Need | undefined,
  ): Fault | undefined {
    if (plain === null) return undefined;
    const about = name.replace(/,.*$/, "");
    if (plain instanceof CellFault) return byCell(about, plain);
    if (typeof plain !== "number" || !Number.isFinite(plain))
      return fault(unusable, "#VALUE!", notANumber(name, plain), about);
    if (plain === 0 || need === undefined || isMet(need, plain)) return undefined;
    const sign = name.endsWith(":") ? name : `${name}`;
    return fault(unusable, "#VALUE!", `${sign} ${plain}: ${need.say}`, about);
  }

  private readUnits(): System {
    if (!("units" in this.takes)) return "ip";
    const plain = plainCell(this.matrices.get("units")?.[0]?.[0]);
    if (plain === null || plain === 0) return "ip";
    if (plain instanceof CellFault) throw plain;
    const text = String(plain).trim();
    const word = text.toLowerCase();
    if (word === "ip" || word === "si") return word;
    throw new InputError(
      `units "${text}": use "ip" (in², Pa, cfm, ft²) or "si" (cm², Pa, L/s, m²)`,
      "unusable",
      "units",
    );
  }

  private shape(): [number, number] {
    let height = 1;
    let width = 1;
    const shaped: [string, Matrix, number][] = [];
    for (const [name, { kind }] of Object.entries(this.takes)) {
      const matrix = this.matrices.get(name);
      if (!matrix || !(kind === "number" || kind === "name" || kind === "repeats")) continue;
      const across = kind === "repeats" ? 1 : (matrix[0]?.length ?? 0);
      height = Math.max(height, matrix.length);
      width = Math.max(width, across);
      shaped.push([name, matrix, across]);
    }
    if (height * width > mostCells)
      throw new InputError(
        `${height * width} cells in one call: give at most ${mostCells}, for instance the rows in use`,
      );
    const fits = (own: number, all: number) => own === all || own === 1;
    for (const [name, matrix, across] of shaped)
      if (!fits(matrix.length, height) || !fits(across, width))
        throw new InputError(
          `${name} is ${matrix.length} × ${across} cells where ${height} × ${width} are needed: give ranges of one size, or one cell`,
          "unusable",
          name,
        );
    return [height, width];
  }

  /** Lists, and ranges of pairs, that belong together. */
  private requireOneLength(): void {
    const sizes = Object.entries(this.takes).flatMap(([name, { kind }]) => {
      const matrix = this.matrices.get(name);
      if (!matrix || !(kind === "list" || kind === "pairs")) return [];
      return [[name, matrix.length * (matrix[0]?.length ?? 0)] as const];
    });
    if (new Set(sizes.map(([, size]) => size)).size > 1)
      throw new InputError(
        `${sizes.map(([name, size]) => `${size} ${name}`).join(", ")}: give ranges of one length`,
      );
  }

  /** A row in which all of these are blank is not filled in yet. */
  private readTogether(group: readonly string[]): void {
    if (group.every((name) => !this.has(name) && this.takes[name]?.optional)) return;
    const [first = ""] = group;
    const given = group.map((name) => this.names.get(name) ?? (this.columns.get(name) as Column));
    for (let i = 0; i < this.length; i++) {
      let at = 0;
      while (at < given.length && isBlankAt(given[at] as Names | Column, i)) at++;
      if (at === given.length && this.isOnlyBlank(i))
        this.spoil(i, nothingYet, "", `${first} is blank`, first);
    }
  }

  private isOnlyBlank(i: number): boolean {
    return this.faults.get(i)?.weight !== unusable;
  }

  private spoilBlank(i: number, name: string, blank: string, message: string): void {
    if (blank === "nothing yet") this.spoil(i, nothingYet, "", message, name);
    else if (blank === "needed") this.spoil(i, blankNeeded, "#N/A", message, name);
  }

  private spoilBy(i: number, name: string, cell: CellFault): void {
    this.keep(i, byCell(name, cell));
  }

  private spoil(i: number, weight: Fault["weight"], code: string, message: string, about: string) {
    this.keep(i, fault(weight, code, message, about));
  }

  private spoilRow(r: number, rows: number, bad: Fault): void {
    const from = rows === 1 ? 0 : r * this.width;
    const to = rows === 1 ? this.length : from + this.width;
    for (let i = from; i < to; i++) this.keep(i, bad);
  }

  private spoilAll(bad: Fault): void {
    for (let i = 0; i < this.length; i++) this.keep(i, bad);
  }

  private keep(i: number, bad: Fault): void {
    const known = this.faults.get(i);
    if (!known || known.weight < bad.weight) this.faults.set(i, bad);
  }
}

function isBlankAt(given: Names | Column, i: number): boolean {
  if (typeof given === "number") return Number.isNaN(given);
  if (given instanceof Float64Array) return Number.isNaN(given[i]);
  return nameAt(given, i) === "";
}

function fault(weight: Fault["weight"], code: string, message: string, about: string): Fault {
  return { weight, code, message, about };
}

function byCell(name: string, { code, message }: CellFault): Fault {
  return fault(unusable, code, message === "" ? `${name} holds ${code}` : message, name);
}

const none: readonly unknown[] = [];

/** Flattened ranges by the range itself: a host passes the same list to many calls. */
const flat = once((matrix: Matrix): readonly unknown[] => matrix.flat());

const nameAt = (names: Names, i: number): string =>
  typeof names === "string" ? names : (names[i] as string);

/** Row `i` of an argument read as numbers. */
function pick(column: Column, i: number): number {
  return typeof column === "number" ? column : (column[i] as number);
}
