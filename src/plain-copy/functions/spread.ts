import { plain } from "../../algebra";
import {
  constantSpread,
  fanLineSlope,
  fanLineTop,
  flowFromPressure,
  fullWidthSpread,
  halfWidthSpread,
  manometerLimit,
  rectAreaLimit,
  roundAreaLimit,
  unboxedEstimate,
  unboxedFlow,
} from "../../formulas";
import { usualConstant } from "../../job";
import { digits, wrong } from "../native-text";
import { aboveZero, Guards, type Need, zeroOrMore } from "./guards";
import { bySystemFar, far } from "./names";
import { coverage, freedom, readings, rootOfSquares, sideOf } from "./readings";
import type { Call, Writer } from "./writer";

const readable: Need = { ...aboveZero, say: "give room minus box, above 0" };

export const areaLimitWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const w = guards.number("size1", { blank: "nothing yet", need: aboveZero });
    const t = guards.number("tolerance", { need: zeroOrMore });
    const round = plain(roundAreaLimit, { t, d: w });
    if (!call.has("size2")) return guards.result(round);
    const h = guards.number("size2", { blank: "allowed", need: aboveZero });
    return guards.result(`IF(ISNUMBER(${h}),${plain(rectAreaLimit, { t, w, h })},${round})`);
  },
};

/** The constant of a call as any sheet writes it. */
export function constantFar(call: Call): string {
  const usual = bySystemFar(call, digits(usualConstant.ip), digits(usualConstant.si));
  return far(call, "constant", usual);
}

function guardConstant(guards: Guards, isSi: boolean | string): string {
  return guards.number("constant", { otherwise: guards.usualConstant(isSi), need: aboveZero });
}

/** Guards what is known of a manometer and gives the spreads it adds to a pressure. */
function manometer(call: Call, guards: Guards) {
  guards.number("meterPercent", { need: zeroOrMore });
  guards.number("meterFloor", { need: zeroOrMore });
  const [p, f] = [far(call, "meterPercent"), far(call, "meterFloor")];
  for (const name of ["resolution", "zeroLimit"])
    if (call.has(name)) guards.number(name, { need: zeroOrMore });
  const limit = (P: string) =>
    plain(halfWidthSpread, { a: `(${plain(manometerLimit, { P, p, f })})` });
  const resolution = call.at("resolution")?.far;
  const zero = call.at("zeroLimit")?.far;
  return {
    limit,
    resolution: resolution ? plain(fullWidthSpread, { w: resolution }) : "0",
    zero: zero ? plain(halfWidthSpread, { a: zero }) : "0",
    key: [p, f, resolution, zero].join(" "),
  };
}

export const flowSpreadWriter: Writer = {
  width: 3,
  kinds: { readings: "row" },
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const read = readings(call, guards, readable);
    guards.number("area", { need: aboveZero });
    guards.number("areaLimit", { need: zeroOrMore });
    guardConstant(guards, isSi);
    guards.number("constantSpread", { need: zeroOrMore });
    const meter = manometer(call, guards);
    const [A, a, k] = [far(call, "area"), far(call, "areaLimit"), far(call, "constantSpread")];
    const K = constantFar(call);
    const steps = call.steps("flow spread", [read.mean, A, a, K, k, meter.key], {
      pressure: () => read.mean,
      flow: ({ pressure: P }) => plain(flowFromPressure, { K, A, P }),
      // The slopes of the flow are Q/K, Q/A and Q/(2·P).
      slope: ({ pressure: P, flow: Q }) => `${Q}/(2*${P})`,
      scatter: ({ slope }) => `${slope}*${read.spread}`,
      u: ({ pressure: P, flow: Q, slope, scatter }) =>
        rootOfSquares(
          `${Q}/${K}*${plain(constantSpread, { K, p: k })}`,
          `${Q}/${A}*${plain(halfWidthSpread, { a })}`,
          `${slope}*${meter.limit(P)}`,
          `${slope}*${meter.resolution}`,
          `${slope}*${meter.zero}`,
          scatter,
        ),
      dof: ({ scatter, u }) => freedom(scatter, u, read.count),
      expanded: ({ u, dof }) => `${u}*${coverage(dof)}`,
    });
    return guards.result(sideOf(call, steps));
  },
};

function guardTwo(guards: Guards, isSi: boolean | string) {
  const P = guards.number("pressure", { blank: "nothing yet", need: readable });
  const P2 = guards.number("pressure2", { blank: "nothing yet", need: readable });
  const A = guards.number("area", { need: aboveZero });
  const A2 = guards.number("area2", { need: aboveZero });
  const K = guardConstant(guards, isSi);
  const odd = wrong("no fan gives these two readings, or they are too near each other: read again");
  const q = `(${A}*SQRT(${P})-${A2}*SQRT(${P2}))`;
  const slope = `${q}/(${P2}-${P})`;
  const far = `MAX(${P},${P2})>=2*MIN(${P},${P2})`;
  const falls = `AND(${q}*(${P2}-${P})>=0,${slope}<=0.05*(${A}*SQRT(${P})+${slope}*${P}))`;
  const sound = `IF(AND(${far},${A}<>${A2}),IF(${falls},0,${odd}),${odd})`;
  guards.check(`IF(COUNT(${P},${P2},${A},${A2})=4,IF(MIN(${P},${P2},${A},${A2})>0,${sound},0),0)`);
  return { K, A, P, A2, P2 };
}

export const unboxedFlowWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    return guards.result(plain(unboxedFlow, guardTwo(guards, isSi)));
  },
};

export const unboxedSpreadWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    guardTwo(guards, isSi);
    for (const name of ["areaLimit", "areaLimit2", "constantSpread"])
      guards.number(name, { need: zeroOrMore });
    const meter = manometer(call, guards);
    const [A, P, A2, P2] = ["area", "pressure", "area2", "pressure2"].map((name) =>
      far(call, name),
    ) as [string, string, string, string];
    const K = constantFar(call);
    const half = (name: string) => plain(halfWidthSpread, { a: far(call, name) });
    const limits = ["areaLimit", "areaLimit2", "constantSpread"].map((name) => far(call, name));
    const apart = `(${P2}-${P})`;
    // The slopes of Q = K·(A·√P·P2 − A2·√P2·P)/(P2 − P).
    const steps = call.steps("unboxed spread", [A, P, A2, P2, K, meter.key, ...limits], {
      flow: () => plain(unboxedFlow, { K, A, P, A2, P2 }),
      byArea: () => `${K}*SQRT(${P})*${P2}/${apart}`,
      byArea2: () => `-${K}*SQRT(${P2})*${P}/${apart}`,
      byPressure: ({ flow }) =>
        `(${K}*(${A}*${P2}/(2*SQRT(${P}))-${A2}*SQRT(${P2}))+${flow})/${apart}`,
      byPressure2: ({ flow }) =>
        `(${K}*(${A}*SQRT(${P})-${A2}*${P}/(2*SQRT(${P2})))-${flow})/${apart}`,
      u: ({ flow, byArea, byArea2, byPressure, byPressure2 }) =>
        rootOfSquares(
          `${flow}/${K}*${plain(constantSpread, { K, p: far(call, "constantSpread") })}`,
          `${byArea}*${half("areaLimit")}`,
          `${byArea2}*${half("areaLimit2")}`,
          `${byPressure}*${meter.limit(P)}`,
          `${byPressure2}*${meter.limit(P2)}`,
          `(${byPressure}+${byPressure2})*${meter.zero}`,
          `${byPressure}*${meter.resolution}`,
          `${byPressure2}*${meter.resolution}`,
        ),
    });
    return guards.result(steps.u);
  },
};

export const unboxedEstimateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const Q = guards.number("flow", { blank: "nothing yet", need: aboveZero });
    const P = guards.number("pressure", { blank: "nothing yet", need: readable });
    const rated = ["ratedFlow", "ratedFlow2", "ratedPressure", "ratedPressure2"] as const;
    for (const name of rated) guards.number(name, { need: zeroOrMore });
    const [R, R2, p1, p2] = rated.map((name) => far(call, name)) as [
      string,
      string,
      string,
      string,
    ];
    const isFirst = `${p1}<=${p2}`;
    const falls = `AND(COUNT(${R},${R2},${p1},${p2})=4,${p1}<>${p2},(${p2}-${p1})*(${R}-${R2})>0)`;
    const up = plain(fanLineSlope, { Q: R, P: p1, Q2: R2, P2: p2 });
    const down = plain(fanLineSlope, { Q: R2, P: p2, Q2: R, P2: p1 });
    const flaw = wrong("a fan's flow falls as its pressure rises");
    const top = (s: string, Q: string, P: string) => plain(fanLineTop, { P, s, Q });
    const { slope: s, top: p } = call.steps("fan's rated line", [R, R2, p1, p2], {
      slope: () => `IF(${falls},IF(${isFirst},${up},${down}),${flaw})`,
      top: ({ slope }) => `IF(${isFirst},${top(slope, R, p1)},${top(slope, R2, p2)})`,
    });
    const above = wrong("the reading lies above the fan's rated line");
    const estimate = plain(unboxedEstimate, { Q, P, s, p });
    return guards.result(`IF(${P}>${p}-${s}*${Q},${above},${estimate})`);
  },
};
