import { fixed } from "../../cells";
import type { System } from "../../editions";
import type { Budget } from "../../spread";
import type { Answer } from "../contract/rule";
import { flowUnits } from "../contract/ruling";
import { withUnit } from "../contract/say";

export const gum = {
  work: "JCGM 100:2008",
  clause: "5.1.2 and G.4",
  mark: "from memory",
} as const;

/** Beyond so many degrees of freedom Student's t is the normal quantile to three digits. */
const mostTold = 9999;

/** A budget as three cells: standard spread, degrees of freedom, and ± at 95 %. */
export function budgetAnswer(
  budget: Budget,
  system: System | undefined,
  sums: ReturnType<Answer["why"]>["sums"] = [],
): Answer {
  const { u, dof, expanded, lines } = budget;
  return {
    gives: [u, dof === Infinity ? "infinite" : dof, expanded],
    why: () => {
      const [spread, around] = [u, expanded].map((each) => withUnit(each, flowUnits, system));
      const freedom = dof > mostTold ? `over ${mostTold}` : Math.floor(dof);
      return {
        budget,
        sums,
        words: [...budgetLines(lines, system), "the squares of these add up"],
        sources: [gum],
        result: `${spread}, with ${freedom} degrees of freedom; ± ${around} at 95 %`,
      };
    },
  };
}

/** The lines of a budget in words: what may be off, how far, and what that does to the flow. */
export function budgetLines(lines: Budget["lines"], system: System | undefined): string[] {
  return lines.map(({ shown, label, u, unit, contribution, share }) => {
    const off = withUnit(u, unit, system);
    const does = withUnit(contribution, flowUnits, system);
    return `${label}: ${shown} ± ${off} is ${does}, ${fixed(share * 100)} % of the variance`;
  });
}
