import { plain } from "../../algebra";
import { betweenTwoRows, onRate, runningRate } from "../../formulas";
import { runningRules, runTimeFactors } from "../aids/tables/running";
import { sumOver, wrong } from "../native-text";
import { aboveZero, Guards, type Need } from "./guards";
import { byEdition, far, foundBy, nameNumber, rowWhere } from "./names";
import type { Call, Writer } from "./writer";

const shareOn: Need = {
  text: (x) => `AND(${x}>0,${x}<=1)`,
  met: (x) => x > 0 && x <= 1,
  say: "give a share of the time above 0 and up to 1",
};

export const onRateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.number("rate", { blank: "nothing yet", need: aboveZero });
    guards.number("runShare", { need: shareOn });
    if (call.has("cycleHours")) guards.number("cycleHours", { blank: "allowed", need: aboveZero });
    return byEdition(call, guards, {}, [], rateWhileOn(call));
  },
};

function rateWhileOn(call: Call): string {
  const [R, f, given] = [far(call, "rate"), far(call, "runShare"), far(call, "cycleHours")];
  const no = nameNumber(call, "edition", "edition");
  const rule = rowWhere(call, runningRules, { "Edition no.": no });
  const hours = call.step(
    "hours of a cycle",
    `IF(ISNUMBER(${given}),${given},${rule.of("Hours")})`,
  );
  const factors = call.aids.tables.get(runTimeFactors);
  const row = foundBy(
    call,
    factors,
    sumOver(factors.column("No."), [
      `${factors.column("Edition no.")}=${no}`,
      `${factors.column("Share above")}<${f}`,
      `${factors.column("Share to")}>=${f}`,
    ]),
  );
  const between = plain(betweenTwoRows, {
    x: f,
    x1: row.of("Share above"),
    y1: row.of("Factor at the lower"),
    x2: row.of("Share to"),
    y2: row.of("Factor at the upper"),
  });
  const m = `IF(${f}=${row.of("Share to")},${row.of("Factor at the upper")},${between})`;
  const times = `(${rule.of("Hours")}/${hours})`;
  const fits = `AND(${times}>=1-1E-9,ABS(${times}-ROUND(${times},0))<=1E-9)`;
  const isEnough = `AND(${f}>=${rule.of("Least share")},${row.row}>0)`;
  const inSegments = `IF(AND(${fits},${isEnough}),${plain(runningRate, { R, m })},${wrong("the share or the cycle does not fit the segments of this edition")})`;
  const inCycles = `IF(${hours}>${rule.of("Hours")},${wrong("a longer cycle than this edition averages plainly")},${plain(onRate, { R, e: "1", f })})`;
  const rate = `IF(${rule.of("Kind")}=1,${inSegments},${inCycles})`;
  return call.step("flow while on", rule.orNone(rate));
}
