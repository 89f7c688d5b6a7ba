import { plain } from "../../algebra";
import { acceptanceLimit, meetsCode } from "../../formulas";
import { rangeStatuses, usualGuardChance } from "../../job";
import { digits } from "../native-text";
import { Guards, type Need, zeroOrMore } from "./guards";
import type { Writer } from "./writer";

const chanceNeed: Need = {
  text: (x) => `AND(${x}>=0.5,${x}<1)`,
  met: (x) => x >= 0.5 && x < 1,
  say: "give a chance from 0.5 to below 1, such as 0.95",
};

/** Rounding may put a flow at the very acceptance limit a hair below its chance. */
const hair = "1E-12";

/** The chance that a flow truly meets its required rate. */
function chance(Q: string, u: string, R: string): string {
  return `IF(${u}=0,IF(${Q}>=${R},1,0),NORMSDIST((${Q}-${R})/${u}))`;
}

export const chanceMetWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const Q = guards.number("flow", { blank: "nothing yet" });
    const u = guards.number("spread", { need: zeroOrMore });
    const R = guards.number("required");
    return guards.result(chance(Q, u, R));
  },
};

export const acceptFromWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const R = guards.number("required", { blank: "nothing yet" });
    const u = guards.number("spread", { need: zeroOrMore });
    const p = guards.number("chance", { otherwise: digits(usualGuardChance), need: chanceNeed });
    return guards.result(plain(acceptanceLimit, { R, u, z: `NORMSINV(${p})` }));
  },
};

export const verdictWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const Q = guards.number("flow", { blank: "allowed" });
    const R = guards.number("required", { blank: "allowed" });
    const status = guards.earlyText("status");
    if (call.has("status")) {
      const known = ["", ...rangeStatuses].map((word) => `${status}="${word}"`).join(",");
      guards.require(`OR(${known})`, "status: not a range status");
    }
    const u = call.has("spread")
      ? guards.number("spread", { blank: "allowed", need: zeroOrMore })
      : undefined;
    const given = call.has("chance")
      ? guards.number("chance", { blank: "allowed", need: chanceNeed })
      : undefined;
    const usual = digits(usualGuardChance);
    const p = given ? `IF(ISNUMBER(${given}),${given},${usual})` : usual;
    const simple = `IF(${plain(meetsCode, { Q, R })}=1,"meets","short")`;
    const judged =
      u === undefined ? simple : `IF(ISNUMBER(${u}),${guarded(chance(Q, u, R), p)},${simple})`;
    const ranged = call.has("status")
      ? `IF(AND(${status}<>"",${status}<>"in range"),"retest",${judged})`
      : judged;
    const measured = `IF(ISNUMBER(${Q}),${ranged},"not measured")`;
    return guards.result(`IF(ISNUMBER(${R}),${measured},IF(ISNUMBER(${Q}),NA(),""))`);
  },
};

function guarded(met: string, asked: string): string {
  return `IF(${met}>=${asked}-${hair},"meets",IF(${met}<=1-${asked}+${hair},"short","too close to call"))`;
}
