import type { Place } from "../../cells";
import type { Operand } from "../../rules";

/** An argument: one value, or a value for each cell of a range. */
export interface Given {
  readonly rows: number;
  readonly cols: number;
  readonly at: (row: number, col: number) => Operand;
  /** The range it is, if it is one. */
  readonly place?: Place;
  /** The text of an array constant, which stands only where it is taken as a whole. */
  readonly constant?: { readonly text: string; readonly far: string };
}

export function oneOperand(operand: Operand): Given {
  return { rows: 1, cols: 1, at: () => operand };
}

export function literalOperand(value: number | string | boolean): Operand {
  const text =
    typeof value === "string"
      ? `"${value.replaceAll('"', '""')}"`
      : typeof value === "boolean"
        ? String(value).toUpperCase()
        : value < 0
          ? `(${value})`
          : String(value);
  return { text, far: text, literal: value };
}
