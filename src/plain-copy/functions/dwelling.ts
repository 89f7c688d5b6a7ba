import { plain } from "../../algebra";
import {
  balancedRate,
  creditCapped,
  fanRateAfterCredit,
  fanRateAfterExcess,
  infiltrationByLeakageIp,
  infiltrationByLeakageSi,
  infiltrationShort,
  rateWithDeficits,
  roomDeficit,
  unbalancedShare,
} from "../../formulas";
import {
  balancedReductions,
  creditRules,
  deficitRooms,
  infiltrationRules,
} from "../aids/tables/credits";
import { wrong } from "../native-text";
import { aboveZero, Guards, type Need, zeroOrMore } from "./guards";
import {
  byEdition,
  bySystemFar,
  far,
  foundBy,
  nameNumber,
  rowWhere,
  systemText,
  yesNo,
} from "./names";
import type { Call, Writer } from "./writer";

const share: Need = {
  text: (x) => `AND(${x}>=0,${x}<=1)`,
  met: (x) => x >= 0 && x <= 1,
  say: "give a share from 0 to 1",
};

const edition = (call: Call) => nameNumber(call, "edition", "edition");

export const infiltrationWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    const Q50 = guards.number("leak50", { blank: "nothing yet", need: aboveZero });
    const A = guards.number("floorArea", { need: aboveZero });
    const H = guards.number("height", { need: aboveZero });
    const w = guards.number("weather", { need: aboveZero });
    const rule = rowWhere(call, infiltrationRules, {
      "Edition no.": edition(call),
      System: systemText(call),
    });
    const factor = rule.of("Factor");
    const shared = { Q50, w, H, Hr: rule.of("Reference height"), z: rule.of("Exponent") };
    const short = plain(infiltrationShort, { ...shared, c: factor });
    const [ip, si] = [infiltrationByLeakageIp, infiltrationByLeakageSi].map((formula) =>
      plain(formula, { ...shared, A, k: factor }),
    );
    const byLeakage = bySystemFar(call, ip as string, si as string);
    const rate = rule.orNone(`IF(${rule.of("Form")}="short",${short},${byLeakage})`);
    return byEdition(call, guards, {}, [], rate);
  },
};

export const fanRateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    guards.number("total", { blank: "nothing yet", need: aboveZero });
    guards.number("infiltration", { need: zeroOrMore });
    for (const [name, need] of [
      ["exposedShare", share],
      ["floorArea", aboveZero],
    ] as const)
      if (call.has(name)) guards.number(name, { blank: "allowed", need });
    return byEdition(call, guards, {}, ["balanced", "work"], fanRate(call));
  },
};

function fanRate(call: Call): string {
  const [T, all] = [far(call, "total"), far(call, "infiltration")];
  const rule = rowWhere(call, creditRules, {
    "Edition no.": edition(call),
    System: systemText(call),
  });
  const exposed = far(call, "exposedShare");
  const X = `IF(ISNUMBER(${exposed}),${exposed},1)`;
  const work = `TRIM(${far(call, "work")})`;
  const isNew = call.step(
    "work: 1 new, 0 existing",
    `IF(OR(${work}="",${work}="new"),1,IF(${work}="existing",0,${wrong("work: say new or existing")}))`,
  );
  const balanced = yesNo(call, "balanced");
  const most = rule.of("New work, most of the total");
  const capped = `AND(${isNew}=1,${most}>0)`;
  const I = call.step(
    "infiltration that may count",
    `IF(${capped},${plain(creditCapped, { I: all, T, c: most })},${all})`,
  );
  const p = call.step(
    "share of it that counts",
    `IF(AND(${rule.of("By balance")}=1,${balanced}<1),${plain(unbalancedShare, { I, T })},1)`,
  );
  const credited = plain(fanRateAfterCredit, { T, p, I, X });
  const A = far(call, "floorArea");
  const excess = plain(fanRateAfterExcess, {
    T,
    s: rule.of("Share of the excess"),
    I: all,
    d: rule.of("Default by area"),
    A,
  });
  const existing = `IF(ISNUMBER(${A}),IF(${rule.of("Default by area")}>0,${excess},${wrong("not stated in these units")}),${wrong("give floorArea")})`;
  const byRule = `IF(${rule.of("Share of the excess")}>0,IF(${isNew}=1,${T},${existing}),${credited})`;
  const unexposed = `AND(${X}<1,${rule.of("By exposure")}=0)`;
  const rate = `IF(${unexposed},${wrong("no credit by exposedShare in this edition")},${byRule})`;
  // Both answers are read even where they do not matter.
  const read = `IF(AND(${isNew}<9,${balanced}<9),${rate})`;
  return call.step("rate for the fans", rule.orNone(read));
}

export const deficitWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    const M = measuredOrNone(call, guards);
    const rule = rowWhere(call, deficitRooms, {
      "Edition no.": edition(call),
      System: systemText(call),
      "Room no.": nameNumber(call, "room", "room"),
    });
    const W = `IF(${yesNo(call, "window")}=1,${rule.of("Credit of a window")},0)`;
    const deficit = plain(roomDeficit, { R: rule.of("Rate, cfm or L/s"), M, W });
    const room = call.at("room");
    const isBlank = room ? `TRIM(${room.text})=""` : "TRUE";
    const others = ["room", "window"];
    return byEdition(call, guards, {}, others, `IF(${isBlank},NA(),${rule.orNone(deficit)})`);
  },
};

/** A measured flow; "none" is a flow of 0. */
function measuredOrNone(call: Call, guards: Guards): string {
  const operand = call.at("measured");
  if (operand?.literal !== undefined) {
    const isNone = String(operand.literal).trim().toLowerCase() === "none";
    if (isNone) return "0";
  }
  if (operand === undefined || operand.literal !== undefined)
    return guards.number("measured", { blank: "nothing yet", need: zeroOrMore });
  const x = operand.text;
  const text = wrong("measured: not a number, and not none");
  guards.checkEntered(
    `IF(ISNUMBER(${x}),IF(${x}>=0,0,${wrong(`measured: ${zeroOrMore.say}`)}),IF(TRIM(${x})="none",0,IF(TRIM(${x})="",2,${text})))`,
  );
  return `IF(ISNUMBER(${x}),${x},0)`;
}

export const deficitRateWriter: Writer = {
  kinds: { deficits: "whole" },
  write(call) {
    const guards = new Guards(call);
    const T = guards.number("total", { blank: "nothing yet", need: aboveZero });
    const table = call.aids.tables.get(deficitRooms);
    const no = edition(call);
    // Every room of an edition has the same part: the first will do.
    const rule = foundBy(
      call,
      table,
      `IF(SUMPRODUCT((${table.column("Edition no.")}=${no})*1)=0,0,MATCH(${no},${table.column("Edition no.")},0))`,
    );
    const { text } = call.list("deficits");
    const filled = `SUMPRODUCT((TRIM(${text})<>"")*1)`;
    const sound = `SUMPRODUCT(ISNUMBER(${text})*(${text}>=0))`;
    const raised = plain(rateWithDeficits, {
      T,
      q: rule.of("Part that is added"),
      S: `SUM(${text})`,
    });
    const bad = wrong("deficits: give numbers of 0 or more");
    const summed = `IF(${filled}=0,"",IF(${filled}=${sound},${rule.orNone(raised)},${bad}))`;
    return byEdition(call, guards, {}, [], `IF(ISERROR(SUM(${text})),SUM(${text}),${summed})`);
  },
};

export const balancedRateWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const T = guards.number("rate", { blank: "nothing yet", need: aboveZero });
    const rule = rowWhere(call, balancedReductions, { "Edition no.": edition(call) });
    const answer = yesNo(call, "balancedDucted");
    const reduced = plain(balancedRate, {
      T,
      r: `IF(${answer}=1,${rule.of("Reduction")},-${rule.of("Increase")})`,
    });
    const rate = `IF(${answer}<0,NA(),${rule.orNone(reduced)})`;
    return byEdition(call, guards, {}, ["balancedDucted"], rate);
  },
};
