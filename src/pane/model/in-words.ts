/** Below this, what is left of a number is the rounding of its parts. */
const nothing = 1e-9;

/** So many significant digits: 0.0214, 1.96, 12.3. "–" where there is no number. */
export function digits(value: number, count = 3): string {
  if (Number.isNaN(value)) return "–";
  if (Math.abs(value) < nothing) return "0";
  return withMinus(String(Number(value.toPrecision(count))));
}

/** A share or chance as per cent, with its end kept from looking certain. */
export function percentOf(share: number): string {
  if (Number.isNaN(share)) return "–";
  if (share > 0.999 && share < 1) return "above 99.9 %";
  if (share < 0.001 && share > 0) return "below 0.1 %";
  return `${withMinus(String(Number((100 * share).toFixed(1))))} %`;
}

/** A difference in per cent with its sign: "+1.2 %", "−0.8 %". */
export function signedPercent(value: number): string {
  if (Number.isNaN(value)) return "–";
  const text = withMinus(String(Number(value.toFixed(1))));
  return `${value >= 0.05 ? "+" : ""}${text} %`;
}

/** "2026-10-05" of a workbook's serial number; "" for none. `offset` where its days count from 1904. */
export function dayOf(serial: number, offset = 0): string {
  if (!(serial > 0) || !Number.isFinite(serial)) return "";
  const day = new Date((Math.floor(serial) + offset - 25569) * 86_400_000);
  return Number.isNaN(day.getTime()) ? "" : day.toISOString().slice(0, 10);
}

/** What went wrong as a sentence. */
export function sentenceOf(problem: unknown): string {
  const text = problem instanceof Error ? problem.message : String(problem);
  if (text === "no edition") return "Name an edition on the Job sheet, such as IRC-2021.";
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`.replace(/\.\.$/, ".");
}

function withMinus(text: string): string {
  return text.replace(/^-/, "−");
}
