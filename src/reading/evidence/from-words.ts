import type { Dimension, UnitEntry } from "../../units";
import type { RoleOrOther } from "../roles";
import { unitOf } from "../tables/rows";
import type { LineHeading, Pool } from "../tables/section";
import { type HeadingWords, readHeading } from "../text/heading";
import type { Role } from "../types";
import type { Ledger } from "./ledger";

/** A heading's say on its line: with the headings above it, and the unit. */
export interface LineWords {
  readonly told: ReadonlyMap<RoleOrOther, { readonly weight: number; readonly phrase: string }>;
  readonly unit: UnitEntry | undefined;
  /** The unit stands alone: "cfm" names what a tester would write under it. */
  readonly bare: boolean;
}

const parentShare = 0.4;

export function wordsOf(heading: LineHeading): LineWords {
  const own = readHeading(heading.text);
  const told = new Map(own.told);
  const raise = (from: HeadingWords, share: number, only?: (role: RoleOrOther) => boolean) => {
    for (const [role, { weight, phrase }] of from.told) {
      if (only && !only(role)) continue;
      const known = told.get(role)?.weight ?? 0;
      if (weight * share > known) told.set(role, { weight: weight * share, phrase });
    }
  };
  let unit = own.unit ?? (heading.unit === "" ? undefined : unitOf(heading.unit));
  for (const parent of heading.parents) {
    const above = readHeading(parent);
    raise(above, own.name === "" ? 0.8 : parentShare);
    raise(
      readHeading(`${parent} ${heading.text}`),
      0.85,
      (role) => role !== "other" || own.told.has("other") || own.name === "",
    );
    unit ??= above.unit;
  }
  return { told, unit, bare: own.name === "" && own.unit !== undefined };
}

/** What a unit over a line tells of it. */
const byDimension: Readonly<Record<Dimension, readonly (readonly [RoleOrOther, number])[]>> = {
  pressure: [["pressure", 3]],
  flow: [
    ["flow", 1.8],
    ["required", 1.2],
    ["rated", 1],
  ],
  area: [["area", 2.5]],
  length: [["diameter", 1.6]],
  volume: [["other", 3]],
};
const dimensions: Readonly<Partial<Record<Role, Dimension>>> = {
  pressure: "pressure",
  flow: "flow",
  required: "flow",
  rated: "flow",
  area: "area",
  diameter: "length",
};
const floorUnits = new Set(["ft²", "m²", "ft", "m"]);

export function addWords(pool: Pool, ledger: Ledger): ReadonlyMap<number, LineWords> {
  const words = new Map<number, LineWords>();
  for (const [line, heading] of pool.headings) {
    const made = wordsOf(heading);
    words.set(line, made);
    const shown = [...heading.parents, heading.text].join(" / ");
    for (const [role, { weight, phrase }] of made.told)
      ledger.add(line, role, "words", weight, `the heading "${shown}" says "${phrase}"`);
    if (made.unit) addUnit(line, made.unit, made.bare, ledger);
  }
  return words;
}

function addUnit(line: number, unit: UnitEntry, bare: boolean, ledger: Ledger): void {
  const because = `its unit is ${unit.name}`;
  if (floorUnits.has(unit.name)) ledger.add(line, "other", "words", 2.5, because);
  else
    byDimension[unit.dimension].forEach(([role, weight], at) => {
      ledger.add(line, role, "words", weight + (bare && at === 0 ? 1.2 : 0), because);
    });
  for (const [role, dimension] of Object.entries(dimensions) as [Role, Dimension][])
    if (dimension !== unit.dimension) ledger.add(line, role, "words", -4, because);
  for (const role of ["room", "duty", "box", "tester", "date", "dwelling", "fan"] as const)
    ledger.add(line, role, "words", -2, because);
  ledger.add(line, "verdict", "words", -1, because);
}
