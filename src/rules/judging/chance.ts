import type { NumberArgument } from "../contract/argument";
import type { Need } from "../contract/need";
import { sixDigits } from "../contract/say";
import type { Native } from "../native/native";

export const chanceNeed: Need = {
  from: 0.5,
  below: 1,
  say: "give a chance from 0.5 to below 1, such as 0.95",
};

export const spreadNeed: Need = { from: 0, say: "give a spread of 0 or more" };

/** Degrees of freedom as the spread functions give them; without them the distribution is the normal one. */
export const freedomGiven: NumberArgument<number | undefined> & { readonly optional: true } = {
  kind: "number",
  blank: "left out",
  optional: true,
  need: { from: 1, say: 'give degrees of freedom of 1 or more, or "infinite"' },
  words: { infinite: Number.POSITIVE_INFINITY },
};

/** "the normal one", or what few degrees of freedom make of it. */
export function distributionSaid(freedom: number | undefined): string {
  return freedom === undefined || freedom === Number.POSITIVE_INFINITY
    ? "the normal one"
    : `that of Student's t with ${sixDigits(Math.floor(freedom))} degrees of freedom (JCGM 101:2008, 6.4.9)`;
}

/** Past so many degrees of freedom the expansions in 1/ν are as good as the functions. */
const mostByFunction = 2000;

const wholeFreedom = (native: Native) => `INT(${native.near("freedom")}*(1+1E-9))`;

/** The chance that a flow truly meets its required rate, as a native formula. */
export function nativeChance(native: Native): string {
  const [Q, u, R] = native.all("near", "flow", "spread", "required");
  const t = `((${Q}-${R})/${u})`;
  const normal = `NORMSDIST(${t})`;
  return `IF(${u}=0,IF(${Q}>=${R},1,0),${native.has("freedom") ? byFreedom() : normal})`;

  function byFreedom(): string {
    const n = wholeFreedom(native);
    const tail = `TDIST(ABS(${t}),${n},1)`;
    // Abramowitz and Stegun 26.7.10: the first term beside the normal distribution.
    const many = `${normal}-EXP(-(${t}^2)/2)/SQRT(2*PI())*(${t}^3+${t})/(4*${n})`;
    const student = `IF(${n}>1000000,${many},IF(${t}>0,1-${tail},${tail}))`;
    return `IF(${native.given("freedom")},${student},${normal})`;
  }
}

/** The quantile that a chance asks for, as a native formula. */
export function nativeQuantile(native: Native): string {
  const p = native.near("chance");
  const z = `NORMSINV(${p})`;
  if (!native.has("freedom")) return z;
  const n = wholeFreedom(native);
  // Abramowitz and Stegun 26.7.5.
  const many = `${z}+(${z}^3+${z})/(4*${n})+(5*${z}^5+16*${z}^3+3*${z})/(96*${n}^2)`;
  return `IF(${native.given("freedom")},IF(${n}>${mostByFunction},${many},TINV(2*(1-${p}),${n})),${z})`;
}
