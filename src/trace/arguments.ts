import { tokenTypes } from "@borgar/fx/xlsx";
import { type FunctionParameter, worksheetFunctions } from "../../functions";
import type { CellValue, Spot } from "../cells";
import type { JobFile } from "../job";
import { ruleFor } from "../rules";
import { evaluateAt } from "./calculator";
import { alone, type Call, type Piece } from "./calls";
import { isReference, matrixAt, readsIn } from "./places";
import type { ArgumentTrace } from "./trace-data";

/** An argument as the trace tells of it, and as the function gets it. */
interface ReadArgument {
  readonly told: Omit<ArgumentTrace, "stoodIn">;
  readonly passed: unknown;
}

/** Arguments of several cells, of which no single one counts. */
const wholeKinds = ["list", "numbers", "pairs", "repeats"];

/** The arguments of a call of ours. `offset` is the cell's place in a result that spills. */
export function argumentsOf(
  id: string,
  call: Call,
  at: Spot,
  offset: { readonly row: number; readonly col: number },
  file: JobFile,
): ReadArgument[] {
  const parameters = worksheetFunctions.find((each) => each.id === id)?.parameters ?? [];
  const takes = ruleFor(id)?.arguments ?? {};
  const count = Math.max(parameters.length, call.args.length);
  const empty: Piece = { text: "", tokens: [] };
  return Array.from({ length: count }, (_, i) => {
    const parameter: Partial<FunctionParameter> = parameters[i] ?? parameters.at(-1) ?? {};
    const { name = "", description = "" } = parameter;
    const piece = call.args[i] ?? empty;
    const passed = passedFor(piece, call, at, file);
    const given = kindOf(piece);
    const isWhole = wholeKinds.includes(takes[name]?.kind ?? "");
    const value = isWhole ? undefined : pickAt(passed, offset);
    const told = { name, description, given, text: piece.text };
    return {
      told: {
        ...told,
        reads: readsIn(piece, at, file),
        ...(value === undefined || given === "left out" ? {} : { value }),
      },
      passed,
    };
  });
}

function kindOf({ tokens, text }: Piece): ArgumentTrace["given"] {
  if (text === "") return "left out";
  const [token] = tokens;
  if (tokens.length !== 1 || !token) return "expression";
  if (isReference(token)) return token.value.includes(":") ? "range" : "cell";
  const literal: readonly string[] = [
    tokenTypes.NUMBER,
    tokenTypes.STRING,
    tokenTypes.BOOLEAN,
    tokenTypes.ERROR,
  ];
  return literal.includes(token.type) ? "literal" : "expression";
}

/** What the function gets: rows of cells for a reference, a value otherwise, null where left out. */
function passedFor(piece: Piece, call: Call, at: Spot, file: JobFile): unknown {
  switch (kindOf(piece)) {
    case "left out":
      return null;
    case "cell":
    case "range": {
      const [read] = readsIn(piece, at, file);
      if (read) return matrixAt(read.place, file);
      break;
    }
    default:
  }
  const found = evaluateAt(alone(piece.text, call), at, file);
  return "value" in found
    ? found.value
    : { error: "#N/A", message: `not evaluated: ${found.unsupported}` };
}

function pickAt(
  passed: unknown,
  { row, col }: { row: number; col: number },
): CellValue | undefined {
  if (!Array.isArray(passed)) return passed as CellValue;
  const line = (passed[passed.length === 1 ? 0 : row] ?? []) as CellValue[];
  return line[line.length === 1 ? 0 : col];
}
