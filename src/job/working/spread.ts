import { fixed } from "../../cells";
import { type Budget, repeats } from "../../spread";
import { flowBudget, unboxedBudget } from "../rules";
import { aboveZero, type Given, notNegative, roomMinusBox } from "./given";
import { constantOf } from "./openings";
import { flowUnit } from "./required";
import { withUnit } from "./say";
import type { Grounds, Working } from "./working";

const positive = { refuse: aboveZero };
const zeroOrMore = { refuse: notNegative };
const readable = (value: number) => roomMinusBox(value) ?? aboveZero(value);
const gum = { work: "JCGM 100:2008", clause: "5.1.2 and G.4", mark: "from memory" } as const;

export const spread = {
  FLOW_SPREAD: {
    title: "Spread of a flow",
    takes: [
      "readings",
      "area",
      "areaLimit",
      "constant",
      "constantSpread",
      "meterPercent",
      "meterFloor",
      "resolution",
      "zeroLimit",
      "units",
    ],
    lists: ["readings"],
    explain: (given) => {
      const readings = given.rowNumbers("readings", readable);
      const budget = flowBudget({
        readings,
        pressure: repeats(readings).mean,
        area: given.number("area", positive),
        areaLimit: given.number("areaLimit", zeroOrMore),
        constant: constantOf(given),
        constantSpread: given.number("constantSpread", zeroOrMore),
        ...manometer(given),
      });
      return budgetGrounds(budget, given.system);
    },
  },
  UNBOXED_SPREAD: {
    title: "Spread of a flow without the box",
    takes: [
      "area",
      "pressure",
      "area2",
      "pressure2",
      "constant",
      "meterPercent",
      "meterFloor",
      "areaLimit",
      "areaLimit2",
      "constantSpread",
      "resolution",
      "zeroLimit",
      "units",
    ],
    explain: (given) => {
      const reading = (tail: string) => ({
        area: given.number(`area${tail}`, positive),
        areaLimit: given.number(`areaLimit${tail}`, zeroOrMore),
        pressure: given.number(`pressure${tail}`, { refuse: readable }),
      });
      const budget = unboxedBudget({
        first: reading(""),
        second: reading("2"),
        constant: constantOf(given),
        constantSpread: given.number("constantSpread", zeroOrMore),
        ...manometer(given),
      });
      return {
        budget,
        words: [
          ...budgetLines(budget.lines, given.system),
          "one manometer is off the same way both times; the rest is independent",
        ],
        sources: [gum],
        gives: [budget.u],
        unit: flowUnit,
      };
    },
  },
} satisfies Record<string, Working>;

function manometer(given: Given) {
  return {
    meterPercent: given.number("meterPercent", zeroOrMore),
    meterFloor: given.number("meterFloor", zeroOrMore),
    resolution: given.has("resolution") ? given.number("resolution", zeroOrMore) : undefined,
    zeroLimit: given.has("zeroLimit") ? given.number("zeroLimit", zeroOrMore) : undefined,
  };
}

/** Beyond so many degrees of freedom Student's t is the normal quantile to three digits. */
const mostTold = 9999;

/** A budget with what comes of it: standard spread, degrees of freedom, and ± at 95 %. */
export function budgetGrounds(budget: Budget, system: Given["system"]): Grounds {
  const { u, dof, expanded, lines } = budget;
  const [spread, around] = [u, expanded].map((each) => withUnit(each, flowUnit, system));
  const freedom = dof > mostTold ? `over ${mostTold}` : Math.floor(dof);
  return {
    budget,
    words: [...budgetLines(lines, system), "the squares of these add up"],
    sources: [gum],
    gives: [u, dof === Infinity ? "infinite" : dof, expanded],
    result: `${spread}, with ${freedom} degrees of freedom; ± ${around} at 95 %`,
  };
}

/** The lines of a budget in words: what may be off, how far, and what that does to the flow. */
function budgetLines(lines: Budget["lines"], system: Given["system"]): string[] {
  return lines.map(({ shown, label, u, unit, contribution, share }) => {
    const off = withUnit(u, unit, system);
    const does = withUnit(contribution, flowUnit, system);
    return `${label}: ${shown} ± ${off} is ${does}, ${fixed(share * 100)} % of the variance`;
  });
}
