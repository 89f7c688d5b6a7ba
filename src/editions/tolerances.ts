import type { Source } from "../formulas";
import { sourcesIn } from "./documents";

/** How two testers' readings of one fan are graded, by the share they lie apart. */
export const retestBands = {
  rows: [
    { upTo: 0.1, edge: "outside", band: "satisfactory" },
    { upTo: 0.15, edge: "outside", band: "1" },
    { upTo: 0.25, edge: "inside", band: "2" },
    { upTo: Number.POSITIVE_INFINITY, edge: "inside", band: "3" },
  ],
  source: sourcesIn("RESNET field quality assurance checklist")("item Q30, ventilation testing"),
} as const;

/** How many dwellings of a group are to be tested: so many first, and a share of the others. */
export interface Sampling {
  readonly id: string;
  readonly first: number;
  readonly share: number;
  readonly note: string;
  readonly source: Source;
}

export const samplings: readonly Sampling[] = [
  {
    id: "RESNET chapter 6",
    first: 10,
    share: 0.2,
    note: "five without a failure in a row come before sampling begins, and every unit type is tested",
    source: sourcesIn("RESNET standard, chapter 6")("607.1 and 610", "read", "resnet6"),
  },
  {
    id: "California RA2",
    first: 0,
    share: 1 / 7,
    note: "groups of seven at most; after a failure another of the group is tested",
    source: sourcesIn("California Residential Appendix")("RA2.6"),
  },
  {
    id: "weatherization monitoring",
    first: 0,
    share: 0.05,
    note: "10 % where the auditor also inspects",
    source: sourcesIn("Weatherization programme")("final inspections by monitors"),
  },
];

/** How many of a group are to be tested at least. */
export const leastTested = ({ first, share }: Sampling, group: number): number =>
  Math.min(group, first + Math.ceil(share * Math.max(0, group - first) - 1e-9));
