import { columns } from "../../algebra";
import { flowFromPressure } from "../../formulas";
import { plainName } from "../fit";
import { meanOf } from "../mean";
import {
  dwellingAccount,
  type FanRows,
  fanBudget,
  fanDeficit,
  type Job,
  type Table,
  valueIn,
} from "../read";
import { verdicts as allVerdicts, type Guard, type Verdict, verdictColumn } from "../rules";
import type { Expectation } from "./expectation";
import { ofFurtherSheets } from "./further-expectations";
import { areaFromSizes } from "./opening-sizes";
import { continuousFlows } from "./rates";

/** The computed columns of a table, each worked out from the other cells of its row. */
export function expectations(job: Job, table: Table): Expectation[] {
  switch (table.layout.kind) {
    case "fans":
      return job.fans ? ofFans(job, job.fans) : [];
    case "dwellings":
      return ofDwellings(job, table);
    case "boxes":
      return ofBoxes(job, table);
    default:
      return ofFurtherSheets(job, table);
  }
}

const known = (value: number | undefined) =>
  value === undefined || Number.isNaN(value) ? undefined : value;

function ofFans(job: Job, fans: FanRows): Expectation[] {
  const { table } = fans;
  const mean = (i: number) => known(meanOf(fans.readings(i)));
  // Each column rests on its neighbours as they are stored, so that one slip is found once.
  const storedFlow = table.has("flow") ? table.numbers("flow") : fans.flow;
  const required = Float64Array.from({ length: fans.length }, (_, i) => {
    const stored = table.number("required", i);
    return Number.isNaN(stored) ? fans.requiredNumber(i) : stored;
  });
  const judged = table.has("judged") ? table.numbers("judged") : storedFlow;
  const guard = guardOf(fans);
  const verdicts = verdictColumn(judged, required, fans.length, fans.status, guard);
  const deficit = (i: number) => {
    const found = fanDeficit(job, i);
    return found && valueIn(found);
  };
  const budgets = new Map<number, ReturnType<typeof fanBudget>>();
  const budget = (i: number) => {
    if (!budgets.has(i)) budgets.set(i, fanBudget(fans, i));
    return budgets.get(i);
  };
  return [
    { key: "area", expected: (i) => valueIn(fans.areaFromBoxes(i)) },
    { key: "pressure", expected: mean },
    { key: "flow", expected: (i) => known(fans.flow[i]) },
    { key: "status", expected: (i) => fans.status[i] },
    { key: "required", expected: (i) => valueIn(fans.required(i))?.rate },
    {
      key: "verdict",
      expected: (i) => (Number.isNaN(required[i]) ? undefined : ownWord(table, i, verdicts[i])),
    },
    { key: "deficit", expected: (i) => deficit(i)?.rate },
    { key: "spread", expected: (i) => budget(i)?.u },
    { key: "expanded", expected: (i) => budget(i)?.expanded },
  ];
}

/** Guarded judging takes each row's spread as it is stored. */
function guardOf({ table, settings }: FanRows): Guard | undefined {
  if (settings.judging !== "guarded" || !table.has("spread")) return undefined;
  return { spread: table.numbers("spread"), chance: settings.chance };
}

/** A firm's own words for a verdict are left alone; ours must be the right one. */
function ownWord(table: Table, i: number, verdict: Verdict | undefined): string | undefined {
  const ours: readonly string[] = allVerdicts;
  return ours.includes(table.text("verdict", i).toLowerCase()) ? verdict : undefined;
}

function ofDwellings(job: Job, table: Table): Expectation[] {
  const sums = continuousFlows(job);
  const sum = (i: number) => sums.get(plainName(table.text("dwelling", i)));
  const account = (i: number) => dwellingAccount(job, i);
  const rate = (maybe: ReturnType<typeof account>["raised"]) => maybe && valueIn(maybe)?.rate;
  return [
    { key: "required", expected: (i) => rate(account(i).required) },
    {
      key: "deficits",
      expected: (i) => (account(i).deficits?.unsure ? undefined : account(i).deficits?.sum),
    },
    { key: "infiltration", expected: (i) => rate(account(i).infiltration) },
    {
      key: "provided",
      expected: (i) => (sum(i)?.unsure === false ? sum(i)?.flow : undefined),
    },
  ];
}

function ofBoxes(job: Job, table: Table): Expectation[] {
  const area = table.numbers("area");
  const K = Float64Array.from({ length: table.length }, (_, i) => {
    const own = table.number("constant", i);
    return own > 0 ? own : job.settings.constant;
  });
  const at = (P: number) => columns(flowFromPressure, { K, A: area, P }, table.length);
  const [lowest, highest] = [at(job.settings.low), at(job.settings.high)];
  return [
    { key: "area", expected: (i) => areaFromSizes(table, i) },
    { key: "lowest", expected: (i) => known(lowest[i]) },
    { key: "highest", expected: (i) => known(highest[i]) },
  ];
}
