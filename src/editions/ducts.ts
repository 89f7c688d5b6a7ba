import type { Mark, Source } from "../formulas";

export const ductKinds = ["flex", "smooth"] as const;
export type DuctKind = (typeof ductKinds)[number];

/** Infinity: no limit. 0: not allowed. */
export interface DuctRow {
  readonly duct: DuctKind;
  /** Inches; the last row of a kind also serves wider ducts. */
  readonly diameter: number;
  /** Feet of straight duct, one for each rated flow. */
  readonly lengths: readonly number[];
  readonly source: Source;
}

/** Longest exhaust duct for a fan rated at 0.25 in w.c. A measured flow may stand in its place. */
export interface DuctRule {
  readonly code: string;
  /** cfm; a flow between two counts as the higher. */
  readonly ratedFlows: readonly number[];
  /** Feet that each elbow takes off. */
  readonly elbow: number;
  readonly rows: readonly DuctRow[];
  readonly source: Source;
  /** Where the rule says that the length is free once the flow has been measured. */
  readonly waivedByMeasuring: { readonly source: Source };
}

const no = Number.POSITIVE_INFINITY;

/** Diameter, then the lengths of the flow columns. */
const flex = [
  [3, 0, 0, 0, 0, 0, 0, 0, 0],
  [4, 56, 4, 0, 0, 0, 0, 0, 0],
  [5, no, 81, 42, 16, 2, 0, 0, 0],
  [6, no, no, 158, 91, 55, 18, 1, 0],
  [7, no, no, no, no, 161, 78, 40, 19],
  [8, no, no, no, no, no, 189, 111, 69],
] as const;
const smooth = [
  [3, 5, 0, 0, 0, 0, 0, 0, 0],
  [4, 114, 31, 10, 0, 0, 0, 0, 0],
  [5, no, 152, 91, 51, 28, 4, 0, 0],
  [6, no, no, no, 168, 112, 53, 25, 9],
  [7, no, no, no, no, no, 148, 88, 54],
  [8, no, no, no, no, no, no, 198, 133],
] as const;

/** The copy that was read ends inside the row of 7 in. */
const lastRead = 6;

function rule(year: number, section: string): DuctRule {
  const source = (clause: string, mark: Mark): Source => ({ work: `IRC ${year}`, clause, mark });
  const rows = (duct: DuctKind, table: typeof flex | typeof smooth): DuctRow[] =>
    table.map(([diameter, ...lengths]) => ({
      duct,
      diameter,
      lengths,
      source: source(
        `table ${section}, ${duct}, ${diameter} in`,
        diameter <= lastRead ? "read" : "from memory",
      ),
    }));
  return {
    code: `IRC-${year}`,
    ratedFlows: [50, 80, 100, 125, 150, 200, 250, 300],
    elbow: 15,
    rows: [...rows("flex", flex), ...rows("smooth", smooth)],
    source: source(`table ${section}`, "read"),
    waivedByMeasuring: { source: source(`${section}, exception`, "read") },
  };
}

export const ductRules: readonly DuctRule[] = [
  rule(2015, "M1506.2"),
  rule(2018, "M1504.2"),
  rule(2021, "M1504.2"),
];
