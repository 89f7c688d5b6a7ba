import { plain } from "../../algebra";
import { pressureFromFlow, rateWithMargin } from "../../formulas";
import { Left } from "../left";
import { wrong } from "../native-text";
import { bestSet } from "./best-set";
import { aboveZero, Guards, zeroOrMore } from "./guards";
import { far } from "./names";
import { listOf } from "./openings";
import { windowOf } from "./range";
import { constantFar } from "./spread";
import type { Writer } from "./writer";

export const fanSizeWriter: Writer = {
  kinds: { ratings: "whole" },
  write(call) {
    const guards = new Guards(call);
    const { text: list } = call.list("ratings");
    const filled = `SUMPRODUCT((TRIM(${list})<>"")*1)`;
    const sound = `SUMPRODUCT(ISNUMBER(${list})*(${list}>0))`;
    const flaw = wrong("ratings: give numbers above 0");
    guards.check(`IF(ISERROR(SUM(${list})),SUM(${list}),IF(${filled}=${sound},0,${flaw}))`);
    const R = guards.number("required", { blank: "nothing yet", need: aboveZero });
    const margin = call.has("margin")
      ? guards.number("margin", { blank: "allowed", need: zeroOrMore })
      : undefined;
    const s = margin ? `IF(ISNUMBER(${margin}),${margin},0)` : "0";
    const least = `(${plain(rateWithMargin, { R, s })})*(1-1E-9)`;
    const enough = `SUMPRODUCT(ISNUMBER(${list})*(${list}>=${least}))`;
    const none = `"none in the list, largest "&MAX(${list})`;
    const rated = `IF(${enough}=0,${none},LARGE(${list},${enough}))`;
    return guards.result(`IF(COUNT(${list})=0,"no rating in the list",${rated})`);
  },
};

export const expectedOpeningWriter: Writer = {
  kinds: { labels: "whole", areas: "whole", boxes: "whole" },
  write(call) {
    const list = listOf(call);
    if (typeof list === "string") return list;
    if (list.isTooLarge) throw new Left("a box of more than ten openings");
    const guards = new Guards(call);
    const isSi = guards.units();
    guards.number("flow", { blank: "nothing yet", need: aboveZero });
    guards.number("constant", { otherwise: guards.usualConstant(isSi), need: aboveZero });
    windowOf(guards);
    guards.text("box");
    const [Q, K] = [far(call, "flow"), constantFar(call)];
    const pressure = plain(pressureFromFlow, { Q, K, A: "1" });
    const P = call.step("pressure at an area of 1", `IF(COUNT(${Q},${K})=2,${pressure},0)`);
    return guards.result(bestSet(call, list, { P, A: "1" }));
  },
};
