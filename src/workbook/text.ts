/** Text on its way into and out of XML. */

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters no XML can hold
const noXml = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;

/**
 * For element content. A bare CR would be read back as LF, so it is written as a character
 * reference; what XML cannot hold, and no mark was written for, is left out.
 */
export function escapeText(text: string): string {
  return text
    .replace(noXml, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll("\r", "&#13;");
}

export function escapeAttribute(text: string): string {
  return escapeText(text)
    .replaceAll('"', "&quot;")
    .replaceAll("\t", "&#9;")
    .replaceAll("\n", "&#10;");
}

const escapeMark = /_x([0-9A-Fa-f]{4})_/g;
// Characters XML 1.0 cannot hold (and CR, which a reader would change): ECMA-376 part 1, 22.9.2.19.
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to escape
const unwritable = /[\u0000-\u0008\u000B-\u001F\uFFFE\uFFFF]/g;
const loneSurrogate = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

function hexMark(char: string): string {
  return `_x${char.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
}

/** The ST_Xstring form of a string: "_x000D_" for what XML cannot hold; a literal mark gets its own underscore escaped. */
export function encodeXString(text: string): string {
  return text
    .replace(escapeMark, "_x005F_x$1_")
    .replace(unwritable, hexMark)
    .replace(loneSurrogate, hexMark);
}

export function decodeXString(text: string): string {
  if (!text.includes("_x")) return text;
  return text.replace(escapeMark, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}

/** True when a reader may drop white space at the ends unless told to keep it. */
export function needsSpacePreserve(text: string): boolean {
  return text !== text.trim() || text.includes("\n");
}

/** True when the text can stand in XML as it is (ST_Xstring marks are not understood in formulas). */
export function isWritable(text: string): boolean {
  unwritable.lastIndex = 0;
  loneSurrogate.lastIndex = 0;
  return !unwritable.test(text.replaceAll("\r", "")) && !loneSurrogate.test(text);
}
