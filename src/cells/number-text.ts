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

/** Two numbers that differ, each with as many decimals as it takes to show that. */
export function shownApart(a: number, b: number): [string, string] {
  for (let decimals = 1; decimals < 6 && a !== b; decimals++)
    if (fixed(a, decimals) !== fixed(b, decimals)) return [fixed(a, decimals), fixed(b, decimals)];
  return [shown(a), shown(b)];
}

/** A number in a formula: fifteen digits at most, as a spreadsheet keeps them. */
export function formulaNumber(value: number): string {
  return String(Number(value.toPrecision(15))).replace("e", "E");
}
