import { ArgumentError, callText, explainCall, knownWorkings, workingFor } from "../src/job";
import { fromError, invalid } from "./problem";
import { isBlank, isError, Rows, toMatrix } from "./rows";

/**
 * How another FANROW function comes to its result: formula, numbers, result and source in one text.
 * @customfunction WORKING
 * @helpurl https://localhost:3443/help/working.html
 * @param {any} name Name of the function, such as "FLOW", without FANROW.
 * @param {any[][][]} values Its arguments in their order, cells or ranges, as the function takes them.
 * @returns {any[][]} The sum as text.
 */
export function workingOf(name: any, values: any[][][]): any[][] {
  const cell = toMatrix(name)[0]?.[0];
  if (isError(cell)) return [[cell]];
  if (isBlank(cell)) return [[""]];
  const id = String(cell)
    .trim()
    .toUpperCase()
    .replace(/^FANROW\./, "");
  const { takes, lists } = shapeOf(id);
  if (values.length > takes.length)
    throw invalid(`${values.length} values for ${id}: it takes ${takes.join(", ")}`);
  // Lists are read whole; the other arguments have a cell a row.
  const byRow = takes.flatMap((each, i) =>
    lists.includes(each) || each === "units" ? [] : [[each, values[i] ?? null] as const],
  );
  const rows = new Rows(Object.fromEntries(byRow));
  return rows.result((i) => {
    const at = { row: Math.floor(i / rows.width), col: i % rows.width };
    const call = explainCall(id, values, at);
    return call.problem === undefined ? callText(call) : faultOf(call.problem);
  });
}

function shapeOf(id: string) {
  const working = workingFor(id);
  if (!working) throw invalid(`unknown function "${id}": use one of ${knownWorkings().join(", ")}`);
  return { takes: working.takes, lists: working.lists ?? [] };
}

/** What is not there yet leaves the cell blank; what will not do says why. */
function faultOf(problem: unknown): object | "" {
  if (!(problem instanceof ArgumentError)) return fromError(problem);
  return problem.reason === "blank" ? "" : (problem.cell ?? fromError(problem));
}
