import { oneValue } from "../algebra";
import { columnLetters } from "../cells";
import { flowFromPressure } from "../formulas";
import { type BoxProof, constantInUse, type Job, unitOf } from "../job";
import { looks } from "./looks";
import type { PlanCell, PlanChart, PlanRow } from "./plan";
import { figure } from "./words";

/** What a box reads with a constant. */
export function flowOf(K: number, A: number, P: number): number {
  return oneValue(flowFromPressure, { K, A, P });
}

/** Round end of both axes. */
export function axisEnd(job: Job, own: BoxProof): number {
  const constant = constantInUse(job, own.box);
  const flows = own.pairs.flatMap(({ area, pressure, reference }) => [
    reference,
    flowOf(constant, area, pressure),
  ]);
  const most = Math.max(...flows) * 1.08;
  const step = 10 ** Math.floor(Math.log10(most)) / 2;
  return Math.ceil(most / step) * step;
}

/** Reference flow at both ends of the chart, with the lines of equality and of the requirement there. */
export function linesOf(most: number, requirement: number): number[][] {
  return [0, most].map((flow) => [
    flow,
    flow,
    flow * (1 + requirement / 100),
    flow * (1 - requirement / 100),
  ]);
}

const asideTop = 2;

/** The rows with the figures of the chart's lines beside them, from a column on. */
export function withAside(
  rows: readonly PlanRow[],
  lines: readonly number[][],
  aside: number,
): PlanRow[] {
  const note: PlanCell = { value: "Lines of the chart", look: looks.aside };
  return rows.map((row, i) => {
    const line = lines[i - asideTop];
    if (i !== asideTop - 1 && line === undefined) return row;
    const own = line === undefined ? [note] : line.map((value) => ({ value, look: looks.aside }));
    const bare = Array.from({ length: aside - row.cells.length }, () => null);
    return { ...row, cells: [...row.cells, ...bare, ...own] };
  });
}

/** Where a chart stands and what it is drawn from. */
interface ChartPlace {
  /** Row of the first pair, from 1. */
  readonly first: number;
  /** The cells that the chart covers. */
  readonly over: string;
  /** End of both axes. */
  readonly most: number;
  /** Column, from 0, of the figures of its lines. */
  readonly aside: number;
}

export function chartOf(job: Job, own: BoxProof, at: ChartPlace): PlanChart {
  const unit = unitOf("flow", job.settings.system);
  const { first, over, most, aside } = at;
  const last = first + own.pairs.length - 1;
  const [from, to] = [asideTop + 1, asideTop + 2];
  const line = (col: number) =>
    `${columnLetters(aside + col)}${from}:${columnLetters(aside + col)}${to}`;
  const limit = `${figure(own.proof.requirement)} %`;
  return {
    title: `${own.box} against its reference`,
    alternative: `Flow by the box against flow by the reference for ${own.pairs.length} pairs, with the line of equality and lines of plus and minus ${limit}.`,
    over,
    series: [
      {
        name: "pairs",
        x: `E${first}:E${last}`,
        y: `D${first}:D${last}`,
        marker: "circle",
        line: "none",
        color: "1F4E4A",
      },
      { name: "equal", x: line(0), y: line(1), marker: "none", line: "solid", color: "808080" },
      { name: `+${limit}`, x: line(0), y: line(2), marker: "none", line: "dash", color: "B4551D" },
      { name: `−${limit}`, x: line(0), y: line(3), marker: "none", line: "dash", color: "B4551D" },
    ],
    x: { title: `Reference flow (${unit})`, min: 0, max: most },
    y: { title: `Box flow (${unit})`, min: 0, max: most },
  };
}
