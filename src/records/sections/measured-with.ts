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
  rows.table(
    [
      { title: "Box", span: 2, look: looks.cell },
      { title: "Fans", span: 1, look: looks.whole },
      { title: `Constant (${constantUnit(job)})`, span: 2, look: looks.number },
      { title: "Last check", span: 2, look: looks.cell },
      { title: "Proof", span: 5, look: looks.small },
    ],
    names.map((name) => {
      const constant = constantInUse(job, name);
      return [
        name,
        usedBoxes.get(name) ?? 0,
        Number(constant.toPrecision(6)),
        lastCheck(job, name),
        proofWords(job, name),
      ];
    }),
  );
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
  rows.table(
    [
      { title: "Instrument", span: 3, look: looks.cell },
      { title: "Kind", span: 2, look: looks.cell },
      { title: "Limit (%)", span: 1, look: looks.number },
      { title: "At least", span: 1, look: looks.number },
      { title: "Calibrated", span: 2, look: looks.cell },
      { title: "Certificate", span: 3, look: looks.small },
    ],
    listed.map((name) => {
      const instrument = instruments?.find(name);
      const row = instrument?.row ?? -1;
      return [
        name,
        instrument?.kind ?? "",
        orNull(instrument?.percent ?? Number.NaN),
        orNull(instrument?.floor ?? Number.NaN),
        isoDay(table?.number("checked", row) ?? Number.NaN, job.file.dateOffset),
        table?.text("certificate", row) ?? "",
      ];
    }),
  );
}

function constantUnit({ settings: { system } }: Job): string {
  return `${unitOf("flow", system)}, ${unitOf("opening", system)}, √Pa`;
}
