import { InputError } from "../../cells";
import { CellFault } from "./cell";
import { CallArguments, type Fault } from "./given";
import { fromError, invalid, problem } from "./problem";
import type { Rule, Rules } from "./rule";

/**
 * The result of a call in the shape of its arguments, as a host takes it. A bad cell spoils its own
 * row only; what fails the whole call is thrown as the host's error.
 */
export function callRule(rule: Rule, args: readonly unknown[], rules: Rules): unknown[][] {
  try {
    if (rule.table) return rule.table(args, rules).map((row) => row.map(cellOf));
    const call = new CallArguments(rule.arguments, args, rule.together);
    return (rule.width ?? 1) === 1 ? alone(rule, call) : sideBySide(rule, call, rule.width ?? 1);
  } catch (error) {
    throw error instanceof CellFault ? problem(error.code, error.message) : fromError(error);
  }
}

function alone(rule: Rule, call: CallArguments): unknown[][] {
  const { height, width } = call;
  const atOnce = rule.atOnce?.(call);
  const cell = (i: number) => (atOnce ? orError(() => atOnce(i)) : cellsOf(rule, call, i));
  const out: unknown[][] = new Array(height);
  for (let r = 0, i = 0; r < height; r++) {
    const row: unknown[] = new Array(width);
    for (let c = 0; c < width; c++, i++) {
      const fault = call.fault(i);
      row[c] = fault ? faultCell(fault) : cellOf(cell(i));
    }
    out[r] = row;
  }
  return out;
}

/** Several cells side by side for each row; a spoiled row holds its fault in each of them. */
function sideBySide(rule: Rule, call: CallArguments, width: number): unknown[][] {
  return Array.from({ length: call.length }, (_, i) => {
    const fault = call.fault(i);
    const cells = fault ? faultCell(fault) : cellsOf(rule, call, i);
    return Array.isArray(cells) ? cells.map(cellOf) : new Array(width).fill(cells);
  });
}

function cellsOf(rule: Rule, call: CallArguments, i: number): unknown {
  return orError(() => {
    const given = call.row(i) as never;
    rule.check?.(given);
    const { gives } = rule.work(given);
    return Array.isArray(gives) && gives.length === 1 ? gives[0] : gives;
  });
}

function orError(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    return fromError(error);
  }
}

function faultCell({ code, message }: Fault): unknown {
  return code === "" ? "" : problem(code, message);
}

function cellOf(value: unknown): unknown {
  if (typeof value !== "number") return value;
  if (Number.isFinite(value)) return value + 0;
  return invalid("the result is not a number: check the sizes and signs of the arguments");
}

/** A fault of a row as an error, for those who tell of it. */
export function errorOf({ weight, message, about }: Fault): InputError {
  return new InputError(message, weight === 3 ? "unusable" : "blank", about);
}
