import { type CellValue, counted } from "../../cells";
import type { System } from "../../editions";
import type { LotList, Block as ReadBlock, Role, WorkbookReading } from "../../reading";
import { usualConstant } from "../../rules";
import { conversionFactor, findUnit } from "../../units";
import { fansLayout, layouts, type SheetKind, type SheetLayout, unitOf } from "../columns";
import { type JobFit, plainName, readHeading, type SheetFit } from "../fit";
import type { Grid, JobFile } from "../grid";
import { type Block, blockOf, type Line } from "./block";
import { fieldOf, roomOf } from "./roles";
import type { Settings } from "./settings";
import { Table } from "./table";

/** A firm may state the size of an opening beside its area, which a new job keeps on the Boxes sheet. */
const firmLayout: SheetLayout = {
  ...fansLayout,
  fields: [
    ...fansLayout.fields,
    { key: "openingSize", title: "Opening size", words: [], holds: "number", measure: "length" },
  ],
};

/** How another row stands for a fan: a later one, or the mean of several. */
export type Replaced = "read again" | "part of a mean";

/** A firm's own sheets as they were read: whose blocks its table of fans is made of. */
export class FirmSheets {
  /** Of each block its fans, each mean after its tests; of a retest only what was tested again. */
  private readonly rows: readonly (readonly number[])[];
  private readonly starts: readonly number[];
  private superseded: ReadonlyMap<number, Replaced> | undefined;
  private owns: readonly ReadonlyMap<number, number>[] | undefined;

  constructor(readonly reading: WorkbookReading) {
    this.rows = reading.blocks.map((block) => {
      const { fans, read, means, retestOf } = block;
      const all = [...fans.keys()].filter((own) => retestOf === undefined || read[own] === 1);
      if (means.length === 0) return all;
      all.push(...means.map((_, at) => fans.length + at));
      return all.sort((a, b) => block.along(a) - block.along(b));
    });
    let length = 0;
    this.starts = this.rows.map((rows) => {
      length += rows.length;
      return length - rows.length;
    });
  }

  /** The same without some sheets. */
  without(names: readonly string[]): FirmSheets {
    const { blocks } = this.reading;
    const left = blocks.filter(({ sheet }) => !names.includes(sheet));
    const again = left.map((block) => {
      const { retestOf } = block;
      const first = retestOf === undefined ? undefined : blocks[retestOf];
      const retest = { retestOf: { value: first && left.indexOf(first) } };
      return first ? (Object.create(block, retest) as ReadBlock) : block;
    });
    return new FirmSheets({ ...this.reading, blocks: again });
  }

  /** The block that a row of the fan table comes from, and its number there. */
  at(i: number): { readonly block: ReadBlock; readonly own: number } {
    const at = blockOf(this.starts, i);
    return {
      block: this.reading.blocks[at] as ReadBlock,
      own: this.rows[at]?.[i - (this.starts[at] as number)] as number,
    };
  }

  /** The row of the fan table that holds a fan of a block; −1 for none. */
  rowOf(at: number, own: number): number {
    const rows = this.rows[at] ?? [];
    // All fans of a block without means, and that is no retest, stand in it by their numbers.
    const found = rows[own] === own ? own : rows.indexOf(own);
    return found < 0 ? -1 : (this.starts[at] as number) + found;
  }

  /** The row of the first test of a fan that stands in a block of retests; −1 for none. */
  firstTestOf(i: number): number {
    const { block, own } = this.at(i);
    if (block.retestOf === undefined) return -1;
    return this.rowOf(block.retestOf, this.ownAt(block.retestOf, block.along(own)) ?? -1);
  }

  /** How another row stands for this one; undefined where none does. */
  replacedAs(i: number): Replaced | undefined {
    this.superseded ??= this.findSuperseded();
    return this.superseded.get(i);
  }

  private findSuperseded() {
    const found = new Map<number, Replaced>();
    for (const [at, { means }] of this.reading.blocks.entries())
      for (const own of means.flatMap(({ of }) => of))
        found.set(this.rowOf(at, own), "part of a mean");
    for (const each of this.rows.flat().keys()) found.set(this.firstTestOf(each), "read again");
    return found;
  }

  /** What a row is where it is no first test of its fan. */
  kindOfTest(i: number): "mean" | "retest" | undefined {
    if (this.isMean(i)) return "mean";
    return this.at(i).block.retestOf === undefined ? undefined : "retest";
  }

  /** Whether a row is the mean of the tests above it. */
  private isMean(i: number): boolean {
    const { block, own } = this.at(i);
    return own >= block.fans.length;
  }

  /** Feet and inches, or metres, as the units of the flows have it. */
  get system(): System {
    const units = this.reading.blocks.flatMap(({ habits }) => [
      habits.units.flow,
      habits.units.required,
      habits.units.area,
    ]);
    const named = units.find((unit) => unit !== undefined);
    return named === undefined || ["cfm", "in²", "ft²"].includes(named) ? "ip" : "si";
  }

  /** The unit in which all its sheets keep flows; undefined where they have none, or several. */
  get flowUnit(): string | undefined {
    const [unit, ...others] = new Set(this.reading.blocks.map(({ habits }) => habits.units.flow));
    return others.length === 0 ? unit : undefined;
  }

  /** The constant of a block in the job's units; NaN where none is known. */
  constant(block: ReadBlock): number {
    const { constant, units } = block.habits;
    if (!constant) return Number.NaN;
    const into = (role: "flow" | "area" | "pressure", measure: "flow" | "opening" | "pressure") => {
      const unit = unitOfField(role, units[role]);
      return unit ? conversionFactor(unit, unitOf(measure, this.system)) : 1;
    };
    return (
      (constant.value * into("flow", "flow")) /
      (into("area", "opening") * Math.sqrt(into("pressure", "pressure")))
    );
  }

  /** The settings of a job with what the firm's sheets state or keep to. */
  settings(settings: Settings): Settings {
    const { system } = this;
    const [first] = this.reading.blocks;
    const own = this.reading.blocks.find(({ habits }) => habits.window)?.habits;
    const factor = conversionFactor(own?.units.pressure ?? "Pa", "Pa");
    const [low, high] = (own?.window?.value ?? []).map((value) => value * factor);
    const constant = first ? this.constant(first) : Number.NaN;
    return {
      ...settings,
      system,
      low: low ?? settings.low,
      high: high ?? settings.high,
      constant: constant > 0 ? constant : usualConstant[system],
    };
  }

  /** What a row's verdict says by the firm's own words; undefined where it has none, or neither. */
  says(i: number): "pass" | "fail" | undefined {
    const { block, own } = this.at(i);
    const field = block.field(own, "verdict");
    const word = String(field?.value ?? "")
      .trim()
      .toLowerCase();
    if (word === "") return undefined;
    const among = (words: readonly string[]) =>
      words.some((each) => each.trim().toLowerCase() === word);
    return among(block.habits.pass) ? "pass" : among(block.habits.fail) ? "fail" : undefined;
  }

  /** Whether a row is a further test of the fan above it, whose name stands there alone. */
  isFurtherTest(i: number): boolean {
    const { block, own } = this.at(i);
    const name = (["fan", "room"] as const).find((role) => block.roles.has(role));
    const dwelling = (at: number) => block.field(at, "dwelling")?.value;
    return (
      name !== undefined &&
      own > 0 &&
      !this.isMean(i) &&
      block.field(own, name)?.from === "above" &&
      dwelling(own) === dwelling(own - 1)
    );
  }

  /** Whether a cell is none of a fan that was left without a reading. */
  isRead(sheet: string, row: number, col: number): boolean {
    return !this.reading.blocks.some((block, at) => {
      const [along, across] = block.turned ? [col, row] : [row, col];
      if (block.sheet !== sheet || ![...block.roles.values()].some(({ line }) => line === across))
        return false;
      const own = this.ownAt(at, along);
      if (own !== undefined) return block.read[own] === 0;
      return this.reading.blocks.some(
        (other, each) => other.sheet === sheet && this.ownAt(each, along) !== undefined,
      );
    });
  }

  /** The number in its block of the fan in a row (a column, where turned); undefined for none. */
  private ownAt(at: number, along: number): number | undefined {
    this.owns ??= this.reading.blocks.map(
      ({ fans }) => new Map(Array.from(fans, (row, own) => [row, own] as const).reverse()),
    );
    return this.owns[at]?.get(along);
  }

  /** Whether the word of a row for its room or duty needs no question. */
  isKnown(i: number, role: "room" | "duty"): boolean {
    const { block, own } = this.at(i);
    const word = String(block.field(own, role)?.value ?? "").trim();
    return (
      word !== "" && !block.habits.unknown.some((each) => each.role === role && each.word === word)
    );
  }

  /** Whether a row is measured with a box: a sheet of flows alone has no pressure to look at. */
  hasPressure(i: number): boolean {
    return this.at(i).block.roles.has("pressure") && !this.isMean(i);
  }

  /** Whether any sheet has readings of a box. */
  get readsPressure(): boolean {
    return this.reading.blocks.some(({ roles }) => roles.has("pressure"));
  }

  /** The table of fans: one block for each that was read. */
  table(): Table {
    const { blocks } = this.reading;
    const shared = counted(blocks.map(({ sheet }) => sheet));
    return new Table(
      blocks.map((block, at) =>
        tableBlock(block, this.rows[at] ?? [], shared.get(block.sheet) === 1),
      ),
      firmLayout,
      this.system,
    );
  }
}

function tableBlock(block: ReadBlock, own: readonly number[], alone: boolean): Block {
  const along = own.map((each) => block.along(each));
  const lines = new Map<string, Line>();
  for (const [role, key] of Object.entries(fieldOf) as [Role, string][]) {
    const line = lineOf(block, role, own);
    if (line) lines.set(key, line);
  }
  const room = lines.get("room");
  if (room) lines.set("roomKind", { ...room, values: roomKinds(block, own) });
  const duty = lines.get("duty");
  if (duty) lines.set("duty", { ...duty, values: duties(block, own) });
  const standing = ["tag", "room", "pressure", "flow", "dwelling"].map((key) => lines.get(key));
  const home = standing.find((line) => line !== undefined && isPlaced(line));
  const grid = block.grid as Grid;
  return {
    grid,
    length: along.length,
    lines,
    home: home ?? { rows: along, cols: 0 },
    isRowwise: alone && !block.turned && block.layout !== "cards",
  };
}

/** The cells of a role; undefined where neither cells nor anything around them tells it. */
function lineOf(block: ReadBlock, role: Role, rows: readonly number[]): Line | undefined {
  const taken = block.roles.get(role);
  const unit = unitOfField(fieldOf[role] ?? "", taken?.unit ?? block.habits.units[role]);
  const heading = taken?.heading ?? "";
  const own = { heading, unit };
  const values =
    role === "pressure" ? pressures(block, rows) : rows.map((i) => told(block, role, i));
  if (!taken)
    return values.some((value) => value !== null)
      ? { ...own, rows: -1, cols: -1, values }
      : undefined;
  const places = rows.map((i) => block.place(i, role));
  const down = places.map((place) => place?.row ?? -1);
  const over = places.map((place) => place?.col ?? -1);
  return { ...own, rows: one(down) ?? down, cols: one(over) ?? over, values };
}

/** A unit as a field can have it; none where it measures something else. */
function unitOfField(key: string, name: string | undefined): string | undefined {
  const measure = firmLayout.fields.find((field) => field.key === key)?.measure;
  const [unit, own] = [findUnit(name ?? ""), measure && findUnit(unitOf(measure, "si"))];
  return unit && own && unit.dimension === own.dimension ? unit.name : undefined;
}

function told(block: ReadBlock, role: Role, i: number): CellValue {
  const field = block.field(i, role);
  if (!field) return null;
  const { value } = field;
  return typeof value === "string" && block.habits.decimalComma && isNumberRole(role)
    ? (block.number(i, role) ?? value)
    : value;
}

const isNumberRole = (role: Role) =>
  ["area", "diameter", "pressure", "flow", "required", "rated"].includes(role);

/** Pressures as room minus box, so that an exhaust fan's is positive, by the sheet's own habit. */
function pressures(block: ReadBlock, rows: readonly number[]): CellValue[] {
  const { sign } = block.habits;
  return rows.map((i) => {
    const value = told(block, "pressure", i);
    if (typeof value !== "number") return value;
    return sign === undefined ? Math.abs(value) : sign.value === "box" ? -value : value;
  });
}

/** The rooms as we name them; the firm's own word where it is not known. */
function roomKinds(block: ReadBlock, rows: readonly number[]): CellValue[] {
  return rows.map((i) => {
    const value = told(block, "room", i);
    const word = String(value ?? "").trim();
    const kind = block.habits.rooms.get(word);
    return (kind && roomOf[kind]) ?? value;
  });
}

/** On demand or continuous; the firm's own word where it is not known. */
function duties(block: ReadBlock, rows: readonly number[]): CellValue[] {
  return rows.map((i) => {
    const value = told(block, "duty", i);
    return block.habits.duties.get(String(value ?? "").trim()) ?? value;
  });
}

function one(numbers: readonly number[]): number | undefined {
  const [first] = numbers;
  return numbers.every((number) => number === first) ? first : undefined;
}

function isPlaced({ rows, cols }: Line): boolean {
  return rows !== -1 && cols !== -1;
}

/** Of a sheet of ours most columns stand under our own titles. */
const ownShare = 0.6;

/** Whether a sheet names openings of boxes with a size of each. */
function isOpenings({ kind, columns }: SheetFit): boolean {
  const has = (key: string) => columns.has(key);
  return kind === "boxes" && has("box") && has("opening") && (has("size1") || has("area"));
}

/** Whether a sheet has the form of a new job, and so is read by its titles. */
export function isOwnForm(fit: SheetFit): boolean {
  const layout = layouts.find(({ kind }) => kind === fit.kind);
  const titles = new Set(layout?.fields.map(({ title }) => plainName(title)));
  const own = [...fit.columns.values()].filter(({ heading }) =>
    titles.has(readHeading(heading).name),
  );
  // Openings under a heading that is not ours: the other headings are the trade's as well.
  const has = (key: string) => fit.columns.has(key);
  const isElsewhere =
    fit.kind === "fans" &&
    fit.unused.length > 0 &&
    ["pressure", "flow"].every(has) &&
    !["area", "openings"].some(has);
  return !isElsewhere && own.length >= ownShare * (fit.columns.size + fit.unused.length);
}

/**
 * The sheets in which a firm's fans or lots may stand: all but those of our own form. A file of
 * nothing but dwellings or planned fans lists lots, whose headings are the trade's as well as ours.
 */
export function withoutOwnSheets(file: JobFile, fit: JobFit): JobFile {
  const fits = Object.values(fit.sheets).flat().filter(isOwnForm);
  const own = new Set(fits.map(({ sheet }) => sheet));
  const lists = new Set<SheetKind>(["dwellings", "schedule"]);
  if (own.size === file.sheets.length && fits.every(({ kind }) => lists.has(kind))) return file;
  return { ...file, sheets: file.sheets.filter(({ name }) => !own.has(name)) };
}

/**
 * The sheets of a job besides a firm's own, which a reader found: of sheets of fans nothing, of
 * others those of our form. Where no fans are, a list of openings may be the beginning of a job.
 */
export function withoutFans(
  fit: JobFit,
  firm: FirmSheets | undefined,
  lots: readonly LotList[] = [],
): JobFit {
  const listed = new Set(lots.map(({ sheet }) => sheet));
  const taken = new Set(firm?.reading.blocks.map(({ sheet }) => sheet));
  const isChosen = ({ sheet }: SheetFit) =>
    fit.answers.some((choice) => choice.field !== "" && choice.sheet === sheet);
  const isKept = (each: SheetFit) =>
    !listed.has(each.sheet) &&
    (firm
      ? each.kind !== "fans" && !taken.has(each.sheet) && isOwnForm(each)
      : isChosen(each) || isOwnForm(each) || isOpenings(each));
  const sheets: Partial<Record<SheetKind, readonly SheetFit[]>> = {};
  for (const [kind, fits] of Object.entries(fit.sheets) as [SheetKind, readonly SheetFit[]][]) {
    const kept = fits.filter(isKept);
    if (kept.length > 0) sheets[kind] = kept;
  }
  return { ...fit, sheets };
}
