import { oneValue, plain } from "../../algebra";
import { InputError } from "../../cells";
import type { CycleRule, Edition, RunTimeRule } from "../../editions";
import { betweenTwoRows, onRate, runningRate } from "../../formulas";
import { edition, flowToCome } from "../arguments";
import { ifGiven, needed, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must, type Need } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, noRule, RequiredRate, sum } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { runningRules, runTimeFactors } from "../native/tables/running";
import { sumOver, wrong } from "../native/text";

const shareOn: Need = {
  above: 0,
  to: 1,
  say: "give a share of the time above 0 and up to 1, such as 0.5 for half of it",
};

/**
 * The flow while on that makes up for the time off, in the unit of `rate`.
 *
 * `share` of the time on, above 0 and up to 1. `cycleHours` from one start to the next; left out,
 * the longest cycle that the edition averages plainly, or its segment.
 */
export function rateWhileOn(
  edition: Edition,
  rate: number,
  share: number,
  cycleHours?: number,
): RequiredRate {
  must("rate", rate, aboveZero);
  must("runShare", share, shareOn);
  if (cycleHours !== undefined) must("cycleHours", cycleHours, aboveZero);
  if (edition.runTime) return inSegments(edition.runTime, rate, share, cycleHours);
  if (edition.cycle) return inCycles(edition, edition.cycle, rate, share, cycleHours);
  throw noRule(edition, "rule for fans that do not run all the time", (each) =>
    Boolean(each.runTime ?? each.cycle),
  );
}

function inCycles(
  edition: Edition,
  rule: CycleRule,
  R: number,
  f: number,
  hours = rule.averageHours,
): RequiredRate {
  if (hours > rule.averageHours)
    throw new InputError(
      `cycleHours ${hours}: ${edition.id} averages plainly over ${rule.averageHours} hours at most; what it says of longer cycles is not held here: work from your copy`,
    );
  if (f < (rule.leastShare ?? 0))
    throw tooSeldom(f, rule.leastShare, edition.id, rule.averageHours);
  const given = { R, e: 1, f };
  return new RequiredRate(oneValue(onRate, given), rule.source, "ip", [
    `plain average over cycles of ${hours} h`,
    sum(onRate, given),
  ]);
}

const tooSeldom = (share: number, least: number | undefined, work: string, hours: number) =>
  new InputError(
    `runShare ${share}: ${work} asks for at least ${least} of each ${hours}-hour segment`,
  );

function inSegments(
  rule: RunTimeRule,
  R: number,
  share: number,
  hours = rule.segmentHours,
): RequiredRate {
  const { segmentHours, rows, source } = rule;
  // Only a cycle that fits whole times into the segment runs the same share in each one.
  const times = segmentHours / hours;
  if (times < 1 - 1e-9 || Math.abs(times - Math.round(times)) > 1e-9)
    throw new InputError(
      `cycleHours ${hours}: ${source.work} counts the share of each ${segmentHours}-hour segment: give ${segmentHours} or a cycle that fits into it whole times`,
    );
  const upper = rows.findIndex(([edge]) => share <= edge);
  const [x2, y2] = rows[upper] ?? [1, 1];
  const [x1, y1] = rows[upper - 1] ?? [x2, y2];
  if (share < x1 || (upper === 0 && share < x2))
    throw tooSeldom(share, x2, source.work, segmentHours);
  const between = { x: share, x1, y1, x2, y2 };
  const listed = share === x2;
  const m = listed ? y2 : oneValue(betweenTwoRows, between);
  return new RequiredRate(oneValue(runningRate, { R, m }), source, "ip", [
    ...(listed ? [] : [sum(betweenTwoRows, between)]),
    sum(runningRate, { R, m }),
  ]);
}

export const rule = ruleOf({
  id: "ON_RATE",
  title: "Flow while on of a fan that runs part of the time",
  arguments: {
    edition,
    rate: flowToCome,
    runShare: needed(shareOn),
    cycleHours: optional(ifGiven(aboveZero)),
  },
  work: ({ edition, rate, runShare, cycleHours }) =>
    rateWhileOn(edition, rate, runShare, cycleHours).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const [R, f] = [native.far("rate"), native.far("runShare")];
  const no = native.number("edition");
  const rule = native.rowWhere(runningRules, { "Edition no.": no });
  const hours = native.call.step(
    "hours of a cycle",
    native.or("cycleHours", rule.of("Hours"), "far"),
  );
  const factors = native.call.table(runTimeFactors);
  const row = native.rowBy(
    runTimeFactors,
    sumOver(factors.column("No."), [
      `${factors.column("Edition no.")}=${no}`,
      `${factors.column("Share above")}<${f}`,
      `${factors.column("Share to")}>=${f}`,
    ]),
  );
  const between = plain(betweenTwoRows, {
    x: f,
    x1: row.of("Share above"),
    y1: row.of("Factor at the lower"),
    x2: row.of("Share to"),
    y2: row.of("Factor at the upper"),
  });
  const m = `IF(${f}=${row.of("Share to")},${row.of("Factor at the upper")},${between})`;
  const times = `(${rule.of("Hours")}/${hours})`;
  const fits = `AND(${times}>=1-1E-9,ABS(${times}-ROUND(${times},0))<=1E-9)`;
  const isEnough = `AND(${f}>=${rule.of("Least share")},${row.row}>0)`;
  const inSegments = `IF(AND(${fits},${isEnough}),${plain(runningRate, { R, m })},${wrong("the share or the cycle does not fit the segments of this edition")})`;
  const inCycles = `IF(OR(${hours}>${rule.of("Hours")},${f}<${rule.of("Least share")}),${wrong("a longer cycle or a smaller share than this edition averages plainly")},${plain(onRate, { R, e: "1", f })})`;
  const rate = `IF(${rule.of("Kind")}=1,${inSegments},${inCycles})`;
  return native.call.step("flow while on", rule.orNone(rate));
};

export const help: Help = {
  computes: [
    "A fan that runs part of the time must move more while it runs. ASHRAE 62.2: a plain average over time if it comes on at least once every 3 hours.",
    "For cycles longer than 3 hours the editions have a table by share and turnover, which is not here: such a cycle is refused.",
    "IRC: a factor by the share of each 4-hour segment, at least 25 %, on a straight line between the columns. At 75 % it is 1.3, not 1 ÷ 0.75.",
  ],
  result: "Flow while on, in the unit of the rate.",
  formulas: [onRate, runningRate, betweenTwoRows],
  source: {
    work: "ASHRAE 62.2-2016; IRC 2021",
    clause: "4.5.1; table M1505.4.3(2)",
    mark: "read",
  },
  examples: [
    {
      words: "72 cfm, by a fan that runs half of each 3 hours.",
      args: ["62.2-2016", 72, 0.5],
      gives: 144,
      unit: "cfm",
    },
    {
      words:
        "60 cfm under IRC-2021, by a fan that runs 58 % of each 4 hours: half way between two columns.",
      args: ["IRC-2021", 60, 0.58],
      gives: 105,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The share is written as a percentage.", args: ["62.2-2016", 72, 50] },
    { when: "The fan is on for too little of each segment.", args: ["IRC-2021", 60, 0.2] },
    { when: "The cycle does not fit into the segment.", args: ["IRC-2021", 60, 0.5, 6] },
    { when: "The cycle is too long.", args: ["62.2-2016", 72, 0.5, 48] },
    { when: "The edition has no such rule.", args: ["HUD-3280", 72, 0.5] },
  ],
  related: ["FAN_RATE", "DWELLING_RATE"],
};
