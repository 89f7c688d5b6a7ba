import { type CellValue, isBlankCell, isCellError } from "../../cells";

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
