import { worksheetFunctions } from "../../functions";
import { columns } from "../../src/algebra";
import { flowFromPressure, meetsCode, rangeCode } from "../../src/formulas";
import { median } from "./median";

const rows = 1_000_000;
const runs = 9;

/** Each reader against a bare loop over typed arrays that does the same arithmetic. */
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
      () => call("FLOW")(cells.area, cells.pressure, null, null),
    ),
    line(
      "RANGE_STATUS",
      () => bareStatus(pressure),
      () => columns(rangeCode, { P: pressure, low: 1, high: 8 }, rows),
      () => call("RANGE_STATUS")(cells.pressure, null, null),
    ),
    line(
      "VERDICT",
      () => bareVerdict(flow),
      () => columns(meetsCode, { Q: flow, R: 50 }, rows),
      () => call("VERDICT")(cells.flow, [[50]], null),
    ),
  ];
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

function line(name: string, bare: () => unknown, reader: () => unknown, whole: () => unknown) {
  const times: [number[], number[], number[]] = [[], [], []];
  for (let run = -3; run < runs; run++)
    [bare, reader, whole].forEach((task, i) => {
      const start = performance.now();
      task();
      if (run >= 0) times[i]?.push(performance.now() - start);
    });
  const [a, b, c] = times.map(median) as [number, number, number];
  return (
    `${name.padEnd(13)} ${rows} rows: bare loop ${a.toFixed(1)} ms, column reader ${b.toFixed(1)} ms ` +
    `(× ${(b / a).toFixed(2)}, goal 5), worksheet function with its cells ${c.toFixed(0)} ms (× ${(c / a).toFixed(1)})`
  );
}
