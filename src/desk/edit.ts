/** A cell being edited, in the cell itself or in the formula bar. */
export interface Edit {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly text: string;
  readonly place: "cell" | "bar";
  /** Begun by typing over the cell: arrow keys then finish instead of moving the caret. */
  readonly isOver: boolean;
  /** Why the text cannot be taken, or null. */
  readonly problem: string | null;
}
