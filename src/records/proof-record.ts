import { columnLetters, isoDay } from "../cells";
import { type BoxProof, constantInUse, type Job, unitOf } from "../job";
import { agreementFactor, percentDifferences } from "../spread";
import { looks } from "./looks";
import type { SheetPlan } from "./plan";
import { PlanRows } from "./plan-rows";
import { printedSheet } from "./printed-page";
import { axisEnd, chartOf, flowOf, linesOf, withAside } from "./proof-chart";
import { addCautions, addSignatures } from "./sections/closing";
import { figure, nameOf, signed } from "./words";

/** Opening, area, pressure, box flow, reference flow, difference, reference instrument, tester, day. */
const columns = [13, 9, 9, 9, 11, 10, 15, 13, 11];
const chartRows = 19;
const chartRowHeight = 15;

/** The proof of one box: its pairs, the picture of them, what they come to and what they do not show. */
export function proofRecord(job: Job, own: BoxProof): SheetPlan {
  const mark = `Proof of ${own.box}`;
  const rows = new PlanRows(columns, mark, nameOf(job));
  addVerdict(rows, own);
  const first = addPairs(rows, job, own);
  addFigures(rows, job, own);
  const over = addChartSpace(rows);
  addStatement(rows, own);
  addCautions(rows);
  addSignatures(rows, ["Proved by", "Reviewed by"]);
  const most = axisEnd(job, own);
  // Behind a bare column, outside what is printed.
  const aside = columns.length + 1;
  return {
    ...printedSheet(job, rows, {
      name: `Proof ${own.box}`,
      mark,
      left: job.settings.name,
      landscape: false,
      onePage: true,
      titleRows: 0,
    }),
    columns: [...columns, 3, 9, 9, 9, 9],
    rows: withAside(rows.rows, linesOf(most, own.proof.requirement), aside),
    chart: chartOf(job, own, { first, over, most, aside }),
  };
}

function addVerdict(rows: PlanRows, { proof }: BoxProof): void {
  rows.gap(4);
  rows.fact(
    "Verdict",
    `${proof.verdict}, against a written accuracy of ±${figure(proof.requirement)} % of the reading`,
    2,
    looks.strong,
  );
  for (const reason of proof.reasons) rows.line(reason, looks.text);
}

/** Writes the pairs; gives the row of the first, from 1. */
function addPairs(rows: PlanRows, job: Job, own: BoxProof): number {
  const { pairs: table } = job.tables;
  const { system } = job.settings;
  const flow = unitOf("flow", system);
  const constant = constantInUse(job, own.box);
  const flows = own.pairs.map(({ area, pressure }) => flowOf(constant, area, pressure));
  const errors = percentDifferences(
    flows,
    own.pairs.map(({ reference }) => reference),
  );
  rows.section("Paired readings");
  const first = rows.next + 1;
  rows.table(
    own.pairs.map((pair, i) => ({ ...pair, at: i, row: own.rows[i] as number })),
    [
      ["Openings", 1, looks.cell, ({ opening }) => opening],
      [`Area (${unitOf("opening", system)})`, 1, looks.hundredth, ({ area }) => area],
      ["Box (Pa)", 1, looks.hundredth, ({ pressure }) => pressure],
      [`Box (${flow})`, 1, looks.tenth, ({ at }) => flows[at] as number],
      [`Reference (${flow})`, 1, looks.tenth, ({ reference }) => reference],
      ["Error (%)", 1, looks.tenth, ({ at }) => errors[at] as number],
      ["Reference", 1, looks.small, ({ row }) => table?.text("instrument", row) ?? ""],
      ["Tester", 1, looks.small, ({ row }) => table?.text("tester", row) ?? ""],
      [
        "Date",
        1,
        looks.small,
        ({ row }) => isoDay(table?.number("date", row) ?? Number.NaN, job.file.dateOffset),
      ],
    ],
  );
  return first;
}

function addFigures(rows: PlanRows, job: Job, own: BoxProof): void {
  const { proof, referenceSpread, references } = own;
  const { errors, constant } = proof;
  rows.section("What the pairs come to");
  rows.fact(
    "Constant",
    `${figure(constantInUse(job, own.box), 4)} in use; the pairs give ${figure(constant.value, 4)} with a standard spread of ${figure(constant.u, 4)}, the reference's included`,
    2,
  );
  rows.fact(
    "Bias",
    `${signed(errors.bias)} % (standard error ${figure(errors.biasError)} %), over ${proof.pairs} pairs at ${proof.flows} flows`,
    2,
  );
  rows.fact(
    "Limits of agreement",
    Number.isNaN(errors.low)
      ? "need two pairs or more"
      : `${signed(errors.low)} % to ${signed(errors.high)} %, each to about ±${figure(agreementFactor * errors.limitError)} %`,
    2,
  );
  rows.fact("Largest error", `${figure(errors.largest)} %`, 2);
  const reference = references.length === 0 ? "none named" : references.join(", ");
  rows.fact(
    "Reference",
    Number.isNaN(referenceSpread)
      ? `${reference}; its limit is not stated`
      : `${reference}; standard spread ${figure(referenceSpread)} %`,
    2,
  );
  for (const { opening, pairs, low, high, share } of proof.coverage)
    rows.fact(
      `Opening ${opening}`,
      `${pairs} pairs from ${figure(low)} to ${figure(high)} Pa: ${figure(100 * share, 0)} % of its window`,
      2,
    );
}

/** Leaves room for the chart; gives the cells that it covers. */
function addChartSpace(rows: PlanRows): string {
  rows.section("Box flow against reference flow");
  const top = rows.next;
  for (let i = 0; i < chartRows; i++) rows.gap(chartRowHeight);
  return `A${top}:${columnLetters(columns.length - 1)}${top + chartRows - 1}`;
}

function addStatement(rows: PlanRows, { proof }: BoxProof): void {
  rows.section("What this shows, and what it does not");
  rows.line(
    `It shows how far this box was from the reference on the fans, openings and pressures listed, on the days listed. It ${proof.verdict === "proved" ? "meets" : "does not yet show that the box meets"} ±${figure(proof.requirement)} % there.`,
    looks.text,
  );
  rows.line(
    "It does not show how the box behaves at other pressures or openings, on other grilles, after damage or new edges, or in hands that seat it differently. It cannot prove the box better than its reference.",
    looks.text,
  );
}
