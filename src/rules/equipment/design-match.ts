import { oneValue, plain } from "../../algebra";
import { designMatchRules, findRule, type System } from "../../editions";
import { matchTolerance } from "../../formulas";
import { area, code, units } from "../arguments";
import { reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must, zeroOrMore } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, Ruling, statedIn, sum } from "../contract/ruling";
import { withUnit } from "../contract/say";
import type { NativeForm } from "../native/native";
import { designTolerances } from "../native/tables/equipment";
import type { Match } from "../outcomes";

export class DesignMatch extends Ruling<Match> {
  constructor(
    of: Ruling<Match>,
    readonly lowest: number,
    readonly highest: number,
  ) {
    super(of.value, of.source, of.system, of.parts);
  }
}

/** A sum and a difference of decimals may miss their limit by a last digit. */
const roundOff = 1e-9;

/** Whether a measured flow lies within a programme's tolerance of its design, either way. */
export function designMatch(
  programme: string,
  design: number,
  measured: number,
  system: System,
): DesignMatch {
  const rule = findRule("tolerance to a design", designMatchRules, programme, "programme");
  must("design", design, aboveZero);
  must("measured", measured, zeroOrMore);
  const given = { D: design, t: statedIn(rule.within, system, rule.code), s: rule.share };
  const tolerance = oneValue(matchTolerance, given);
  const [lowest, highest] = [design - tolerance, design + tolerance];
  const value =
    measured < lowest - roundOff ? "low" : measured > highest + roundOff ? "high" : "matches";
  const range = [measured, lowest, highest].map((each) => withUnit(each, flowUnits, system));
  const parts = [sum(matchTolerance, given), `${range[0]} against ${range[1]} to ${range[2]}`];
  return new DesignMatch(new Ruling(value, rule.source, system, parts), lowest, highest);
}

export const rule = ruleOf({
  id: "DESIGN_MATCH",
  title: "Whether a flow lies within the tolerance of its design",
  arguments: {
    programme: { ...code, ask: "name one, such as ENERGY-STAR-3.1" },
    design: area,
    measured: reading(zeroOrMore),
    units,
  },
  work: ({ programme, design, measured, units }) =>
    designMatch(programme, design, measured, units).answer(),
});

export const native: NativeForm = (native) => {
  const [D, Q] = [native.near("design"), native.near("measured")];
  const rule = native.rowWhere(designTolerances, {
    "Edition no.": native.number("programme"),
    System: native.system,
  });
  const d = `(${plain(matchTolerance, { D, t: rule.of("Within"), s: rule.of("Share") })})`;
  return rule.orNone(
    `IF(${Q}<${D}-${d}-${roundOff},"low",IF(${Q}>${D}+${d}+${roundOff},"high","matches"))`,
  );
};

export const help: Help = {
  computes: [
    "A programme may ask that a measured flow match its design, both ways: here within 15 cfm or 15 %, whichever is more. A code's least rate is another matter, see VERDICT.",
    "From memory: verify against your own copy of the programme's checklist.",
  ],
  result: '"matches", "low" or "high".',
  formulas: [matchTolerance],
  source: {
    work: "ENERGY STAR homes 3.1",
    clause: "rater field checklist, item 7.1",
    mark: "from memory",
  },
  examples: [
    {
      words: "150 cfm where 128.8 were designed: more than 15 % too much.",
      args: ["ENERGY-STAR-3.1", 128.8, 150],
      gives: "high",
    },
  ],
  troubles: [
    { when: "The programme is not known.", args: ["house rule", 80, 90] },
    { when: "The design flow is missing.", args: ["ENERGY-STAR-3.1", "", 90] },
  ],
  related: ["VERDICT", "DWELLING_RATE"],
};
