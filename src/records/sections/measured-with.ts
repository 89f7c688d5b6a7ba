import { isoDay } from "../../cells";
import { boxProofs, constantInUse, type Job, unitOf } from "../../job";
import { type FanFact, readsPressure } from "../fan-facts";
import { looks } from "../looks";
import type { PlanRows } from "../plan-rows";
import { figure, orNull } from "../words";

/** The boxes and other instruments that the fans were measured with. */
export function addMeasuredWith(rows: PlanRows, job: Job, facts: readonly FanFact[]): void {
  if (!readsPressure(job)) return;
  rows.section("Measured with");
  const measured = facts.filter(({ isMeasured }) => isMeasured);
  const fans = job.fans;
  const usedBoxes = new Map<string, number>();
  const usedInstruments = new Map<string, number>();
  for (const { row } of measured) {
    const isOther = fans?.isByInstrument(row) === true;
    const name = fans?.table.text(isOther ? "instrument" : "box", row) ?? "";
    const used = isOther ? usedInstruments : usedBoxes;
    if (name !== "") used.set(name, (used.get(name) ?? 0) + 1);
  }
  const names = [...usedBoxes.keys()].sort((a, b) => a.localeCompare(b, "en", { numeric: true }));
  const constant = (name: string) => Number(constantInUse(job, name).toPrecision(6));
  rows.table(names, [
    ["Box", 2, looks.cell, (name) => name],
    ["Fans", 1, looks.whole, (name) => usedBoxes.get(name) ?? 0],
    [`Constant (${constantUnit(job)})`, 2, looks.number, constant],
    ["Last check", 2, looks.cell, (name) => lastCheck(job, name)],
    ["Proof", 5, looks.small, (name) => proofWords(job, name)],
  ]);
  addInstruments(rows, job, usedInstruments);
}

/** Day of the oldest check among the openings of a box: the one that counts. */
function lastCheck(job: Job, box: string): string {
  const { boxes } = job;
  const days = (boxes?.rows(box) ?? []).map((i) => boxes?.table.number("checked", i) ?? Number.NaN);
  if (days.length === 0) return "box not listed";
  if (days.some((day) => Number.isNaN(day))) return "not for every opening";
  return isoDay(Math.min(...days), job.file.dateOffset);
}

function proofWords(job: Job, box: string): string {
  const own = boxProofs(job).get(box.toUpperCase());
  if (!own) return "no paired readings in this job";
  const { proof, date } = own;
  const on = isoDay(date, job.file.dateOffset);
  const asked = `±${figure(proof.requirement)} %`;
  const words =
    proof.verdict === "too few pairs"
      ? `too few pairs for ${asked}`
      : `${proof.verdict} within ${asked}`;
  return on === "" ? words : `${words}, ${on}`;
}

function addInstruments(rows: PlanRows, job: Job, used: ReadonlyMap<string, number>): void {
  const { instruments } = job;
  const { meterPercent, meterFloor } = job.settings;
  const { table } = instruments ?? {};
  const listed = (instruments?.names ?? []).filter((name) => {
    return instruments?.find(name)?.kind === "manometer" || used.has(name);
  });
  rows.gap(4);
  if (listed.length === 0) {
    rows.line(
      `Manometer: limit ${figure(meterPercent)} % of the reading, at least ${figure(meterFloor, 2)} Pa. No instrument is named in this job.`,
      looks.text,
    );
    return;
  }
  const { dateOffset } = job.file;
  rows.table(
    listed.map((name) => ({ name, row: -1, ...instruments?.find(name) })),
    [
      ["Instrument", 3, looks.cell, ({ name }) => name],
      ["Kind", 2, looks.cell, ({ kind = "" }) => kind],
      ["Limit (%)", 1, looks.number, ({ percent = Number.NaN }) => orNull(percent)],
      ["At least", 1, looks.number, ({ floor = Number.NaN }) => orNull(floor)],
      [
        "Calibrated",
        2,
        looks.cell,
        ({ row }) => isoDay(table?.number("checked", row) ?? Number.NaN, dateOffset),
      ],
      ["Certificate", 3, looks.small, ({ row }) => table?.text("certificate", row) ?? ""],
    ],
  );
}

function constantUnit({ settings: { system } }: Job): string {
  return `${unitOf("flow", system)}, ${unitOf("opening", system)}, √Pa`;
}
