import { worksheetFunctions } from "../../functions";
import { columns } from "../../src/algebra";
import { flowFromPressure, meetsCode, rangeCode } from "../../src/formulas";
import { median } from "./median";

const rows = 1_000_000;
const runs = 9;

type Cells = readonly (readonly unknown[])[];

/**
 * The reader of columns against a bare loop over typed arrays, and the worksheet function against a
 * bare loop over the same rows of cells: both take what a host hands over, see whether each cell is
 * a number, and give rows of cells.
 */
export function benchColumns(): string[] {
  const area = Float64Array.from({ length: rows }, (_, i) => 5 + (i % 90));
  const pressure = Float64Array.from({ length: rows }, (_, i) => 0.5 + ((i * 7) % 90) / 10);
  const flow = Float64Array.from({ length: rows }, (_, i) => 20 + (i % 100));
  const matrix = (column: Float64Array) => Array.from(column, (value) => [value]);
  const cells = { area: matrix(area), pressure: matrix(pressure), flow: matrix(flow) };
  const call = (id: string) => {
    const found = worksheetFunctions.find((entry) => entry.id === id);
    if (!found) throw new Error(`no function ${id}`);
    return found.call;
  };
  return [
    line(
      "FLOW",
      () => bareFlow(area, pressure),
      () => columns(flowFromPressure, { K: 1.07, A: area, P: pressure }, rows),
      () => flowOfCells(cells.area, cells.pressure),
      () => call("FLOW")(cells.area, cells.pressure, null, null),
    ),
    line(
      "RANGE_STATUS",
      () => bareStatus(pressure),
      () => columns(rangeCode, { P: pressure, low: 1, high: 8 }, rows),
      () => statusOfCells(cells.pressure),
      () => call("RANGE_STATUS")(cells.pressure, null, null),
    ),
    line(
      "VERDICT",
      () => bareVerdict(flow),
      () => columns(meetsCode, { Q: flow, R: 50 }, rows),
      () => verdictOfCells(cells.flow),
      () => call("VERDICT")(cells.flow, [[50]], null),
    ),
  ];
}

const blank = (cell: unknown) => (cell === null || cell === "" ? "" : "#VALUE!");

function flowOfCells(area: Cells, pressure: Cells): unknown[][] {
  const out: unknown[][] = new Array(rows);
  for (let i = 0; i < rows; i++) {
    const [a, p] = [area[i]?.[0], pressure[i]?.[0]];
    const isSound = typeof a === "number" && typeof p === "number" && a > 0 && p >= 0;
    out[i] = [isSound ? 1.07 * a * Math.sqrt(p) : blank(p)];
  }
  return out;
}

function statusOfCells(pressure: Cells): unknown[][] {
  const out: unknown[][] = new Array(rows);
  for (let i = 0; i < rows; i++) {
    const p = pressure[i]?.[0];
    if (typeof p !== "number" || Number.isNaN(p)) out[i] = [blank(p)];
    else out[i] = [p < 0 ? "reversed" : p < 1 ? "below" : p > 8 ? "above" : "in range"];
  }
  return out;
}

function verdictOfCells(flow: Cells): unknown[][] {
  const out: unknown[][] = new Array(rows);
  for (let i = 0; i < rows; i++) {
    const q = flow[i]?.[0];
    if (typeof q !== "number" || Number.isNaN(q)) out[i] = [blank(q)];
    else out[i] = [q >= 50 ? "meets" : "short"];
  }
  return out;
}

function bareFlow(area: Float64Array, pressure: Float64Array): Float64Array {
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++)
    out[i] = 1.07 * (area[i] as number) * Math.sqrt(pressure[i] as number);
  return out;
}

function bareStatus(pressure: Float64Array): Float64Array {
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    const p = pressure[i] as number;
    out[i] = p < 0 ? -2 : p < 1 ? -1 : p > 8 ? 1 : 0;
  }
  return out;
}

function bareVerdict(flow: Float64Array): Float64Array {
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++) out[i] = (flow[i] as number) >= 50 ? 1 : 0;
  return out;
}

function line(name: string, ...tasks: readonly (() => unknown)[]) {
  const times: number[][] = tasks.map(() => []);
  for (let run = -3; run < runs; run++)
    tasks.forEach((task, i) => {
      const start = performance.now();
      task();
      if (run >= 0) times[i]?.push(performance.now() - start);
    });
  const [typed, reader, bare, whole] = times.map(median) as [number, number, number, number];
  return (
    `${name.padEnd(13)} ${rows} rows: typed loop ${typed.toFixed(1)} ms, column reader ${reader.toFixed(1)} ms ` +
    `(× ${(reader / typed).toFixed(2)}); loop over cells ${bare.toFixed(1)} ms, worksheet function ` +
    `${whole.toFixed(1)} ms (× ${(whole / bare).toFixed(2)}, goal 3)`
  );
}
