/** Most bytes of a request or response, as Excel on the web allows. */
const mostBytes = 5 * 1024 * 1024;

/** Whether a text takes more bytes in UTF-8 than allowed; counted only where that is in doubt. */
export function isOver(text: string, limit = mostBytes): boolean {
  if (text.length > limit) return true;
  if (text.length * 3 <= limit) return false;
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // A half of a surrogate pair counts two, the pair four.
    bytes += code < 0x80 ? 1 : code < 0x800 || (code >= 0xd800 && code < 0xe000) ? 2 : 3;
  }
  return bytes > limit;
}
