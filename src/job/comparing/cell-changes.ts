import { type CellValue, isSameValue, rowPattern } from "../../cells";
import { plainFormula } from "../accepting";
import { type Change, textOf } from "./change";

/** What stands in a cell. */
interface Held {
  readonly row: number;
  readonly col: number;
  readonly value: CellValue;
  readonly formula: string | null;
}

/** Changes of cells in the order of the cells; formulas that changed alike in many rows as one. */
export class CellChanges {
  private readonly found: Change[] = [];
  private readonly formulas = new Map<string, Change>();

  compare(
    old: Held,
    now: Held,
    where: Omit<Change, "kind" | "before" | "after">,
    typed: "typed" | "constant" = "typed",
    text: (value: CellValue) => string = textOf,
  ): void {
    const isSame = isSameValue(old.value, now.value);
    const [before, after] = [text(old.value), text(now.value)];
    if (old.formula === null && now.formula === null) {
      if (!isSame) this.found.push({ ...where, kind: typed, before, after });
      return;
    }
    const [was, is] = [plainFormula(old.formula ?? ""), plainFormula(now.formula ?? "")];
    if (old.formula === null || now.formula === null)
      this.found.push({
        ...where,
        kind: "formula",
        before: old.formula === null ? before : `=${was}`,
        after: now.formula === null ? after : `=${is}`,
      });
    else this.compareFormulas({ ...old, formula: was }, { ...now, formula: is }, where);
    if (!isSame) this.found.push({ ...where, kind: "result", before, after });
  }

  all(): Change[] {
    return [...this.found, ...this.formulas.values()];
  }

  private compareFormulas(
    old: Formula,
    now: Formula,
    where: Omit<Change, "kind" | "before" | "after">,
  ): void {
    if (old.formula === now.formula && old.row === now.row && old.col === now.col) return;
    const [was, is] = [relative(old), relative(now)];
    if (was === is) return;
    const key = `${where.field}\u0000${was}\u0000${is}`;
    const same = this.formulas.get(key);
    this.formulas.set(
      key,
      same
        ? { ...same, rows: same.rows + 1 }
        : { ...where, kind: "formula", before: `=${old.formula}`, after: `=${now.formula}` },
    );
  }
}

interface Formula extends Held {
  readonly formula: string;
}

function relative({ formula, row, col }: Formula): string {
  return rowPattern(formula, row, col);
}
