const zero = 48;
const dot = 46;
const minus = 45;
/** Ten times this and a digit more are still whole numbers that a number holds exactly. */
const most = Math.floor(Number.MAX_SAFE_INTEGER / 10) - 1;

/** Powers of ten that a number holds exactly. */
const powers = Array.from({ length: 23 }, (_, power) => 10 ** power);

/**
 * The number written in text from a place to the next "<", or NaN where it is not as plain as
 * -12.5. Where both the digits and the power of ten are exact, their quotient is the number
 * nearest to what is written, as Number gives it.
 */
export function plainNumber(text: string, from: number): number {
  let at = from;
  const isNegative = text.charCodeAt(at) === minus;
  if (isNegative) at++;
  const start = at;
  let digits = 0;
  let decimals = -1;
  let isLong = false;
  for (; ; at++) {
    const code = text.charCodeAt(at);
    const digit = code - zero;
    if (digit >= 0 && digit <= 9) {
      isLong ||= digits > most;
      digits = digits * 10 + digit;
      if (decimals >= 0) decimals++;
    } else if (code === dot && decimals < 0) decimals = 0;
    else if (code === 60) break;
    else return Number.NaN;
  }
  if (at === start || decimals === 0 || decimals === at - start - 1) return Number.NaN;
  if (isLong || decimals > 22) return finite(Number(text.slice(from, at)));
  const size = decimals < 0 ? digits : digits / (powers[decimals] as number);
  return isNegative ? -size : size;
}

const finite = (number: number) => (Number.isFinite(number) ? number : Number.NaN);

/** The whole number written in part of a text, or NaN where there is anything but digits. */
export function plainWhole(text: string, from: number, to: number): number {
  if (from === to || to - from > 9) return Number.NaN;
  let whole = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - zero;
    if (!(digit >= 0 && digit <= 9)) return Number.NaN;
    whole = whole * 10 + digit;
  }
  return whole;
}
