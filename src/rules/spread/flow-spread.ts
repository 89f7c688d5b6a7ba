import { plain } from "../../algebra";
import {
  constantSpread,
  flowFromPressure,
  fullWidthSpread,
  halfWidthSpread,
  manometerLimit,
  meanSpread,
} from "../../formulas";
import { area, constant, limit, readable, units } from "../arguments";
import type { RepeatsArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import type { NativeForm } from "../native/native";
import { coverage, freedom, readings, rootOfSquares, sideOf } from "../native/readings";
import { flowBudget } from "./flow-budget";
import { display, meter, nativeMeter } from "./manometer";
import { budgetAnswer } from "./told-budget";

const pressures: RepeatsArgument = { kind: "repeats", need: readable };

export const rule = ruleOf({
  id: "FLOW_SPREAD",
  title: "Spread of a flow",
  arguments: {
    readings: pressures,
    area,
    areaLimit: limit,
    constant,
    constantSpread: limit,
    ...meter,
    ...display,
    units,
  },
  width: 3,
  work: ({ units, ...reading }) => budgetAnswer(flowBudget(reading), units),
});

export const native: NativeForm = (native) => {
  const read = readings(native, true);
  const manometer = nativeMeter(native);
  const [A, a, K, k] = native.all("far", "area", "areaLimit", "constant", "constantSpread");
  const steps = native.call.steps("flow spread", [read.mean, A, a, K, k, manometer.key], {
    pressure: () => read.mean,
    flow: ({ pressure: P }) => plain(flowFromPressure, { K, A, P }),
    // The slopes of the flow are Q/K, Q/A and Q/(2·P).
    slope: ({ pressure: P, flow: Q }) => `${Q}/(2*${P})`,
    scatter: ({ slope }) => `${slope}*${read.spread}`,
    u: ({ pressure: P, flow: Q, slope, scatter }) =>
      rootOfSquares(
        `${Q}/${K}*${plain(constantSpread, { K, p: k })}`,
        `${Q}/${A}*${plain(halfWidthSpread, { a })}`,
        `${slope}*${manometer.limit(P)}`,
        `${slope}*${manometer.resolution}`,
        `${slope}*${manometer.zero}`,
        scatter,
      ),
    dof: ({ scatter, u }) => freedom(scatter, u, read.count),
    expanded: ({ u, dof }) => `${u}*${coverage(dof)}`,
  });
  return sideOf(native, steps);
};

export const help: Help = {
  computes: [
    "All that may put a flow off is drawn together after the guide JCGM 100 (GUM): each part times the slope of the flow formula by it, squared and added up. The parts are the manometer's limit, its display, its zero, the scatter of repeated readings, the area and the constant.",
    "Limits count as rectangular: every value within is as likely. Two or more readings of a fan, side by side in its row, tell their own scatter; one alone tells none.",
    "Student's t for the effective degrees of freedom, cut down to a whole number, turns the standard spread into the ± at 95 %.",
  ],
  result:
    'Three cells for each row: standard spread and, in the third, the ± that covers 95 %, both cfm (L/s for "si"); between them the effective degrees of freedom, "infinite" where nothing was repeated.',
  formulas: [
    flowFromPressure,
    manometerLimit,
    halfWidthSpread,
    fullWidthSpread,
    meanSpread,
    constantSpread,
  ],
  examples: [
    {
      words:
        "One reading of 4 Pa through 24 ± 0.2 in². The constant 1.07 is known to 2 %; the manometer to 1 % or 0.25 Pa, and shows 0.1 Pa. The flow is 51.36 ± 2.78 cfm.",
      args: [4, 24, 0.2, 1.07, 2, 1, 0.25, 0.1],
      gives: [1.41747, "infinite", 2.77819],
      unit: "cfm",
    },
  ],
  troubles: [
    {
      when: "A reading is 0: the flow has no slope there.",
      args: [0, 24, 0.2, 1.07, 2, 1, 0.25],
    },
    { when: "The area's limit is blank.", args: [4, 24, "", 1.07, 2, 1, 0.25] },
    { when: "A limit is below 0.", args: [4, 24, 0.2, 1.07, 2, -1, 0.25] },
  ],
  related: ["FLOW", "AREA_LIMIT", "CHANCE_MET", "VERDICT"],
};
