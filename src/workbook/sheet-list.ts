import { InputError } from "../cells";
import { checkArrangement } from "./arrange/arrange";
import type { Arrangement } from "./arrange/spec";
import { listFormula } from "./arrange/validations";
import { dropCalcChain, enterSheet, renameSheet, strikeSheet } from "./book-edit";
import type { BookParts } from "./book-parts";
import { renameInPrintNames } from "./names";
import { removePart } from "./opc";
import { type SheetPlace, whyNotRemovable, whyNotRenamable } from "./removable";
import { sheetOwnParts } from "./sheet-parts";
import { sheetXml } from "./sheet-write";
import type { SheetSpec } from "./types";

/** The part of a new worksheet. Throws a RangeError, before anything is changed, for what is not possible. */
function partOf(parts: BookParts, name: string, spec: SheetSpec, selected: boolean): string {
  const { dialect } = parts;
  // The first run finds what is not possible before anything is changed.
  let spills = false;
  const write = (dynamicArrayMark: () => number) =>
    sheetXml({ name, spec, dialect, selected, dynamicArrayMark });
  const xml = write(() => {
    spills = true;
    return 1;
  });
  if (!spills) return xml;
  const cm = parts.arrayMark();
  return write(() => cm);
}

/** Enters a new worksheet after the last. */
export function addSheetPart(
  parts: BookParts,
  name: string,
  spec: SheetSpec,
  selected: boolean,
): void {
  const xml = partOf(parts, name, spec, selected);
  enterSheet(parts.pkg, parts.part, parts.dialect, name, xml, spec.state);
}

/** What stands around the cells of a new worksheet. Throws a RangeError for what is not possible. */
export function arrangementOf(spec: SheetSpec): Arrangement {
  const { merges, page, conditionalFormats, tabColor, validations } = spec;
  const { columnWidths = [], frozenRows: rows = 0, frozenCols: cols = 0 } = spec;
  const arrangement: Arrangement = {
    ...{ merges, page, conditionalFormats, tabColor },
    widths: new Map([...columnWidths.entries()].filter(([, width]) => width !== null)),
    frozen: rows + cols > 0 ? { rows, cols } : undefined,
    validations: validations?.map(({ ref, list, formula = "" }) => {
      if (!list && formula === "")
        throw new RangeError(`Validation of ${ref}: give a list or a formula.`);
      return { ref, type: "list", formula: list ? listFormula(ref, list) : formula };
    }),
  };
  checkArrangement(arrangement);
  return arrangement;
}

/** Takes a worksheet out. Throws an Error that says what stands against it. */
export function removeSheetPart(parts: BookParts, place: SheetPlace): void {
  const { pkg } = parts;
  const why = whyNotRemovable(pkg, place);
  if (why !== null) throw new InputError(`The sheet "${place.name}" cannot be removed: ${why}.`);
  const owned = sheetOwnParts(pkg, place.part);
  strikeSheet(pkg, parts.part, place.index);
  if ("parts" in owned) for (const part of owned.parts) removePart(pkg, part);
  dropCalcChain(pkg, parts.part);
}

/** Gives a worksheet another name. Throws an Error that names what would not follow. */
export function renameSheetPart(parts: BookParts, place: SheetPlace, newName: string): void {
  const why = whyNotRenamable(parts.pkg, place);
  if (why !== null) throw new InputError(`The sheet "${place.name}" cannot be renamed: ${why}.`);
  renameSheet(parts.pkg, parts.part, place.index, newName);
  renameInPrintNames(parts.pkg, parts.part, place.index, newName);
}
