import { unitIn } from "../../formulas";
import type { CallTrace } from "../../trace";
import { digits, percentOf } from "./in-words";

/** The lines of a spread. */
export interface BudgetView {
  /** "cfm", or "" where the unit is not known. */
  readonly unit: string;
  readonly lines: readonly {
    readonly label: string;
    /** "K ± 0.0214 cfm/(in²·√Pa)" */
    readonly off: string;
    /** What it does to the result, in `unit`. */
    readonly does: string;
    readonly share: string;
  }[];
  readonly total: string;
}

/** The budget of a call's spread; undefined where it has none. */
export function budgetView(call: CallTrace): BudgetView | undefined {
  const { budget } = call;
  if (!budget) return undefined;
  const system = systemOf(call);
  const unitOf = (unit: Parameters<typeof unitIn>[0]) => {
    if (typeof unit !== "string" && system === undefined) return "";
    const text = unitIn(unit, system ?? "ip");
    return text === "1" ? "" : text;
  };
  const told = (value: number, unit: string) => `${digits(value, 4)} ${unit}`.trim();
  const unit = unitOf(budget.unit);
  return {
    unit,
    lines: budget.lines.map((line) => ({
      label: line.label,
      off: `${line.shown} ± ${told(line.u, unitOf(line.unit))}`,
      does: digits(line.contribution, 4),
      share: percentOf(line.share),
    })),
    total: `${told(budget.u, unit)} standard; ± ${told(budget.expanded, unit)} at ${percentOf(budget.chance)}, k ${digits(budget.k)}`,
  };
}

/** The unit system of a call; undefined for a function that is not told of any. */
function systemOf(call: CallTrace): "ip" | "si" | undefined {
  const units = call.arguments.find(({ name }) => name === "units");
  if (!units) return undefined;
  return String(units.value ?? "")
    .trim()
    .toLowerCase() === "si"
    ? "si"
    : "ip";
}

/** Whether a line of a call tells of one line of its budget. */
export function isOfBudget(line: string, { budget }: CallTrace): boolean {
  return budget?.lines.some(({ label }) => line.startsWith(`${label}: `)) ?? false;
}
