import { plain } from "../../algebra";
import { meanSpread } from "../../formulas";
import { normalQuantile, usualChance } from "../../spread";
import { digits, wrong } from "../native-text";
import type { Guards, Need } from "./guards";
import type { Call } from "./writer";

/** Repeated readings side by side, as any sheet writes them. */
export interface Readings {
  readonly mean: string;
  readonly count: string;
  readonly span: string;
  /** Standard spread of the mean; 0 of one reading, which has no scatter to tell. */
  readonly spread: string;
}

/** Guards a row of readings: blanks are passed over, one that will not do spoils the row. */
export function readings(call: Call, guards: Guards, need?: Need): Readings {
  const { text, far } = call.across("readings");
  const filled = `SUMPRODUCT((TRIM(${text})<>"")*1)`;
  const meets = need ? `*(${need.text(text)})` : "*1";
  const sound = `SUMPRODUCT(ISNUMBER(${text})${meets})`;
  const flaw = wrong(`readings: ${need?.say ?? "not numbers"}`);
  guards.checkEntered(
    `IF(ISERROR(SUM(${text})),SUM(${text}),IF(${filled}=0,2,IF(${filled}=${sound},0,${flaw})))`,
  );
  const n = `COUNT(${far})`;
  return {
    mean: `AVERAGE(${far})`,
    count: n,
    span: `(MAX(${far})-MIN(${far}))`,
    spread: `IF(${n}>1,${plain(meanSpread, { s: `STDEV(${far})`, n })},0)`,
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
  call: Call,
  { u, dof, expanded }: { readonly u: string; readonly dof: string; readonly expanded: string },
): string {
  if (call.side === 0) return u;
  return call.side === 1 ? `IF(${dof}=0,"infinite",${dof})` : expanded;
}
