import { type Rectangle, rowPattern } from "../../../cells";
import { FormulaSyntaxError } from "../../../sheet";
import type { ConditionalFormat as FileFormat } from "../../../workbook";

type MarkType = "Custom" | "CellValue";

/** The comparisons of a cell's own value, with what stands between value and formula. */
const comparisons = {
  EqualTo: "=",
  NotEqualTo: "<>",
  GreaterThan: ">",
  LessThan: "<",
  GreaterThanOrEqual: ">=",
  LessThanOrEqual: "<=",
  Between: "between",
  NotBetween: "not between",
} as const;

export interface CellValueRule {
  readonly formula1: string;
  readonly formula2?: string | undefined;
  readonly operator: keyof typeof comparisons;
}

/** A look that cells take while their rule holds. Never changes the cell's own format. */
export class ConditionalFormat {
  /** The formula of a custom rule with "=", written for the first cell; "" until it is set. */
  formula = "";
  cellValue: CellValueRule | null = null;
  stopIfTrue = false;
  fill: string | undefined;
  color: string | undefined;
  bold: boolean | undefined;
  italic: boolean | undefined;
  /** What the file has for it, and the state that this stands for. */
  inFile: { readonly formats: readonly FileFormat[]; readonly state: string } | undefined;
  /** The look that the file has for it, which may say more than is known here. */
  fileLook: { readonly dxfId: number; readonly look: string } | undefined;
  /** The cell that its formulas are written for. */
  private readonly anchor: { readonly row: number; readonly col: number };

  constructor(
    readonly id: string,
    readonly type: MarkType,
    /** The cells it applies to. */
    public ranges: readonly Rectangle[],
  ) {
    const [first] = ranges;
    this.anchor = { row: first?.top ?? 0, col: first?.left ?? 0 };
  }

  /** All that is said of it, to be compared. */
  state(): string {
    const { ranges, formula, cellValue, stopIfTrue, fill, color, bold, italic } = this;
    return JSON.stringify([ranges, formula, cellValue, stopIfTrue, fill, color, bold, italic]);
  }

  /** A formula of the rule in R1C1 form, the same for every cell. */
  relative(formula: string): string {
    return rowPattern(formula.replace(/^=/, ""), this.anchor.row, this.anchor.col);
  }

  /** The rule in R1C1 form, the same for every cell; null while there is none, or none that can be read. */
  pattern(): string | null {
    try {
      return this.rulePattern();
    } catch (thrown) {
      if (thrown instanceof FormulaSyntaxError) return null;
      throw thrown;
    }
  }

  private rulePattern(): string | null {
    if (this.ranges.length === 0) return null;
    const part = (formula: string) => this.relative(formula);
    const { cellValue } = this;
    if (this.type === "Custom") return this.formula === "" ? null : part(this.formula);
    if (cellValue === null) return null;
    const low = `(${part(cellValue.formula1)})`;
    const high = `(${part(cellValue.formula2 ?? "")})`;
    switch (cellValue.operator) {
      case "Between":
        return `AND(RC>=MIN(${low},${high}),RC<=MAX(${low},${high}))`;
      case "NotBetween":
        return `OR(RC<MIN(${low},${high}),RC>MAX(${low},${high}))`;
      default:
        return `RC${comparisons[cellValue.operator]}${low}`;
    }
  }
}
