import type { Source } from "../formulas";

/** What a balanced system, ducted to the rooms that the code names, takes off the dwelling rate. */
export interface BalancedRule {
  readonly code: string;
  readonly reduction: number;
  readonly source: Source;
}

export const balancedRules: readonly BalancedRule[] = [
  {
    code: "IRC-2021",
    reduction: 0.3,
    source: { work: "IRC 2021", clause: "M1505.4.3, exception", mark: "from memory" },
  },
  {
    code: "IMC-2021",
    reduction: 0.3,
    source: {
      work: "IMC 2021",
      clause: "403.3.2, exception (30 %: read; that it stands in this year: from memory)",
      mark: "from memory",
    },
  },
];
