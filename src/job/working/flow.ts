import {
  fanLineSlope,
  fanLineTop,
  flowFromPressure,
  pressureFromFlow,
  unboxedEstimate,
  unboxedFlow,
} from "../../formulas";
import { estimateUnboxed, requireLine, usualWindow } from "../rules";
import { aboveZero, type Given, notNegative, roomMinusBox } from "./given";
import { constantOf } from "./openings";
import { sumValue } from "./say";
import type { Working } from "./working";

const positive = { refuse: aboveZero };
const readable = { refuse: (value: number) => roomMinusBox(value) ?? aboveZero(value) };

export const flow = {
  FLOW: {
    title: "Flow through an opening",
    takes: ["area", "pressure", "constant", "units"],
    formulas: [flowFromPressure],
    explain: (given) => {
      const P = given.number("pressure", { refuse: roomMinusBox });
      const A = given.number("area", positive);
      return { sums: [{ formula: flowFromPressure, given: { K: constantOf(given), A, P } }] };
    },
  },
  BOX_PRESSURE: {
    title: "Pressure of the box at a flow",
    takes: ["area", "flow", "constant", "units"],
    formulas: [pressureFromFlow],
    explain: (given) => {
      const Q = given.number("flow", { refuse: notNegative });
      const A = given.number("area", positive);
      return { sums: [{ formula: pressureFromFlow, given: { Q, K: constantOf(given), A } }] };
    },
  },
  REACH: {
    title: "Lowest and highest flow of an opening",
    takes: ["area", "constant", "low", "high", "units"],
    formulas: [flowFromPressure],
    explain: (given) => {
      const A = given.number("area", positive);
      const K = constantOf(given);
      const { low, high } = windowOf(given);
      const sums = [low, high].map((P) => ({ formula: flowFromPressure, given: { K, A, P } }));
      return { sums, gives: sums.map(sumValue), unit: flowFromPressure.result.unit };
    },
  },
  UNBOXED_FLOW: {
    title: "Flow without the box, from two openings",
    takes: ["area", "pressure", "area2", "pressure2", "constant", "units"],
    formulas: [unboxedFlow],
    explain: (given) => {
      const [A, P] = [given.number("area", positive), given.number("pressure", readable)];
      const [A2, P2] = [given.number("area2", positive), given.number("pressure2", readable)];
      requireLine({ area: A, pressure: P }, { area: A2, pressure: P2 });
      return { sums: [{ formula: unboxedFlow, given: { K: constantOf(given), A, P, A2, P2 } }] };
    },
  },
  UNBOXED_ESTIMATE: {
    title: "Estimate of the flow without the box, from a fan's rating",
    takes: ["flow", "pressure", "ratedFlow", "ratedPressure", "ratedFlow2", "ratedPressure2"],
    formulas: [unboxedEstimate],
    explain: (given) => {
      const point = (flow: string, pressure: string, refuse: typeof positive) => ({
        flow: given.number(flow, refuse),
        pressure: given.number(pressure, refuse),
      });
      const reading = point("flow", "pressure", positive);
      const rated = [
        point("ratedFlow", "ratedPressure", { refuse: notNegative }),
        point("ratedFlow2", "ratedPressure2", { refuse: notNegative }),
      ] as const;
      const [low, high] = [...rated].sort((a, b) => a.pressure - b.pressure) as [
        (typeof rated)[0],
        (typeof rated)[0],
      ];
      estimateUnboxed(reading, rated);
      const slope = {
        formula: fanLineSlope,
        given: { Q: low.flow, P: low.pressure, Q2: high.flow, P2: high.pressure },
      };
      const line = sumValue(slope);
      const top = { formula: fanLineTop, given: { P: low.pressure, s: line, Q: low.flow } };
      const { flow: Q, pressure: P } = reading;
      const own = { formula: unboxedEstimate, given: { Q, P, s: line, p: sumValue(top) } };
      return {
        sums: [slope, top, own],
        words: ["an estimate, not a measured value"],
      };
    },
  },
} satisfies Record<string, Working>;

/** The window of a call, or the usual one. */
export function windowOf(given: Given): { readonly low: number; readonly high: number } {
  return {
    low: given.number("low", { otherwise: usualWindow.low, ...positive }),
    high: given.number("high", { otherwise: usualWindow.high, ...positive }),
  };
}
