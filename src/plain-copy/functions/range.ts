import { plain } from "../../algebra";
import { rangeCode } from "../../formulas";
import { usualWindow } from "../../job";
import { Left } from "../left";
import { digits } from "../native-text";
import { bestSet } from "./best-set";
import { aboveZero, Guards } from "./guards";
import { far } from "./names";
import { listOf } from "./openings";
import type { Writer } from "./writer";

export function windowOf(guards: Guards) {
  const low = guards.number("low", { otherwise: digits(usualWindow.low), need: aboveZero });
  const high = guards.number("high", { otherwise: digits(usualWindow.high), need: aboveZero });
  return { low, high };
}

export const rangeStatusWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const P = guards.number("pressure", { blank: "nothing yet" });
    const code = plain(rangeCode, { P, ...windowOf(guards) });
    return guards.result(`CHOOSE(3+${code},"reversed","below","in range","above")`);
  },
};

const whole = { labels: "whole", areas: "whole", boxes: "whole" } as const;

export const nextOpeningWriter: Writer = {
  kinds: whole,
  write(call) {
    const list = listOf(call);
    if (typeof list === "string") return list;
    if (list.isTooLarge) throw new Left("a box of more than ten openings");
    const guards = new Guards(call);
    const P = guards.number("pressure", { blank: "nothing yet", need: aboveZero });
    guards.number("area", { need: aboveZero });
    const { low, high } = windowOf(guards);
    guards.text("box");
    const next = bestSet(call, list, { P: far(call, "pressure"), A: far(call, "area") });
    return guards.result(`IF(AND(${P}>=${low},${P}<=${high}),"keep",${next})`);
  },
};
