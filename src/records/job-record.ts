import { estimateOf, type JobCheck, provenanceOf, unitOf, type Verdict, verdicts } from "../job";
import { type DwellingFact, dwellingFacts, isUntested } from "./dwelling-facts";
import { estimateRecord } from "./estimate-record";
import { type FanFact, fanFacts, readsPressure, requiredBy, whoAndWhen } from "./fan-facts";
import { looks } from "./looks";
import type { SheetPlan } from "./plan";
import { PlanRows } from "./plan-rows";
import { fitsOnePage, printedSheet } from "./printed-page";
import { addCautions, addProvenance, addSignatures } from "./sections/closing";
import { addAccepted, addFindingsByKind } from "./sections/findings";
import { addMeasuredWith } from "./sections/measured-with";
import { addRates } from "./sections/rates";
import { counted, figure, nameOf, orNull } from "./words";

/** Twelve columns, on which every table of the record is laid out. */
const columns = Array.from({ length: 12 }, () => 8.3);
const title = "Record of fan flow tests";

/** The record of a whole job, of an estimate where nothing is measured yet: what was measured, with what, by whom, by which rates, and what came of it. */
export function jobRecord(check: JobCheck): SheetPlan {
  const { job, findings } = check;
  const estimate = check.summary.measured === 0 ? estimateOf(job) : undefined;
  if (estimate) return estimateRecord(check, estimate);
  const facts = fanFacts(job).filter(({ isAbsent }) => !isAbsent);
  const dwellings = dwellingFacts(job);
  const rows = new PlanRows(columns, title, nameOf(job));
  addFacts(rows, check, facts, dwellings);
  addVerdicts(rows, facts, dwellings);
  addShort(rows, check, dwellings);
  addMeasuredWith(rows, job, facts);
  addRates(rows, job, dwellings);
  addFindingsByKind(rows, findings);
  addAccepted(rows, job, findings);
  addProvenance(rows, provenanceOf(job));
  addSignatures(rows, ["Tested by", "Reviewed by"]);
  addCautions(rows);
  return printedSheet(job, rows, {
    name: "Record",
    mark: title,
    left: nameOf(job),
    landscape: false,
    onePage: fitsOnePage(rows, false),
    titleRows: 2,
  });
}

function addFacts(
  rows: PlanRows,
  check: JobCheck,
  facts: readonly FanFact[],
  dwellings: readonly DwellingFact[],
): void {
  const { settings } = check.job;
  const { inForce } = provenanceOf(check.job);
  const { fans, measured } = check.summary;
  const again = facts.filter(({ replacedAs }) => replacedAs === "read again").length;
  const { when, testers } = whoAndWhen(check, facts);
  const method = settings.method === "" ? "" : `; dwelling rate by ${settings.method}`;
  rows.gap(4);
  rows.fact(
    "Measured",
    `${measured} of ${counted(fans, "fan")} in ${counted(dwellings.length, "dwelling")}${again > 0 ? `; ${again} read again` : ""}${settings.sampling ? `; a sample by ${settings.sampling.id}` : ""}`,
  );
  const untested = dwellings.filter((own) => own.fans.length > 0 && isUntested(check.job, own));
  if (untested.length > 0)
    rows.fact(
      "Not tested yet",
      `${counted(untested.length, "dwelling")}, without a record of ${untested.length === 1 ? "its" : "their"} own`,
    );
  rows.fact("Tested", when);
  rows.fact(
    "Tested by",
    testers.size === 0
      ? "nobody named"
      : [...testers].map(([name, fans]) => `${name} (${counted(fans, "fan")})`).join(", "),
  );
  rows.fact(
    "Required by",
    `${requiredBy(check.job)}${settings.edition ? `${method}${inForce && `, in force from ${inForce}`}` : ""}`,
  );
  rows.fact(
    "Reading used",
    readsPressure(check.job)
      ? `box pressures from ${figure(settings.low)} to ${figure(settings.high)} Pa; constant ${figure(settings.constant, 4)} where a box states none of its own`
      : "flows as they were typed: no pressure is kept",
  );
}

const meanings: Readonly<Record<Verdict, string>> = {
  meets: "at or above the rate",
  short: "below the rate",
  "too close to call": "too near the rate for the spread of the flow",
  "out of range": "read outside the window of pressures",
  "not measured": "no usable reading",
  "none required": "the edition asks no rate of such a room or terminal",
};

function addVerdicts(
  rows: PlanRows,
  facts: readonly FanFact[],
  dwellings: readonly DwellingFact[],
): void {
  rows.section("Verdicts");
  const count = (verdict: Verdict | undefined, continuous?: boolean) =>
    facts.filter(
      (fact) =>
        !fact.replacedAs &&
        fact.verdict === verdict &&
        (continuous === undefined || fact.isContinuous === continuous),
    ).length;
  const isRare = (verdict: Verdict) =>
    verdict === "too close to call" || verdict === "none required";
  const shownVerdicts = verdicts.filter((verdict) => !isRare(verdict) || count(verdict) > 0);
  const shown = [...shownVerdicts, ...(count(undefined) > 0 ? [undefined] : [])];
  rows.table(shown, [
    ["Verdict", 3, looks.strongCell, (verdict) => verdict ?? "no rate"],
    ["On demand", 2, looks.whole, (verdict) => count(verdict, false)],
    ["Continuous", 2, looks.whole, (verdict) => count(verdict, true)],
    ["All", 1, looks.whole, (verdict) => count(verdict)],
    [
      "Meaning",
      4,
      looks.cell,
      (verdict) => (verdict ? meanings[verdict] : "measured, but the rate cannot be told"),
    ],
  ]);
  const told = dwellings.filter(({ isTold }) => isTold);
  const met = told.filter(({ missing }) => missing === 0).length;
  if (told.length === 0) return;
  rows.gap(4);
  rows.line(
    `Whole dwellings: ${met} of ${dwellings.length} reach their rate by their continuous fans, ${told.length - met} fall short, ${dwellings.length - told.length} cannot be told from this job.`,
    looks.text,
  );
}

function addShort(rows: PlanRows, { job }: JobCheck, dwellings: readonly DwellingFact[]): void {
  const unit = unitOf("flow", job.settings.system);
  if (!job.settings.edition && !job.tables.dwellings) return;
  const short = dwellings.filter(({ missing, isTold }) => isTold && missing > 0);
  rows.section("Dwellings that fall short");
  rows.table(short, [
    ["Dwelling", 3, looks.strongCell, ({ name }) => name],
    ["Plan", 3, looks.cell, ({ plan }) => plan],
    [`Needed (${unit})`, 2, looks.tenth, ({ neededFlow }) => orNull(neededFlow)],
    [`Continuous (${unit})`, 2, looks.tenth, ({ provided }) => orNull(provided)],
    [`Missing (${unit})`, 2, looks.tenth, ({ missing }) => orNull(missing)],
  ]);
}
