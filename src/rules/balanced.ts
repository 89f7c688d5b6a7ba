import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { balancedRules, findRule } from "../editions";
import { balancedRate } from "../formulas";
import type { RequiredRate } from "./room-rate";
import { worked } from "./ruling";

/** The dwelling rate of a code where the system is balanced and ducted as it states, or is not. */
export function rateIfBalanced(
  code: string,
  rate: number,
  balancedAndDucted: boolean,
): RequiredRate {
  const rule = findRule("reduction for balanced systems", balancedRules, code);
  const { reduction, increase, source } = rule;
  if (!(rate > 0)) throw new InputError(`rate ${rate}: give a number above 0`);
  // A system that is neither balanced nor distributed: what is one of them needs less.
  const given = { T: rate, r: balancedAndDucted ? reduction : -(increase?.neither ?? 0) };
  return {
    rate: oneValue(balancedRate, given),
    source,
    working: worked(balancedRate, given, "ip"),
  };
}
