import type { Mark, Source } from "../formulas";
import type { Rate } from "./rate";

export const fanKinds = [
  "heat recovery",
  "range hood",
  "in-line",
  "bath or utility",
  "air handler",
] as const;
/** "bath or utility" stands for every other exhaust fan where a code says so. */
export type FanKind = (typeof fanKinds)[number];

/** Least flow for each watt (cfm/W) of a kind of fan, for rated flows from one to below another. */
export interface EfficacyRow {
  readonly fan: FanKind;
  readonly from?: number;
  readonly below?: number;
  readonly least: Rate;
  readonly source: Source;
}

export interface EfficacyRule {
  readonly code: string;
  readonly rows: readonly EfficacyRow[];
}

type Limits = Pick<EfficacyRow, "from" | "below">;

const rowsOf = (work: string, clause: string, usual: Mark) => {
  return (fan: FanKind, ip: number, limits: Limits = {}, mark = usual): EfficacyRow => ({
    fan,
    ...limits,
    least: { ip },
    source: { work, clause, mark },
  });
};

/** The 2015 and 2018 editions share their table. */
function earlier(year: number): EfficacyRule {
  const row = rowsOf(`IECC ${year}`, "R403.6.1, table", "read");
  return {
    code: `IECC-${year}`,
    rows: [
      row("heat recovery", 1.2),
      row("range hood", 2.8),
      row("in-line", 2.8),
      row("bath or utility", 1.4, { from: 10, below: 90 }),
      row("bath or utility", 2.8, { from: 90 }),
    ],
  };
}

function later(code: string, work: string, clause: string): EfficacyRule {
  const row = rowsOf(work, clause, "two sources");
  return {
    code,
    rows: [
      row("heat recovery", 1.2),
      row("in-line", 3.8),
      row("bath or utility", 2.8, { below: 90 }),
      row("bath or utility", 3.5, { from: 90 }),
    ],
  };
}

const iecc2021 = later("IECC-2021", "IECC 2021", "R403.6.2, table");

export const efficacyRules: readonly EfficacyRule[] = [
  earlier(2015),
  earlier(2018),
  {
    ...iecc2021,
    rows: [
      ...iecc2021.rows,
      rowsOf("IECC 2021", "R403.6.2, table", "from memory")("air handler", 1.2),
    ],
  },
  later("10-CFR-460", "10 CFR 460", "460.204, table 1"),
];
