/**
 * The ground floor: what a cell holds, where it stands, and how both are written. Rows and columns
 * count from 0; names such as "B2" appear only as text.
 */
export {
  absoluteText,
  addressText,
  type CellRef,
  cellName,
  columnIndex,
  columnLetters,
  packedRef,
  parseCell,
  parseRectangle,
  rectangleOf,
  rectangleText,
} from "./a1";
export {
  boundsOf,
  parseAddress,
  quotedSheet,
  rectanglesIn,
  sheetPrefix,
  splitAddress,
} from "./address";
export { counted, grouped, kept, once, onceForText } from "./by-key";
export { afterNumber, type Copied, CopiedDown } from "./copied-down";
export { InputError } from "./input-error";
export { fixed, formulaNumber, numberText, shown, shownApart, significant } from "./number-text";
export {
  around,
  aroundBySheet,
  holdsCell,
  longestFormula,
  longestStoredFormula,
  longestText,
  maxCols,
  maxRows,
  type Place,
  type Rectangle,
  type Spot,
} from "./rectangle";
export { rowPattern, rowPlaces } from "./row-pattern";
export { runsOf } from "./runs";
export { agrees, isIdentical, isRoundingOf, isSameNumber, isSameValue } from "./same-value";
export { type Day, dayOfSerial, isoDay, offsetOf, serialOf, serialOfDay, todayOf } from "./serial";
export { checkSheetName, longestSheetName, sameName, sheetNameOf } from "./sheet-name";
export { linesOf } from "./text-lines";
export { toldOf } from "./told";
export {
  type CellError,
  type CellValue,
  errors,
  isBlankCell,
  isCellError,
  numberedErrors,
} from "./value";
export { visible, visibleIn, visibleJson } from "./visible";
