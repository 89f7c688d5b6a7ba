/** A number as text with the minus sign of print; a "-" of an exponent stays. */
export function numberText(value: number): string {
  return value < 0 ? `−${-value}` : String(value === 0 ? 0 : value);
}

/** So many significant digits at most: 51.36, 0.0214, 1.96. */
export function significant(value: number, digits = 6): string {
  return numberText(Number(value.toPrecision(digits)));
}

/** So many decimals at most: 9.6, 27. */
export function fixed(value: number, decimals = 1): string {
  return numberText(Number(value.toFixed(decimals)));
}

/** One decimal, more where the number is small. */
export function shown(value: number): string {
  const magnitude = Math.abs(value);
  return fixed(value, magnitude >= 1 || magnitude === 0 ? 1 : magnitude >= 0.1 ? 2 : 3);
}

/** Two numbers that differ, each as shown, or with as many decimals as it takes to show that. */
export function shownApart(a: number, b: number): [string, string] {
  let pair: [string, string] = [shown(a), shown(b)];
  for (let decimals = 2; decimals < 6 && pair[0] === pair[1] && a !== b; decimals++)
    pair = [fixed(a, decimals), fixed(b, decimals)];
  return pair;
}

/** A number in a formula: fifteen digits at most, as a spreadsheet keeps them. */
export function formulaNumber(value: number): string {
  return String(Number(value.toPrecision(15))).replace("e", "E");
}
