/** The most letters that a name can have. */
export const longestSheetName = 31;

/** Names compare without case, as in Excel. */
export function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

/** Refuses a sheet name Excel would refuse. Throws a RangeError. */
export function checkSheetName(name: string, taken: readonly string[]): void {
  const refuse = (why: string) => new RangeError(`"${name}" cannot name a sheet: ${why}.`);
  if (name.trim() === "") throw refuse("it is blank");
  if (name.length > longestSheetName)
    throw refuse(`it has ${name.length} characters, and ${longestSheetName} are allowed`);
  const bad = /[[\]:*?/\\]/.exec(name);
  if (bad !== null) throw refuse(`it holds "${bad[0]}"`);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is refused
  if (/[\u0000-\u001F\uFFFE\uFFFF]/.test(name)) throw refuse("it holds a control character");
  if (name.startsWith("'") || name.endsWith("'"))
    throw refuse("it starts or ends with an apostrophe");
  if (sameName(name, "History")) throw refuse("the program keeps that name for itself");
  const other = taken.find((known) => sameName(known, name));
  if (other !== undefined) throw refuse(`the workbook has a sheet "${other}" already`);
}

/** A text made fit to be a sheet's name; `otherwise` where nothing is left of it, or Excel keeps it. */
export function sheetNameOf(text: string, otherwise: string): string {
  const plain = text
    .replace(/[[\]:*?/\\\p{Cc}\uFFFE\uFFFF]/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, longestSheetName)
    // A sign of two halves is not cut within.
    .replace(/[\uD800-\uDBFF]$/, "")
    .replace(/^['\s]+|['\s]+$/g, "");
  return plain === "" || sameName(plain, "History") ? otherwise : plain;
}
