import { fixed, significant } from "../../cells";
import { asSentence } from "../../job";

/** Below this, what is left of a number is the rounding of its parts. */
const nothing = 1e-9;

/** So many significant digits: 0.0214, 1.96, 12.3. "–" where there is no number. */
export function digits(value: number, count = 3): string {
  if (Number.isNaN(value)) return "–";
  if (Math.abs(value) < nothing) return "0";
  return significant(value, count);
}

/** A share or chance as per cent, with its end kept from looking certain. */
export function percentOf(share: number): string {
  if (Number.isNaN(share)) return "–";
  if (share > 0.999 && share < 1) return "above 99.9 %";
  if (share < 0.001 && share > 0) return "below 0.1 %";
  return `${fixed(100 * share)} %`;
}

/** A difference in per cent with its sign: "+1.2 %", "−0.8 %". */
export function signedPercent(value: number): string {
  if (Number.isNaN(value)) return "–";
  return `${value >= 0.05 ? "+" : ""}${fixed(value)} %`;
}

/** What went wrong as a sentence. */
export function sentenceOf(problem: unknown): string {
  const text = problem instanceof Error ? problem.message : String(problem);
  if (text === "no edition") return "Name an edition on the Job sheet, such as IRC-2021.";
  return asSentence(text).replace(/\.\.$/, ".");
}
