import { plain } from "../../algebra";
import { meanSpread } from "../../formulas";
import { normalQuantile, usualChance } from "../../spread";
import type { Native } from "./native";
import { digits } from "./text";

/** Repeated readings side by side, as any sheet writes them. */
interface Readings {
  readonly mean: string;
  readonly count: string;
  readonly span: string;
  /** Standard spread of the mean; 0 of one reading, which has no scatter to tell. */
  readonly spread: string;
}

/** What is taken of a row of readings; a 0 counts as blank where `isZeroBlank`. */
export function readings(native: Native, isZeroBlank: boolean): Readings {
  const { far } = native.call.across("readings");
  const n = isZeroBlank ? `SUMPRODUCT(ISNUMBER(${far})*(TRIM(${far})<>"0"))` : `COUNT(${far})`;
  // Zeros passed over leave sums as they are, so that the scatter of the others comes of these.
  const about = isZeroBlank
    ? `IF(COUNT(${far})=${n},STDEV(${far}),SQRT(MAX(0,SUMSQ(${far})-SUM(${far})^2/${n})/(${n}-1)))`
    : `STDEV(${far})`;
  return {
    mean: isZeroBlank ? `SUM(${far})/${n}` : `AVERAGE(${far})`,
    count: n,
    span: `(MAX(${far})-MIN(${far}))`,
    spread: `IF(${n}>1,${plain(meanSpread, { s: about, n })},0)`,
  };
}

/**
 * Effective degrees of freedom where only the scatter of the readings has any that end: the part
 * of it in the whole, by Welch and Satterthwaite. 0 stands for infinite.
 */
export function freedom(scatter: string, u: string, count: string): string {
  return `IF(${scatter}=0,0,(${count}-1)*(${u}/${scatter})^4)`;
}

const z = normalQuantile((1 + usualChance) / 2);

/** Past so many degrees of freedom the expansion is good to 1e-9, and TINV not in every program. */
const mostByFunction = 2000;

/**
 * Student's factor for 95 %, degrees of freedom cut to a whole number; 0 stands for infinite. Many
 * of them by the expansion z + (z³ + z)/(4·ν) + … (Abramowitz and Stegun 26.7.5).
 */
export function coverage(dof: string): string {
  const [first, second] = [(z ** 3 + z) / 4, (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96];
  const whole = `INT(${dof}*(1+1E-9))`;
  const many = `${digits(z)}+${digits(first)}/${whole}+${digits(second)}/${whole}^2`;
  const few = `TINV(${digits(1 - usualChance)},${whole})`;
  return `IF(${dof}=0,${digits(z)},IF(${dof}>${mostByFunction},${many},${few}))`;
}

export function rootOfSquares(...terms: readonly string[]): string {
  return `SQRT(SUMSQ(${terms.join(",")}))`;
}

/** One of the three cells side by side: spread, degrees of freedom, half width at 95 %. */
export function sideOf(
  native: Native,
  { u, dof, expanded }: { readonly u: string; readonly dof: string; readonly expanded: string },
): string {
  if (native.side === 0) return u;
  return native.side === 1 ? `IF(${dof}=0,"infinite",${dof})` : expanded;
}
