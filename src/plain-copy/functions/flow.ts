import { plain } from "../../algebra";
import { flowFromPressure, pressureFromFlow } from "../../formulas";
import { usualWindow } from "../../job";
import { digits } from "../native-text";
import { aboveZero, Guards, type Need, zeroOrMore } from "./guards";
import type { Writer } from "./writer";

const notNegative: Need = {
  ...zeroOrMore,
  say: "negative: read room minus box, or swap the hoses",
};

export const flowWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const P = guards.number("pressure", { blank: "nothing yet", need: notNegative });
    const A = guards.number("area", { need: aboveZero });
    const otherwise = guards.usualConstant(isSi);
    const K = guards.number("constant", { otherwise, need: aboveZero });
    return guards.result(plain(flowFromPressure, { A, P, K }));
  },
};

export const boxPressureWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const Q = guards.number("flow", { blank: "nothing yet", need: zeroOrMore });
    const A = guards.number("area", { need: aboveZero });
    const otherwise = guards.usualConstant(isSi);
    const K = guards.number("constant", { otherwise, need: aboveZero });
    return guards.result(plain(pressureFromFlow, { A, Q, K }));
  },
};

export const reachWriter: Writer = {
  width: 2,
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const A = guards.number("area", { blank: "nothing yet", need: aboveZero });
    const otherwise = guards.usualConstant(isSi);
    const K = guards.number("constant", { otherwise, need: aboveZero });
    const ends = [
      guards.number("low", { otherwise: digits(usualWindow.low), need: aboveZero }),
      guards.number("high", { otherwise: digits(usualWindow.high), need: aboveZero }),
    ];
    return guards.result(plain(flowFromPressure, { A, P: ends[call.side] as string, K }));
  },
};
