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
  const { height, width, isSound } = call;
  const work = rule.atOnce?.(call) ?? ((i: number) => workOf(rule, call, i));
  const cell = (i: number): unknown => {
    const fault = isSound ? undefined : call.fault(i);
    if (fault) return faultCell(fault);
    try {
      return cellOf(work(i));
    } catch (error) {
      return fromError(error);
    }
  };
  const out: unknown[][] = new Array(height);
  // A literal of one cell takes a third of the time of an array that is filled.
  if (width === 1) for (let r = 0; r < height; r++) out[r] = [cell(r)];
  else
    for (let r = 0; r < height; r++)
      out[r] = Array.from({ length: width }, (_, c) => cell(r * width + c));
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

function workOf(rule: Rule, call: CallArguments, i: number): unknown {
  const given = call.row(i) as never;
  rule.check?.(given);
  const { gives } = rule.work(given);
  return Array.isArray(gives) && gives.length === 1 ? gives[0] : gives;
}

function cellsOf(rule: Rule, call: CallArguments, i: number): unknown {
  try {
    return workOf(rule, call, i);
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
