import { rectangleOf } from "./a1";
import { around, type Rectangle } from "./rectangle";

/** Cells as text names them; the sheet is null where none is named. */
interface Address {
  readonly sheet: string | null;
  readonly range: Rectangle;
}

/** The name as any reference may write it. */
export function quotedSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

/** The name as a reference writes it before its cells: in quotes unless it is a plain word. */
export function sheetPrefix(name: string): string {
  const isPlain =
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) &&
    !/^[A-Za-z]{1,3}\d+$/.test(name) &&
    !/^[Rr]?\d*[Cc]?\d*$/.test(name) &&
    !/^(true|false)$/i.test(name);
  return `${isPlain ? name : quotedSheet(name)}!`;
}

/** "'Fan list'!A1:B9" as the sheet's name, null where there is none, and the cells as text. */
export function splitAddress(text: string): {
  readonly sheet: string | null;
  readonly cells: string;
} {
  const mark = text.lastIndexOf("!");
  const cells = text.slice(mark + 1).trim();
  if (mark < 0) return { sheet: null, cells };
  const written = text.slice(0, mark).trim();
  const quoted = /^'((?:[^']|'')+)'$/.exec(written)?.[1];
  // A quote that is never closed names no sheet.
  const plain = written.includes("'") ? "" : written;
  return { sheet: quoted?.replaceAll("''", "'") ?? plain, cells };
}

/** An address such as "A1", "B2:C9", "A:C", "2:5" or "'Box list'!$A$1"; null for any other text. */
export function parseAddress(text: string): Address | null {
  const { sheet, cells } = splitAddress(text);
  const range = rectangleOf(cells);
  return range && sheet !== "" ? { sheet, range } : null;
}

/** The rectangles of a list such as "Fans!A1:V4,Fans!A6:V105"; undefined where one is no address. */
export function rectanglesIn(list: string): Rectangle[] | undefined {
  const found = list.split(/,(?=(?:[^']*'[^']*')*[^']*$)/).map((part) => parseAddress(part)?.range);
  return found.every((range) => range !== undefined) ? found : undefined;
}

/** The smallest rectangle that holds every address of a list. */
export function boundsOf(list: string): Rectangle | undefined {
  return rectanglesIn(list)?.reduce(around);
}
