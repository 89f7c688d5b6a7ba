import type { Need } from "../contract/need";

export const chanceNeed: Need = {
  from: 0.5,
  below: 1,
  say: "give a chance from 0.5 to below 1, such as 0.95",
};

export const spreadNeed: Need = { from: 0, say: "give a spread of 0 or more" };

/** The chance that a flow truly meets its required rate, as a native formula. */
export function nativeChance(Q: string, u: string, R: string): string {
  return `IF(${u}=0,IF(${Q}>=${R},1,0),NORMSDIST((${Q}-${R})/${u}))`;
}
