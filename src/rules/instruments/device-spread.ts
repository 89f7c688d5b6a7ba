import { oneValue, plain } from "../../algebra";
import { InputError } from "../../cells";
import {
  deviceFlowWithErrors,
  deviceLimit,
  deviceFlow as formula,
  fullWidthSpread,
  halfWidthSpread,
  meanSpread,
} from "../../formulas";
import { type Budget, fullWidth, halfWidth, propagate, repeats, type Spread } from "../../spread";
import { area } from "../arguments";
import { ifGiven, needed, optional, type RepeatsArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, zeroOrMore } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { sum } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { coverage, freedom, readings, rootOfSquares, sideOf } from "../native/readings";
import { budgetAnswer } from "../spread/told-budget";
import { deviceFlow } from "./device-flow";
import { exponentNeed } from "./exponent";

/** How far a device may be off. The limits are on the flow: the larger of the two counts. */
export interface DeviceLimits {
  readonly percent: number;
  /** In the unit of the flow. */
  readonly floor: number;
  /** Smallest step of the reading, in the unit of the reading; none where left out. */
  readonly resolution?: number;
}

/**
 * The spread of a device's flow from one or more readings of one setting: the larger limit as a
 * rectangular distribution, the resolution by its full width, the scatter of the mean by its
 * repeats.
 *
 * One reading has no scatter to tell, and the budget then lacks that line. Throws where there is
 * no reading.
 */
export function deviceBudget(
  readings: readonly number[],
  constant: number,
  exponent: number,
  limits: DeviceLimits,
): Budget {
  if (readings.length === 0) throw new InputError("no reading: give one or more");
  const read = repeats(readings);
  const flow = deviceFlow(read.mean, constant, exponent);
  if (!Number.isFinite(flow))
    throw new InputError("the flow is not a number: check the reading, constant and exponent");
  const limit = oneValue(deviceLimit, { Q: flow, s: limits.percent, m: limits.floor });
  const scatter: Spread[] =
    read.n > 1 ? [{ label: "repeat readings", u: read.u, dof: read.dof }] : [];
  const { resolution = 0 } = limits;
  return propagate(deviceFlowWithErrors, {
    K: { value: constant },
    n: { value: exponent },
    r: { value: read.mean, spreads: scatter },
    d: {
      value: 0,
      spreads: resolution > 0 ? [{ label: "resolution", u: fullWidth(resolution) }] : [],
    },
    e: { value: 0, spreads: [{ label: "device limit", u: halfWidth(limit) }] },
  });
}

const shown: RepeatsArgument = { kind: "repeats", need: aboveZero };
const ifStated = ifGiven(zeroOrMore);

export const rule = ruleOf({
  id: "DEVICE_SPREAD",
  title: "Spread of a flow read with a device",
  arguments: {
    readings: shown,
    constant: area,
    exponent: needed(exponentNeed),
    percent: ifStated,
    floor: ifStated,
    resolution: optional(ifStated),
  },
  width: 3,
  formulas: [formula],
  work({ readings, constant: K, exponent: n, percent, floor, resolution = 0 }) {
    if (percent === undefined && floor === undefined)
      throw new InputError(
        "percent and floor are blank: give at least one limit of the device",
        "blank",
      );
    const limits = { percent: percent ?? 0, floor: floor ?? 0, resolution };
    const budget = deviceBudget(readings, K, n, limits);
    return budgetAnswer(budget, undefined, [sum(formula, { K, r: repeats(readings).mean, n })]);
  },
});

export const native: NativeForm = (native) => {
  const read = readings(native, true);
  const [K, n] = [native.far("constant"), native.far("exponent")];
  const [percent, floor, step] = ["percent", "floor", "resolution"].map((name) =>
    native.or(name, "0", "far"),
  ) as [string, string, string];
  const steps = native.call.steps("device spread", [read.mean, K, n, percent, floor, step], {
    reading: () => read.mean,
    flow: ({ reading: r }) => plain(formula, { K, r, n }),
    slope: ({ reading, flow }) => `${n}*${flow}/${reading}`,
    scatter: ({ slope }) => `${slope}*${read.spread}`,
    u: ({ flow: Q, slope, scatter }) =>
      rootOfSquares(
        scatter,
        `${slope}*${plain(fullWidthSpread, { w: step })}`,
        plain(halfWidthSpread, { a: `(${plain(deviceLimit, { Q, s: percent, m: floor })})` }),
      ),
    dof: ({ scatter, u }) => freedom(scatter, u, read.count),
    expanded: ({ u, dof }) => `${u}*${coverage(dof)}`,
  });
  const isLimited = `OR(${native.given("percent")},${native.given("floor")})`;
  return `IF(${isLimited},${sideOf(native, steps)},NA())`;
};

export const help: Help = {
  computes: [
    "The device's limit is taken on the flow: the larger of a share and a floor, every error within as likely. Its display and the scatter of two or more readings, side by side in a row, are added as for FLOW_SPREAD.",
    "Give the limit that the device's certificate or the standard you work to states; a blank one counts as none, but one of the two has to be there.",
  ],
  result:
    'Three cells for each row: standard spread, effective degrees of freedom ("infinite" where nothing was repeated), and the ± that covers 95 %.',
  formulas: [formula, deviceLimit, halfWidthSpread, fullWidthSpread, meanSpread],
  examples: [
    {
      words:
        "A hood shows 51 cfm in steps of 1 cfm; its limit is 5 % or 5 cfm. The flow is 51 ± 5.7 cfm.",
      args: [51, 1, 1, 5, 5, 1],
      gives: [2.90115, "infinite", 5.68615],
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "Neither limit is given.", args: [51, 1, 1, "", ""] },
    { when: "A reading is below 0.", args: [-51, 1, 1, 5, 5] },
    { when: "A limit is below 0.", args: [51, 1, 1, -5, 5] },
  ],
  related: ["DEVICE_FLOW", "FLOW_SPREAD"],
};
