import { type CellValue, isBlankCell, isCellError, significant } from "../../cells";

/** Digits that tell most numbers apart, and those that a cell keeps. */
const [fewDigits, allDigits] = [7, 15];

/** What sort of thing changed, in the order of a list. */
export const changeKinds = [
  "sheet added",
  "sheet removed",
  "edition",
  "constant",
  "setting",
  "row added",
  "row removed",
  "typed",
  "formula",
  "result",
  "finding new",
  "finding gone",
  "acceptance",
] as const;

export type ChangeKind = (typeof changeKinds)[number];

/** One thing that is otherwise in the later state of a job. */
export interface Change {
  readonly kind: ChangeKind;
  readonly sheet: string;
  /** In the later state; in the earlier one where it is gone there; "" for a whole sheet. */
  readonly cell: string;
  /** The row's own name: "Lot 07, B1". */
  readonly about: string;
  /** Heading of the column, name of the setting, or kind of the finding. */
  readonly field: string;
  readonly before: string;
  readonly after: string;
  /** How many rows changed in the very same way, this one included. */
  readonly rows: number;
}

/** A value as a list of changes writes it. */
export function textOf(value: CellValue): string {
  if (isBlankCell(value)) return "";
  return isCellError(value) ? value.error : String(value);
}

const ofValues: readonly ChangeKind[] = [
  "edition",
  "constant",
  "setting",
  "typed",
  "formula",
  "result",
];

/** Both states of a change as a person reads them: numbers to the digits that tell them apart. */
export function shownStates({ kind, before, after }: Change): [before: string, after: string] {
  const isValue = ofValues.includes(kind);
  const shown = (text: string, digits: number) => {
    if (text === "") return isValue ? "blank" : "";
    const number = Number(text);
    return isValue && String(number) === text ? significant(number, digits) : text;
  };
  let digits = fewDigits;
  while (digits < allDigits && shown(before, digits) === shown(after, digits)) digits++;
  return [shown(before, digits), shown(after, digits)];
}
