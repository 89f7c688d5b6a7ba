/** The size of a sheet. */
export const maxRows = 1_048_576;
export const maxCols = 16_384;
/** The most characters that a cell can hold. */
export const longestText = 32_767;
/** Longest formula that a cell takes as it is typed, and in a file, where names are longer. */
export const longestFormula = 8_192;
export const longestStoredFormula = 4 * longestFormula;

/** Cells of one sheet, both corners included. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A rectangle on a sheet of this name. */
export interface Place extends Rectangle {
  readonly sheet: string;
}

/** One cell of a sheet of this name. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
}

export function holdsCell(area: Rectangle, row: number, col: number): boolean {
  return row >= area.top && row <= area.bottom && col >= area.left && col <= area.right;
}

/** The smallest rectangle that holds both. */
export function around(a: Rectangle, b: Rectangle): Rectangle {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}

/** One place for each sheet, around all that are given of it. */
export function aroundBySheet(places: Iterable<Place>): Place[] {
  const bySheet = new Map<string, Place>();
  for (const place of places) {
    const { sheet } = place;
    bySheet.set(sheet, { sheet, ...around(bySheet.get(sheet) ?? place, place) });
  }
  return [...bySheet.values()];
}
