import { plain } from "../../algebra";
import {
  constantSpread,
  fullWidthSpread,
  halfWidthSpread,
  manometerLimit,
  unboxedFlow,
} from "../../formulas";
import { constant, limit, units } from "../arguments";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { rootOfSquares } from "../native/readings";
import { display, meter, nativeMeter } from "./manometer";
import { budgetLines, gum } from "./told-budget";
import { unboxedBudget } from "./unboxed-budget";
import { checkLine, twoReadings } from "./unboxed-flow";

export const rule = ruleOf({
  id: "UNBOXED_SPREAD",
  title: "Spread of a flow without the box",
  arguments: {
    ...twoReadings,
    constant,
    ...meter,
    areaLimit: limit,
    areaLimit2: limit,
    constantSpread: limit,
    ...display,
    units,
  },
  work({ area, pressure, area2, pressure2, areaLimit, areaLimit2, units, ...rest }) {
    const budget = unboxedBudget({
      first: { area, areaLimit, pressure },
      second: { area: area2, areaLimit: areaLimit2, pressure: pressure2 },
      ...rest,
    });
    return {
      gives: budget.u,
      why: () => ({
        budget,
        words: [
          ...budgetLines(budget.lines, units),
          "one manometer is off the same way both times; the rest is independent",
        ],
        sources: [gum],
        unit: flowUnits,
      }),
    };
  },
});

export const native: NativeForm = (native) => {
  checkLine(native);
  const manometer = nativeMeter(native);
  const [A, P, A2, P2, K] = native.all("far", "area", "pressure", "area2", "pressure2", "constant");
  const half = (name: string) => plain(halfWidthSpread, { a: native.far(name) });
  const limits = native.all("far", "areaLimit", "areaLimit2", "constantSpread");
  const apart = `(${P2}-${P})`;
  // The slopes of Q = K·(A·√P·P2 − A2·√P2·P)/(P2 − P).
  const steps = native.call.steps("unboxed spread", [A, P, A2, P2, K, manometer.key, ...limits], {
    flow: () => plain(unboxedFlow, { K, A, P, A2, P2 }),
    byArea: () => `${K}*SQRT(${P})*${P2}/${apart}`,
    byArea2: () => `-${K}*SQRT(${P2})*${P}/${apart}`,
    byPressure: ({ flow }) =>
      `(${K}*(${A}*${P2}/(2*SQRT(${P}))-${A2}*SQRT(${P2}))+${flow})/${apart}`,
    byPressure2: ({ flow }) =>
      `(${K}*(${A}*SQRT(${P})-${A2}*${P}/(2*SQRT(${P2})))-${flow})/${apart}`,
    u: ({ flow, byArea, byArea2, byPressure, byPressure2 }) =>
      rootOfSquares(
        `${flow}/${K}*${plain(constantSpread, { K, p: native.far("constantSpread") })}`,
        `${byArea}*${half("areaLimit")}`,
        `${byArea2}*${half("areaLimit2")}`,
        `${byPressure}*${manometer.limit(P)}`,
        `${byPressure2}*${manometer.limit(P2)}`,
        `(${byPressure}+${byPressure2})*${manometer.zero}`,
        `${byPressure}*${manometer.resolution}`,
        `${byPressure2}*${manometer.resolution}`,
      ),
  });
  return steps.u;
};

export const help: Help = {
  computes: [
    "The spread of UNBOXED_FLOW after JCGM 100 (GUM). Both readings are of one zeroing and one box, so zero and constant are off in the same direction both times; the limit of the manometer, its display and the areas are each off for themselves.",
    "The nearer the two pressures, the larger it grows.",
  ],
  result: 'Standard spread, cfm (L/s for "si").',
  formulas: [unboxedFlow, manometerLimit, halfWidthSpread, fullWidthSpread, constantSpread],
  examples: [
    {
      words:
        "The same fan, areas to ± 0.2 in², the constant to 2 %, the manometer to 1 % or 0.25 Pa.",
      args: [32.71, 3.859, 16, 14.537, 1.07, 1, 0.25, 0.2, 0.2, 2],
      gives: 2.32582,
    },
  ],
  troubles: [
    { when: "Both areas are alike.", args: [24, 4, 24, 4, 1.07, 1, 0.25, 0.2, 0.2, 2] },
    { when: "A limit is blank.", args: [32, 4, 16, 14, 1.07, 1, 0.25, "", 0.2, 2] },
  ],
  related: ["UNBOXED_FLOW", "FLOW_SPREAD"],
};
