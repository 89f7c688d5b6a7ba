/** A colour as six hexadecimal digits. Throws a RangeError for anything else. */
export function checkedColor(rgb: string): string {
  if (!/^[0-9A-Fa-f]{6}$/.test(rgb)) {
    throw new RangeError(`"${rgb}" is not a colour; give six hexadecimal digits such as FFCC00.`);
  }
  return rgb.toUpperCase();
}
