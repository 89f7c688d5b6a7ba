import { columns } from "../../algebra";
import { flowFromPressure } from "../../formulas";
import { plainName } from "../fit";
import type { FanRows, Job, Table } from "../read";
import { type Verdict, verdictColumn } from "../rules";
import { areaFromSizes } from "./opening-sizes";
import { continuousFlows, requiredOfDwelling } from "./rates";

/** What a computed column should hold in a row; undefined where it cannot be told. */
export interface Expectation {
  readonly key: string;
  readonly expected: (i: number) => number | string | undefined;
}

/** The computed columns of a table, each worked out from the other cells of its row. */
export function expectations(job: Job, table: Table): Expectation[] {
  switch (table.layout.kind) {
    case "fans":
      return job.fans ? ofFans(job.fans) : [];
    case "dwellings":
      return ofDwellings(job, table);
    case "boxes":
      return ofBoxes(job, table);
  }
}

const known = (value: number | undefined) =>
  value === undefined || Number.isNaN(value) ? undefined : value;

function ofFans(fans: FanRows): Expectation[] {
  const { table } = fans;
  const mean = (i: number) => {
    const readings = fans.readings(i);
    return readings.length > 0 ? readings.reduce((a, b) => a + b, 0) / readings.length : undefined;
  };
  // Each column rests on its neighbours as they are stored, so that one slip is found once.
  const storedFlow = table.has("flow") ? table.numbers("flow") : fans.flow;
  const required = Float64Array.from({ length: fans.length }, (_, i) => {
    const stored = table.number("required", i);
    return Number.isNaN(stored) ? fans.requiredNumber(i) : stored;
  });
  const verdicts = verdictColumn(storedFlow, required, fans.length, fans.status);
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
  ];
}

/** A firm's own words for a verdict are left alone; ours must be the right one. */
function ownWord(table: Table, i: number, verdict: Verdict | undefined): string | undefined {
  const ours = ["meets", "short", "retest", "not measured"];
  return ours.includes(table.text("verdict", i).toLowerCase()) ? verdict : undefined;
}

function valueIn<T>(maybe: { value: T } | { problem: unknown }): T | undefined {
  return "value" in maybe ? maybe.value : undefined;
}

function ofDwellings(job: Job, table: Table): Expectation[] {
  const sums = continuousFlows(job);
  const sum = (i: number) => sums.get(plainName(table.text("dwelling", i)));
  return [
    { key: "required", expected: (i) => requiredOfDwelling(job, i)?.rate },
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
