/** Rows and columns of a sheet, counted from 0, both ends included. */
export interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const lastRowOfSheet = 1_048_575;
export const lastColOfSheet = 16_383;

/**
 * The cells of an address such as "K3", "Fans!$A$1:B9", "A:C", "2:5" or a list of these, as the
 * block that holds them all; undefined for any other text.
 */
export function blockOf(address: string): Block | undefined {
  const parts = address.split(",").map((part) => onePart(part.slice(part.lastIndexOf("!") + 1)));
  let whole: Block | undefined;
  for (const part of parts) {
    if (!part) return undefined;
    whole = whole ? around(whole, part) : part;
  }
  return whole;
}

function onePart(text: string): Block | undefined {
  const found = /^\$?([A-Z]{1,3})?\$?(\d{1,7})?(?::\$?([A-Z]{1,3})?\$?(\d{1,7})?)?$/i.exec(
    text.trim(),
  );
  if (!found || (!found[1] && !found[2])) return undefined;
  const [, fromCol, fromRow] = found;
  const isRange = text.includes(":");
  const toCol = isRange ? found[3] : fromCol;
  const toRow = isRange ? found[4] : fromRow;
  // "A1:C" and the like are no addresses; "A" alone neither.
  if (!fromCol !== !toCol || !fromRow !== !toRow || (!isRange && !(fromCol && fromRow)))
    return undefined;
  return {
    top: fromRow ? Number(fromRow) - 1 : 0,
    left: fromCol ? columnIndexOf(fromCol) : 0,
    bottom: toRow ? Number(toRow) - 1 : lastRowOfSheet,
    right: toCol ? columnIndexOf(toCol) : lastColOfSheet,
  };
}

function around(a: Block, b: Block): Block {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}

function columnIndexOf(letters: string): number {
  let col = 0;
  for (const letter of letters.toUpperCase()) col = col * 26 + letter.charCodeAt(0) - 64;
  return col - 1;
}
