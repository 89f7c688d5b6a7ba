import { findDuct, findDuty, findFan } from "../../editions";
import { ductLeft, matchTolerance } from "../../formulas";
import { designMatch, leastEfficacy, longestDuct, loudest, makeupAir } from "../rules";
import { aboveZero, notNegative } from "./given";
import { lookedUp } from "./looked-up";
import { flowUnit } from "./required";
import { withUnit } from "./say";
import type { Working } from "./working";

const positive = { refuse: aboveZero };
const wholeNumber = {
  refuse: (value: number) =>
    Number.isInteger(value) && value >= 0 ? undefined : "give a whole number, 0 or more",
};

export const equipment = {
  MIN_EFFICACY: {
    title: "Least flow for each watt",
    takes: ["edition", "fanKind", "flow", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const flow = given.optionalNumber("flow", positive);
      const fan = findFan(given.text("fanKind"));
      return lookedUp(leastEfficacy(given.text("edition"), fan, flow, system), "cfm/W", system);
    },
  },
  MAX_SONE: {
    title: "Loudest rating allowed",
    takes: ["edition", "duty", "flow", "remote", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const code = given.text("edition");
      const duty = findDuty(given.text("duty"));
      const flow = given.optionalNumber("flow", positive);
      const remote = given.yesNo("remote") ?? false;
      return lookedUp(loudest(code, duty, flow, remote, system), "sone", system);
    },
  },
  DUCT_LIMIT: {
    title: "Longest exhaust duct",
    takes: ["edition", "ductKind", "diameter", "ratedFlow", "elbows", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const code = given.text("edition");
      const duct = {
        kind: findDuct(given.text("ductKind")),
        diameter: given.number("diameter", positive),
        ratedFlow: given.number("ratedFlow", positive),
        elbows: given.optionalNumber("elbows", wholeNumber) ?? 0,
      };
      return lookedUp(longestDuct(code, duct, system), "ft", system, [ductLeft]);
    },
  },
  MAKEUP_AIR: {
    title: "Whether makeup air is needed",
    takes: ["edition", "flow", "appliance", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const code = given.text("edition");
      const flow = given.number("flow", positive);
      return lookedUp(makeupAir(code, flow, given.yesNo("appliance"), system), "1", system);
    },
  },
  DESIGN_MATCH: {
    title: "Whether a flow lies within the tolerance of its design",
    takes: ["programme", "design", "measured", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const programme = given.text("programme");
      const design = given.number("design", positive);
      const measured = given.number("measured", { refuse: notNegative });
      const match = designMatch(programme, design, measured, system);
      const grounds = lookedUp(match, flowUnit, system, [matchTolerance]);
      const [low, high, own] = [match.lowest, match.highest, measured].map((each) =>
        withUnit(each, flowUnit, system),
      );
      return { ...grounds, words: [...(grounds.words ?? []), `${own} against ${low} to ${high}`] };
    },
  },
} satisfies Record<string, Working>;
