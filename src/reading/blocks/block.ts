import type { CellValue, Spot } from "../../cells";
import { type Cells, Kind } from "../cells/cells";
import type { ReadGrid } from "../host";
import type { Label } from "../tables/labels";
import type {
  Block,
  Candidate,
  FieldValue,
  Habits,
  Layout,
  MeanRow,
  Role,
  RoleLine,
} from "../types";
import type { Listing } from "./listing";
import type { PoolBlock } from "./read-pool";
import { candidatesFor, roleLines } from "./role-lines";

/** What is told for a field without a line of its own. */
export type Told = (index: number, role: Role) => FieldValue | null;

/** Fields that are often written once for the rows below. */
const spreads: readonly Role[] = ["dwelling", "tester", "date", "fan", "room"];
/** What the row of a mean says itself, and what the tests that it is of say for it. */
const ofTheMean: readonly Role[] = ["flow", "required", "verdict"];
const ofItsTests: readonly Role[] = [...spreads, "duty", "rated", "note"];

export class SheetBlock implements Block {
  readonly sheet: string;
  readonly grid: ReadGrid;
  readonly turned: boolean;
  readonly headings: readonly number[];
  readonly fans: Int32Array;
  readonly read: Uint8Array;
  readonly readings: number;
  readonly roles: ReadonlyMap<Role, RoleLine>;
  readonly repeats: readonly RoleLine[];
  readonly skipped: readonly number[];
  habits!: Habits;
  retestOf: number | undefined;
  means: readonly MeanRow[] = [];
  told: Told = () => null;
  private readonly sparse = new Set<Role>();

  constructor(
    readonly from: PoolBlock,
    readonly listing: Listing,
    readonly layout: Layout,
    readonly labels: readonly Label[],
  ) {
    const { cells } = listing;
    this.sheet = cells.grid.name;
    this.grid = cells.grid;
    this.turned = cells.turned;
    this.headings = [...new Set(listing.sections.flatMap(({ band }) => band))].filter(
      (row) => row >= 0,
    );
    this.fans = listing.rows;
    this.read = listing.read;
    this.readings = listing.read.reduce((sum, read) => sum + read, 0);
    ({ roles: this.roles, repeats: this.repeats } = roleLines(from));
    this.skipped = listing.skipped;
    for (const role of spreads) {
      const line = from.given.get(role);
      const stats = line === undefined ? undefined : from.stats.get(line);
      if (stats && stats.filled < stats.looked * 0.75) this.sparse.add(role);
    }
  }

  get cells(): Cells {
    return this.listing.cells;
  }

  candidates(role: Role): readonly Candidate[] {
    return candidatesFor(this.from, role);
  }

  /** Row and column of a field in the cells as they run; undefined without a line. */
  at(index: number, role: Role): { row: number; col: number } | undefined {
    const line = this.from.given.get(role);
    const mean = this.meanAt(index);
    if (line === undefined || (mean && ![...ofTheMean, ...ofItsTests].includes(role)))
      return undefined;
    const shift = this.listing.shifts[mean?.of[0] ?? index]!;
    return { row: this.along(index), col: line + shift };
  }

  private meanAt(index: number): MeanRow | undefined {
    // A place before the first is no place of an array, and slow to ask for.
    return index < this.fans.length ? undefined : this.means[index - this.fans.length];
  }

  along(index: number): number {
    return this.meanAt(index)?.row ?? this.fans[index]!;
  }

  place(index: number, role: Role): Spot | null {
    const at = this.at(index, role);
    return at ? this.cells.place(at.row, at.col) : null;
  }

  field(index: number, role: Role): FieldValue | null {
    const mean = this.meanAt(index);
    if (mean && !ofTheMean.includes(role))
      return ofItsTests.includes(role) ? this.field(mean.of.at(-1)!, role) : null;
    const at = this.at(index, role);
    if (!at) return mean ? null : this.told(index, role);
    const { cells } = this;
    if (cells.isBlank(at.row, at.col) && (this.sparse.has(role) || this.isMerged(at.row, at.col)))
      for (let row = at.row - 1; row >= this.firstRow(at.row); row--)
        if (!cells.isBlank(row, at.col))
          return { value: this.value(row, at.col), place: cells.place(row, at.col), from: "above" };
    return { value: this.value(at.row, at.col), place: cells.place(at.row, at.col), from: "cell" };
  }

  number(index: number, role: Role): number | null {
    const at = this.at(index, role);
    if (at) {
      const number = this.cells.number(at.row, at.col);
      return Number.isNaN(number) ? null : number;
    }
    const told = this.field(index, role)?.value;
    return typeof told === "number" ? told : null;
  }

  private value(row: number, col: number): CellValue {
    const { cells } = this;
    const kind = cells.kind(row, col);
    if (kind === Kind.number) return cells.number(row, col);
    if (kind === Kind.blank) return null;
    if (kind === Kind.text || kind === Kind.textNumber) return cells.text(row, col);
    const place = cells.place(row, col);
    return cells.grid.value(place.row, place.col);
  }

  private isMerged(row: number, col: number): boolean {
    return this.cells.merges.some(
      (area) => area.top < row && row <= area.bottom && area.left <= col && col <= area.right,
    );
  }

  private firstRow(row: number): number {
    const section = this.listing.sections.find(({ from, to }) => from <= row && row < to);
    return section ? (section.band.at(-1) ?? -1) + 1 : 0;
  }
}
