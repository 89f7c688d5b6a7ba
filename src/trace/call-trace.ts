import type { CellValue, Spot } from "../cells";
import type { JobFile } from "../job";
import { callLines, explainCall, ruleFor } from "../rules";
import { argumentsOf } from "./arguments";
import { evaluateAt } from "./calculator";
import { alone, around, type Call } from "./calls";
import { seenAt } from "./places";
import type { ArgumentTrace, CallTrace, CellSeen } from "./trace-data";

export const prefix = "FANROW.";

/** One call of ours in the formula of a cell. `offset` is the cell's place in a spilled result. */
export function traceCall(
  call: Call,
  at: Spot,
  offset: { readonly row: number; readonly col: number },
  file: JobFile,
): CallTrace {
  const id = call.name.slice(prefix.length);
  const read = argumentsOf(id, call, at, offset, file);
  const unused = unusedBecause(call, at, file);
  const head = {
    id,
    text: call.text,
    inside: around(call).map((outer) => outer.call.name),
    ...(unused === undefined ? {} : { unused }),
  };
  if (!ruleFor(id)) {
    const told = read.map((each) => each.told);
    return { ...head, ...untold, title: id, arguments: told, problem: `no working for ${id}` };
  }
  const working = explainCall(
    id,
    read.map((each) => each.passed),
    offset,
  );
  const { title, sums, words, result, sources, stoodIn, budget, problem } = working;
  return {
    ...head,
    title,
    sums,
    words,
    result,
    lines: callLines(working),
    arguments: read.map(({ told }): ArgumentTrace => {
      const other = told.given === "left out" ? stoodIn.get(told.name) : undefined;
      return other === undefined ? told : { ...told, stoodIn: other };
    }),
    picked: pickedFrom(
      read.map((each) => each.told),
      file,
    ),
    sources,
    ...(budget ? { budget } : {}),
    ...(problem === undefined ? {} : { problem: problem.message }),
  };
}

const untold = { sums: [], words: [], result: "", lines: [], picked: [], sources: [] };

/** The cells of the areas that belong to the labels in use, where the call looks them up. */
function pickedFrom(given: readonly Omit<ArgumentTrace, "stoodIn">[], file: JobFile): CellSeen[] {
  const named = (name: string) => given.find((each) => each.name === name);
  const use = named("openings")?.value;
  const [labels, areas, boxes] = ["labels", "areas", "boxes"].map((name) => named(name)?.reads[0]);
  if (typeof use !== "string" || !labels || !areas) return [];
  const wanted = use.split(/[+,;&]|\band\b/i).map(key);
  const box = key(named("box")?.value ?? "");
  const { top, bottom, left, sheet } = labels.place;
  const out: CellSeen[] = [];
  for (let i = 0; i <= bottom - top; i++) {
    const label = key(seenAt(sheet, top + i, left, file).value);
    const isOther =
      boxes &&
      key(seenAt(boxes.place.sheet, boxes.place.top + i, boxes.place.left, file).value) !== box;
    if (label === "" || isOther || !wanted.includes(label)) continue;
    out.push(seenAt(areas.place.sheet, areas.place.top + i, areas.place.left, file));
  }
  return out;
}

const key = (value: CellValue) =>
  typeof value === "object" ? "" : String(value).trim().toUpperCase();

/** Why a choice around the call takes another way; undefined where it takes this one. */
function unusedBecause(call: Call, at: Spot, file: JobFile): string | undefined {
  for (const { call: outer, index } of around(call)) {
    const condition = outer.args[0];
    if (!condition || index === 0) continue;
    const decides = { IF: index <= 2, IFERROR: true, IFNA: true }[outer.name];
    if (!decides) continue;
    const found = evaluateAt(alone(condition.text, outer), at, file);
    if (!("value" in found)) continue;
    const { value } = found;
    const error = typeof value === "object" && value !== null ? value.error : undefined;
    if (outer.name === "IF") {
      if (error !== undefined) return `the condition ${condition.text} gives ${error}`;
      const holds = typeof value === "string" ? value.toUpperCase() === "TRUE" : Boolean(value);
      if (holds !== (index === 1))
        return `the condition ${condition.text} is ${holds ? "true" : "false"}`;
    } else if (error === undefined || (outer.name === "IFNA" && error !== "#N/A"))
      return `${condition.text} gives ${error ?? "no error"}`;
  }
  return undefined;
}
