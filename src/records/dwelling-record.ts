import { isoDay } from "../cells";
import { factsOf, flowsOf, type JobCheck, unitOf } from "../job";
import { type DwellingFact, dwellingFacts, findingsOf } from "./dwelling-facts";
import { type FanFact, readsPressure, requiredBy, whoAndWhen } from "./fan-facts";
import { looks } from "./looks";
import type { SheetPlan } from "./plan";
import { PlanRows } from "./plan-rows";
import { printedSheet } from "./printed-page";
import { addCautions, addSignatures } from "./sections/closing";
import { addAccepted, addFindingsInWords } from "./sections/findings";
import { counted, figure, nameOf, orNull } from "./words";

/** Fan, room, duty, box and openings, readings, pressure, flow, ±, required, missing, verdict, day. */
const columns = [7, 15, 11, 12, 13, 10, 9, 8, 10, 10, 16, 11];
/** More fans than this take a second page. */
const mostOnePage = 30;

/** The record of one dwelling: its fans row by row, its rate, what is missing and what was found. */
export function dwellingRecord(check: JobCheck, dwelling: string): SheetPlan {
  const { job } = check;
  const fact = dwellingFacts(job).find(
    ({ name }) => name.trim().toLowerCase() === dwelling.trim().toLowerCase(),
  );
  if (!fact) throw new RangeError(`The job has no dwelling "${dwelling}".`);
  const mark = `Dwelling record: ${fact.name}`;
  const rows = new PlanRows(columns, mark, nameOf(job));
  addFacts(rows, check, fact);
  addFans(rows, check, fact);
  addRate(rows, check, fact);
  const findings = findingsOf(job, check.findings, fact);
  addFindingsInWords(rows, findings);
  addAccepted(rows, job, findings);
  addCautions(rows);
  addSignatures(rows, ["Tested by", "Reviewed by"]);
  return printedSheet(job, rows, {
    name: `Record ${fact.name}`,
    mark,
    left: [job.settings.name, fact.name].filter((part) => part !== "").join(": "),
    landscape: true,
    onePage: fact.fans.length <= mostOnePage,
    titleRows: 2,
  });
}

function addFacts(rows: PlanRows, check: JobCheck, fact: DwellingFact): void {
  const { settings } = check.job;
  const { when, testers } = whoAndWhen(check, fact.fans);
  const size = [
    fact.plan === "" ? "" : `plan ${fact.plan}`,
    fact.floor > 0 ? `${figure(fact.floor)} ${unitOf("floor", settings.system)}` : "",
    fact.bedrooms >= 0 ? counted(fact.bedrooms, "bedroom") : "",
  ].filter((part) => part !== "");
  rows.gap(4);
  if (check.job.tables.dwellings)
    rows.fact("Dwelling", size.length === 0 ? "not on the sheet of dwellings" : size.join(", "), 2);
  rows.fact(
    "Tested",
    [when, testers.size === 0 ? "nobody named" : `by ${[...testers.keys()].join(", ")}`].join(", "),
    2,
  );
  rows.fact(
    "Required by",
    `${requiredBy(check.job)}${readsPressure(check.job) ? `; pressures from ${figure(settings.low)} to ${figure(settings.high)} Pa are used` : ""}`,
    2,
  );
}

function addFans(rows: PlanRows, { job }: JobCheck, { fans }: DwellingFact): void {
  const { unit, factor } = flowsOf(job);
  rows.section("Fans");
  if (fans.length === 0) {
    rows.line("No fan is listed for this dwelling.", looks.text);
    return;
  }
  const { dateOffset } = job.file;
  /** Of a room without a fan nothing is told but the rate. */
  const ofFan =
    <T>(tell: (fan: FanFact) => T, none: T) =>
    (fan: FanFact) =>
      fan.isAbsent ? none : tell(fan);
  const scaled = (value: number) => orNull(value * factor);
  rows.table(fans, [
    ["Fan", 1, looks.strongCell, ofFan(({ tag }) => tag, "none")],
    ["Room", 1, looks.cell, ({ room }) => room],
    ["Duty", 1, looks.cell, ({ duty }) => duty],
    ["Box · openings", 1, looks.cell, ofFan(({ by }) => by, "")],
    ["Readings (Pa)", 1, looks.small, ofFan(readingsOf, "")],
    ["Pressure (Pa)", 1, looks.hundredth, ofFan(({ pressure }) => orNull(pressure), null)],
    [`Flow (${unit})`, 1, looks.tenth, ofFan(({ flow }) => scaled(flow), null)],
    ["± at 95 %", 1, looks.tenth, ofFan(({ expanded }) => scaled(expanded), null)],
    [`Required (${unit})`, 1, looks.tenth, ({ required }) => scaled(required)],
    [`Missing (${unit})`, 1, looks.tenth, ofFan((fan) => scaled(missingOf(fan)), null)],
    ["Verdict", 1, looks.strongCell, ofFan(verdictOf, "no fan")],
    ["Date", 1, looks.small, ofFan(({ date }) => isoDay(date, dateOffset), "")],
  ]);
}

const readingsOf = ({ readings }: FanFact) =>
  readings.map((reading) => figure(reading, 2)).join(", ");

const missingOf = ({ verdict, required, flow }: FanFact) =>
  verdict === "short" ? required - flow : Number.NaN;

function verdictOf({ verdict, verdictOn, alreadyMeets, replacedAs }: FanFact): string {
  const own = `${verdict ?? "no rate"}${verdictOn && ` (${verdictOn})`}`;
  return [
    replacedAs === "part of a mean" ? "" : own,
    alreadyMeets ? "already meets, and the box only lowers it" : "",
    replacedAs ?? "",
  ]
    .filter((word) => word !== "")
    .join(", ");
}

function addRate(rows: PlanRows, { job }: JobCheck, fact: DwellingFact): void {
  const unit = unitOf("flow", job.settings.system);
  const { rate, neededFlow, provided, missing, continuousFans, isUnsure, isTold } = fact;
  // A firm that keeps fans alone asks nothing of the dwelling as a whole.
  if (!job.settings.edition && !job.tables.dwellings) return;
  rows.section("Whole dwelling");
  if (!rate) {
    rows.line("Its rate cannot be told: floor area, bedrooms or edition are missing.", looks.text);
    return;
  }
  rows.fact(
    "Rate",
    `${figure(rate.rate)} ${unit} by ${rate.source.work}, ${rate.source.clause}; ${rate.source.mark}`,
    2,
  );
  if (Math.abs(neededFlow - rate.rate) > 1e-9)
    rows.fact("Needed", `${figure(neededFlow)} ${unit} must be moved by fans`, 2);
  rows.fact(
    "Continuous fans",
    continuousFans === 0
      ? "none on this sheet: the dwelling is ventilated by something else, or not at all"
      : `${counted(continuousFans, "fan")}, together ${figure(provided)} ${unit}${isUnsure ? " as far as measured; not all of these flows can be used" : ""}`,
    2,
  );
  if (fact.supplied > 0) {
    const balance = factsOf(job).dwellings.balance(fact);
    const said = balance ? `: ${balance.value} (${balance.working})` : "";
    rows.fact(
      "Supply and exhaust",
      `${figure(fact.supplied)} and ${figure(fact.exhausted)} ${unit}${said}`,
      2,
    );
  }
  rows.fact(
    "Missing",
    !isTold ? "cannot be told" : missing > 0 ? `${figure(missing)} ${unit}` : "nothing",
    2,
    isTold && missing > 0 ? looks.strong : looks.text,
  );
}
