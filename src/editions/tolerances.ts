import type { Source } from "../formulas";
import type { Rate } from "./rate";

/** How far a measured flow may lie from its design, up or down: the larger of the two. */
export interface DesignMatchRule {
  readonly code: string;
  readonly within: Rate;
  readonly share: number;
  readonly source: Source;
}

export const designMatchRules: readonly DesignMatchRule[] = [
  {
    code: "ENERGY-STAR-3.1",
    within: { ip: 15 },
    share: 0.15,
    source: {
      work: "ENERGY STAR homes 3.1",
      clause: "rater field checklist, item 7.1",
      mark: "from memory",
    },
  },
];

/** How two testers' readings of one fan are graded, by the share they lie apart. */
export const retestBands = {
  rows: [
    { upTo: 0.1, edge: "outside", band: "satisfactory" },
    { upTo: 0.15, edge: "outside", band: "1" },
    { upTo: 0.25, edge: "inside", band: "2" },
    { upTo: Number.POSITIVE_INFINITY, edge: "inside", band: "3" },
  ],
  source: {
    work: "RESNET field quality assurance checklist",
    clause: "item Q30, ventilation testing",
    mark: "from memory",
  },
} as const satisfies {
  rows: readonly { upTo: number; edge: "inside" | "outside"; band: string }[];
  source: Source;
};
