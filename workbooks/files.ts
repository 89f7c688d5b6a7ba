import Papa from "papaparse";
import { columnIndex, plainPlan } from "../src/job";
import { jobWorkbook } from "../src/new-job";
import { estimateRows } from "./estimate-rows";
import { existingRows } from "./existing-rows";
import { plantFaults, staleFlow } from "./faults";
import { blankRows, demoRows } from "./job-rows";
import { proofRows } from "./proof-rows";
import { addQuestions } from "./questions";
import { slipRows } from "./slip-rows";
import { wholeRows } from "./whole-rows";

export const demoName = "alder-terrace.xlsx";
export const answersName = "alder-terrace-answers.csv";
export const blankName = "blank-job.xlsx";
/** A proof of a box, an existing building and an estimate: sound but for what each is to show. */
export const proofName = "quarry-yard.xlsx";
export const existingName = "mill-lane.xlsx";
export const estimateName = "heron-field.xlsx";
/** Whole-house ventilation: retests, speeds, supply, timers, kitchens. */
export const wholeName = "cedar-ferry.xlsx";
/** What is easily missed: kitchens, rooms without a rate, odd second openings, weak references. */
export const slipName = "tern-close.xlsx";

/** The workbooks and the answer key, by file name. */
export function files(): Record<string, Uint8Array | string> {
  const rows = demoRows();
  const key = plantFaults(rows);
  const stale = staleFlow(rows, key);
  const demo = jobWorkbook(rows);
  const fans = demo.sheet(plainPlan.fans.title);
  const cell = fans?.cell(stale.row, columnIndex(plainPlan.fans, "flow"));
  if (!cell?.formula || typeof cell.value !== "number") throw new Error("no flow to make stale");
  fans?.setFormula(cell.row, cell.col, cell.formula, cell.value * stale.factor);
  const slips = jobWorkbook(slipRows());
  addQuestions(slips);
  return {
    [demoName]: demo.save(),
    [answersName]: `${Papa.unparse([...key], { newline: "\n" })}\n`,
    [blankName]: jobWorkbook(blankRows()).save(),
    [proofName]: jobWorkbook(proofRows()).save(),
    [existingName]: jobWorkbook(existingRows()).save(),
    [estimateName]: jobWorkbook(estimateRows()).save(),
    [wholeName]: jobWorkbook(wholeRows()).save(),
    [slipName]: slips.save(),
  };
}
