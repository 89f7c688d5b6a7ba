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
