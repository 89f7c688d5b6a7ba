/**
 * A number as it reads in so many characters: never cut, which would show another number. One
 * without a format of its own is rounded, as a spreadsheet does; any other becomes "####".
 */
export function fitNumber(text: string, value: number, room: number, isGeneral: boolean): string {
  if (text.length <= room) return text;
  if (isGeneral)
    for (let digits = Math.min(10, room); digits > 0; digits--) {
      const rounded = String(Number(value.toPrecision(digits)));
      // The whole part is kept: only decimals are rounded away.
      if (rounded.length <= room && Math.abs(value) < 10 ** digits) return rounded;
    }
  return "#".repeat(Math.max(1, room));
}
