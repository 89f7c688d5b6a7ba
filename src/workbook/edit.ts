import { type CellValue, kept } from "../cells";

/** A formula to be written; with a range when it spills. */
export interface FormulaEdit {
  readonly text: string;
  readonly arrayRef: string | null;
  /** It keeps that range, as array formulas of the older kind do. */
  readonly isFixed: boolean;
}

/** What is to change in one cell's element; undefined leaves that as it stands in the file. */
export interface CellEdit {
  readonly formula: FormulaEdit | null | undefined;
  readonly value: CellValue | undefined;
  /** Format of the cell should it not exist yet. */
  readonly newStyle: number;
  /** Format the cell is to have from now on; left out, it keeps its own. */
  readonly style?: number | undefined;
}

/** Edits of one sheet by row and column. */
export type SheetEdits = Map<number, Map<number, CellEdit>>;

/** The later edit on top of the earlier. */
export function addEdit(edits: SheetEdits, row: number, col: number, edit: CellEdit): void {
  const cells = kept(edits, row, () => new Map());
  const earlier = cells.get(col);
  cells.set(col, {
    formula: edit.formula === undefined ? earlier?.formula : edit.formula,
    value: edit.value === undefined ? earlier?.value : edit.value,
    newStyle: earlier?.newStyle ?? edit.newStyle,
    style: edit.style ?? earlier?.style,
  });
}
