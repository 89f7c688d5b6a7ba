import { rowPattern } from "../../../sheet";
import type { RangeRef } from "../../../workbook";
import { HostError, invalidArgument } from "../wire/errors";

export type MarkType = "Custom" | "CellValue";

/** The comparisons of a cell's own value, with what stands between value and formula. */
export const comparisons = {
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

  constructor(
    readonly id: string,
    readonly type: MarkType,
    /** The cells it applies to. */
    public ranges: readonly RangeRef[],
  ) {}

  /** The rule in R1C1 form, the same for every cell; null while there is none. */
  pattern(): string | null {
    const first = this.ranges[0];
    if (first === undefined) return null;
    const part = (formula: string) => rowPattern(formula.replace(/^=/, ""), first.top, first.left);
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

export function readMarkType(value: string): MarkType {
  if (value === "Custom" || value === "CellValue") return value;
  throw new HostError(
    "UnsupportedOperation",
    `Conditional formats of type "${value}" are not available; use Custom or CellValue.`,
  );
}

export function readCellValueRule(value: unknown): CellValueRule {
  const { formula1, formula2, operator } = (value ?? {}) as Record<string, unknown>;
  if (typeof formula1 !== "string" || formula1 === "")
    throw invalidArgument("The rule needs formula1 as a text.");
  if (typeof operator !== "string" || !Object.hasOwn(comparisons, operator))
    throw invalidArgument(`"${String(operator)}" is no comparison of a rule.`);
  const needsTwo = operator === "Between" || operator === "NotBetween";
  if (needsTwo && (typeof formula2 !== "string" || formula2 === ""))
    throw invalidArgument(`A rule with ${operator} needs formula2 as well.`);
  return {
    formula1,
    formula2: typeof formula2 === "string" ? formula2 : undefined,
    operator: operator as keyof typeof comparisons,
  };
}
