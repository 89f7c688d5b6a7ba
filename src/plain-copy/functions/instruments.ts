import { plain } from "../../algebra";
import {
  bagFlowIp,
  bagFlowSi,
  deviceFlow,
  deviceLimit,
  fullWidthSpread,
  halfWidthSpread,
  panCode,
} from "../../formulas";
import { usualPan } from "../../job";
import { digits } from "../native-text";
import { aboveZero, Guards, type Need, zeroOrMore } from "./guards";
import { far } from "./names";
import { coverage, freedom, readings, rootOfSquares, sideOf } from "./readings";
import type { Writer } from "./writer";

const exponent: Need = {
  text: (x) => `AND(${x}<>0,ABS(${x})<=3)`,
  met: (x) => x !== 0 && Math.abs(x) <= 3,
  say: "give 1 for a flow, 0.5 for a pressure, -1 for a time",
};

export const deviceFlowWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const r = guards.number("reading", { blank: "nothing yet", need: zeroOrMore });
    const K = guards.number("constant", { need: aboveZero });
    const n = guards.number("exponent", { otherwise: "1", need: exponent });
    return guards.result(plain(deviceFlow, { r, K, n }));
  },
};

export const bagFlowWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const V = guards.number("volume", { need: aboveZero });
    const t = guards.number("seconds", { blank: "nothing yet", need: aboveZero });
    const flow = (formula: typeof bagFlowIp) => plain(formula, { V, t });
    return guards.result(guards.bySystem(isSi, flow(bagFlowIp), flow(bagFlowSi)));
  },
};

export const deviceSpreadWriter: Writer = {
  width: 3,
  kinds: { readings: "row" },
  write(call) {
    const guards = new Guards(call);
    const read = readings(call, guards, aboveZero);
    guards.number("constant", { need: aboveZero });
    guards.number("exponent", { need: exponent });
    const optional = ["percent", "floor", "resolution"].map((name) => {
      if (!call.has(name)) return { isNumber: "FALSE", value: "0" };
      const near = guards.number(name, { blank: "allowed", need: zeroOrMore });
      const x = far(call, name);
      return { isNumber: `ISNUMBER(${near})`, value: `IF(ISNUMBER(${x}),${x},0)` };
    });
    const [percent, floor, step] = optional.map(({ value }) => value) as [string, string, string];
    const limits = optional.slice(0, 2).map(({ isNumber }) => isNumber);
    const [K, n] = [far(call, "constant"), far(call, "exponent")];
    const steps = call.steps("device spread", [read.mean, K, n, percent, floor, step], {
      reading: () => read.mean,
      flow: ({ reading: r }) => plain(deviceFlow, { K, r, n }),
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
    return guards.result(`IF(OR(${limits.join(",")}),${sideOf(call, steps)},NA())`);
  },
};

export const panStatusWriter: Writer = {
  kinds: { readings: "row" },
  write(call) {
    const guards = new Guards(call);
    const read = readings(call, guards);
    const [limit, most] = (["limit", "span"] as const).map((name) => {
      const usual = digits(usualPan[name].value);
      if (!call.has(name)) return usual;
      const x = guards.number(name, { blank: "allowed", need: aboveZero });
      return `IF(ISNUMBER(${x}),${x},${usual})`;
    });
    const hair = (x: string | undefined) => `(${x}*(1+1E-9))`;
    const { mean: m, span: s } = read;
    const code = plain(panCode, { m, s, limit: hair(limit), most: hair(most) });
    return guards.result(`CHOOSE(1+${code},"tight","leaks","repeat")`);
  },
};
