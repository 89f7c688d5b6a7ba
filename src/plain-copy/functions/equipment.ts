import { plain } from "../../algebra";
import { ductLeft, matchTolerance } from "../../formulas";
import {
  designTolerances,
  ductCodes,
  ductLengths,
  efficacies,
  makeupLimits,
  soundLimits,
} from "../aids/tables/equipment";
import { digits, endless, sumOver, wrong } from "../native-text";
import { aboveZero, Guards, wholeNumber, zeroOrMore } from "./guards";
import { byEdition, far, foundBy, nameNumber, rowWhere, systemText, yesNo } from "./names";
import type { Call, Writer } from "./writer";

const edition = (call: Call) => nameNumber(call, "edition", "edition");

function optional(call: Call, guards: Guards, name: string, need = aboveZero): void {
  if (call.has(name)) guards.number(name, { blank: "allowed", need });
}

export const minEfficacyWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    optional(call, guards, "flow");
    const table = call.aids.tables.get(efficacies);
    const own = [
      `${table.column("Edition no.")}=${edition(call)}`,
      `${table.column("System")}=${systemText(call)}`,
      `${table.column("Fan no.")}=${nameNumber(call, "fan", "fanKind")}`,
    ];
    const flow = far(call, "flow");
    const count = call.step("rows for such a fan", sumOver("1", own));
    const byFlow = sumOver(table.column("No."), [
      ...own,
      `${table.column("Flow from")}<=${flow}`,
      `${table.column("Flow below")}>${flow}`,
    ]);
    const only = sumOver(table.column("No."), own);
    const formula = `IF(${count}=1,${only},IF(ISNUMBER(${flow}),${byFlow},0))`;
    const rule = foundBy(call, table, formula);
    return byEdition(call, guards, { kind: "fanKind" }, [], rule.orNone(rule.of("Least, cfm/W")));
  },
};

export const maxSoneWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    optional(call, guards, "flow");
    const rule = rowWhere(call, soundLimits, { "Edition no.": edition(call) });
    const duty = nameNumber(call, "duty", "duty");
    const flow = far(call, "flow");
    const system = systemText(call);
    const exempt = `IF(${system}="si",${rule.of("Exempt above, si")},${rule.of("Exempt above, ip")})`;
    const limit = `IF(${duty}=1,${rule.of("On demand, sones")},${rule.of("Continuous, sones")})`;
    const byFlow = `IF(ISNUMBER(${flow}),IF(${exempt}=0,${wrong("not stated in these units")},IF(${flow}>${exempt},"no limit",${limit})),${limit})`;
    const known = `IF(${duty}=0,${wrong("duty: say on demand or continuous")},IF(${yesNo(call, "remote")}=1,"no limit",${byFlow}))`;
    return byEdition(call, guards, { kind: "duty" }, ["remote"], rule.orNone(known));
  },
};

export const ductLimitWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    guards.number("diameter", { need: aboveZero });
    const flow = guards.number("ratedFlow", { blank: "nothing yet", need: aboveZero });
    if (call.has("elbows"))
      guards.number("elbows", {
        blank: "allowed",
        need: wholeNumber,
      });
    const no = edition(call);
    const rule = rowWhere(call, ductCodes, { "Edition no.": no });
    const duct = nameNumber(call, "duct", "ductKind");
    const lengths = call.aids.tables.get(ductLengths);
    const L0 = call.step(
      "length of straight duct",
      sumOver(lengths.column("Length, ft"), [
        `${lengths.column("Edition no.")}=${no}`,
        `${lengths.column("Duct no.")}=${duct}`,
        `${lengths.column("Diameter from, in")}<=${far(call, "diameter")}`,
        `${lengths.column("Diameter below, in")}>${far(call, "diameter")}`,
        `${lengths.column("Flow above, cfm")}<${far(call, "ratedFlow")}`,
        `${lengths.column("Flow to, cfm")}>=${far(call, "ratedFlow")}`,
      ]),
    );
    const elbows = call.at("elbows")?.text;
    const n = elbows ? `MAX(0,IF(ISNUMBER(${elbows}),${elbows},0)-${rule.of("Free elbows")})` : "0";
    const left = plain(ductLeft, { L0, e: rule.of("Each elbow, ft"), n });
    const length = `IF(${L0}>=${digits(endless)},"no limit",IF(AND(${L0}>0,${left}>0),${left},"not allowed"))`;
    const inIp = `${systemText(call)}="ip"`;
    const kind = call.at("ductKind");
    const isBlank = kind ? `TRIM(${kind.text})=""` : "TRUE";
    const flaw = `IF(${duct}=0,${wrong("duct kind: say flex or smooth")},IF(${flow}>${rule.of("Most flow, cfm")},${wrong("beyond the end of the table")},${length}))`;
    const stated = `IF(${inIp},${flaw},${wrong("stated in ft and in only")})`;
    const limit = `IF(${isBlank},NA(),${rule.orNone(stated)})`;
    return byEdition(call, guards, {}, ["ductKind"], limit);
  },
};

export const makeupAirWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    const flow = guards.number("flow", { blank: "nothing yet", need: aboveZero });
    const rule = rowWhere(call, makeupLimits, {
      "Edition no.": edition(call),
      System: systemText(call),
    });
    const answer = yesNo(call, "appliance");
    const ask = wrong("say whether such an appliance is inside");
    const beside = `IF(${answer}=1,"needed",IF(${answer}=0,"not needed",${ask}))`;
    const limit = `IF(${answer}=0,${rule.of("Without an appliance")},${rule.of("Above, cfm or L/s")})`;
    const above = `IF(${rule.of("Only with an appliance")}=1,${beside},"needed")`;
    // The answer is read even where the flow settles it.
    const needed = `IF(AND(${answer}<9,${flow}<=${limit}),"not needed",${above})`;
    return byEdition(call, guards, {}, ["appliance"], rule.orNone(needed));
  },
};

/** Sums and differences of decimals may miss their limit by a last digit. */
const hair = "1E-9";

export const designMatchWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    guards.units();
    const D = guards.number("design", { need: aboveZero });
    const Q = guards.number("measured", { blank: "nothing yet", need: zeroOrMore });
    const rule = rowWhere(call, designTolerances, {
      "Edition no.": nameNumber(call, "edition", "programme"),
      System: systemText(call),
    });
    const d = `(${plain(matchTolerance, { D, t: rule.of("Within"), s: rule.of("Share") })})`;
    const match = `IF(${Q}<${D}-${d}-${hair},"low",IF(${Q}>${D}+${d}+${hair},"high","matches"))`;
    return byEdition(call, guards, { edition: "programme" }, [], rule.orNone(match));
  },
};
