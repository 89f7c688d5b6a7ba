import { plain } from "../../algebra";
import {
  airChangeRateIp,
  airChangeRateSi,
  dwellingRateBounded,
  dwellingRateEquation,
  dwellingRateLarger,
  rateForPersons,
} from "../../formulas";
import { dwellingCells, dwellingRules, furtherPersons } from "../aids/tables/dwelling-rates";
import { roomRates } from "../aids/tables/room-rates";
import { sumOver, wrong } from "../native-text";
import { aboveZero, Guards } from "./guards";
import { type Found, far, foundBy, nameNumber, rowWhere, systemText } from "./names";
import type { Call, Writer } from "./writer";

export const roomRateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const V = call.has("volume")
      ? guards.number("volume", { blank: "allowed", need: aboveZero })
      : undefined;
    const edition = guards.text("edition");
    const room = guards.text("room");
    const duty = guards.text("duty");
    const rule = rowWhere(call, roomRates, {
      "Edition no.": nameNumber(call, "edition", "edition"),
      System: systemText(call),
      "Room no.": nameNumber(call, "room", "room"),
      "Duty no.": nameNumber(call, "duty", "duty"),
    });
    const fixed = rule.of("Rate, cfm or L/s");
    const n = rule.of("Air changes an hour");
    const none = wrong("this rate goes by air changes: give the volume of the room");
    const onlyFixed = `IF(AND(${fixed}>0,${rule.of("Both")}=0),${fixed},${none})`;
    const rate = V ? byVolume(V) : onlyFixed;
    return guards.result(
      `IF(AND(${room}="",${duty}=""),"",IF(OR(${edition}="",${room}="",${duty}=""),NA(),${rule.orNone(rate)}))`,
    );

    function byVolume(V: string): string {
      const [ip, si] = [airChangeRateIp, airChangeRateSi].map((each) => plain(each, { n, V }));
      const changed = guards.bySystem(isSi, ip as string, si as string);
      const both = `IF(${rule.of("Both")}=1,MAX(${fixed},${changed}),MIN(${fixed},${changed}))`;
      const either = `IF(${fixed}>0,${both},${changed})`;
      return `IF(AND(ISNUMBER(${V}),${n}>0),${either},${onlyFixed})`;
    }
  },
};

export const dwellingRateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    guards.number("floorArea", { blank: "nothing yet", need: aboveZero });
    const N = guards.number("bedrooms");
    if (call.has("occupants")) guards.number("occupants", { blank: "allowed" });
    const edition = guards.text("edition");
    guards.text("method");
    const rate = call.has("occupants") ? withPersons(call) : dwellingRate(call);
    const whole = `IF(AND(${N}>=0,${N}=INT(${N})),${rate},${wrong("bedrooms: give a whole number, 0 or more")})`;
    return guards.result(`IF(${edition}="",NA(),${whole})`);
  },
};

/** The step that gives a dwelling's rate, or an error where the edition sets none. */
function dwellingRate(call: Call): string {
  const [A, N] = [far(call, "floorArea"), far(call, "bedrooms")];
  const rule = dwellingRule(call);
  const counted = call.step("bedrooms that count", `MAX(${N},${rule.of("Least bedrooms")})`);
  const cells = call.aids.tables.get(dwellingCells);
  const listed = call.step(
    "number in the table of dwelling rates",
    sumOver(cells.column("Rate, cfm or L/s"), [
      `${cells.column("Rule no.")}=${rule.row}`,
      `${cells.column("Floor area above")}<${A}`,
      `${cells.column("Floor area to")}>=${A}`,
      `${cells.column("Bedrooms from")}<=${counted}`,
      `${cells.column("Bedrooms to")}>=${counted}`,
    ]),
  );
  const a = rule.of("Rate by area");
  const b = rule.of("Rate by person");
  const equation = `MAX(${rule.of("Least rate")},${plain(dwellingRateEquation, { a, A, b, N: counted })})`;
  const table = `IF(${listed}>0,${listed},${wrong("beyond the end of the table")})`;
  const last = rule.of("Last listed");
  const further = `IF(${counted}<=${last},0,IF(${b}<0,${wrong("beyond the bedrooms that are listed")},(${counted}-${last})*${b}))`;
  const larger = plain(dwellingRateLarger, { a, A, B: `(${listed}+${further})` });
  const bounds = { a, A, lo: rule.of("Least rate"), hi: rule.of("Most rate") };
  const bounded = plain(dwellingRateBounded, bounds);
  const way = (method: string) => `${rule.of("Method")}="${method}"`;
  return call.step(
    "dwelling rate",
    rule.orNone(
      `IF(${way("equation")},${equation},IF(${way("table")},${table},IF(${way("larger")},${larger},${bounded})))`,
    ),
  );
}

function dwellingRule(call: Call): Found {
  const rules = call.aids.tables.get(dwellingRules);
  const of = (which: string) =>
    sumOver(rules.column("No."), [
      `${rules.column("Edition no.")}=${nameNumber(call, "edition", "edition")}`,
      `${rules.column("System")}=${systemText(call)}`,
      which,
    ]);
  const usual = of(`${rules.column("Usual")}=1`);
  const method = `TRIM(${far(call, "method")})`;
  const named = of(`${rules.column("Method")}=${method}`);
  const formula = call.has("method") ? `IF(${method}="",${usual},${named})` : usual;
  return foundBy(call, rules, formula);
}

/** The rate with what each person above bedrooms + 1 adds. */
function withPersons(call: Call): string {
  const R = dwellingRate(call);
  const n = far(call, "occupants");
  const rule = rowWhere(call, furtherPersons, {
    "Edition no.": nameNumber(call, "edition", "edition"),
    System: systemText(call),
  });
  const N = `MAX(${far(call, "bedrooms")},${rule.of("Least bedrooms")})`;
  const raised = plain(rateForPersons, { R, b: rule.of("Rate, cfm or L/s"), n, N });
  const whole = `IF(AND(${n}>=0,${n}=INT(${n})),${rule.orNone(raised)},${wrong("occupants: give a whole number, 0 or more")})`;
  return call.step("dwelling rate for its persons", `IF(ISNUMBER(${n}),${whole},${R})`);
}
