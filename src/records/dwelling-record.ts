import { isoDay } from "../cells";
import { factsOf, flowsOf, type JobCheck, unitOf } from "../job";
import { type DwellingFact, dwellingFacts, findingsOf } from "./dwelling-facts";
import { type FanFact, readsPressure, requiredBy, whoAndWhen } from "./fan-facts";
import { looks } from "./looks";
import { sheetNameOf } from "./names";
import type { Look, SheetPlan } from "./plan";
import { PlanRows } from "./plan-rows";
import { printedPage } from "./printed-page";
import { addCautions, addSignatures } from "./sections/closing";
import { addAccepted, addFindingsInWords } from "./sections/findings";
import { counted, figure, orNull } from "./words";

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
  const { settings } = job;
  const mark = `Dwelling record: ${fact.name}`;
  const rows = new PlanRows(columns);
  rows.line(mark, looks.title);
  rows.line(settings.name === "" ? "Job without a name" : settings.name, looks.subtitle);
  addFacts(rows, check, fact);
  addFans(rows, check, fact);
  addRate(rows, check, fact);
  const findings = findingsOf(job, check.findings, fact);
  addFindingsInWords(rows, findings);
  addAccepted(rows, job, findings);
  addCautions(rows);
  addSignatures(rows, ["Tested by", "Reviewed by"]);
  return {
    name: sheetNameOf(`Record ${fact.name}`),
    mark,
    columns,
    rows: rows.rows,
    merges: rows.merges,
    page: printedPage(job, {
      left: [settings.name, fact.name].filter((part) => part !== "").join(": "),
      landscape: true,
      onePage: fact.fans.length <= mostOnePage,
      titleRows: 2,
      width: columns.length,
      height: rows.rows.length,
    }),
  };
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
  const column = (title: string, look: Look) => ({ title, span: 1, look });
  rows.table(
    [
      column("Fan", looks.strongCell),
      column("Room", looks.cell),
      column("Duty", looks.cell),
      column("Box · openings", looks.cell),
      column("Readings (Pa)", looks.small),
      column("Pressure (Pa)", looks.hundredth),
      column(`Flow (${unit})`, looks.tenth),
      column("± at 95 %", looks.tenth),
      column(`Required (${unit})`, looks.tenth),
      column(`Missing (${unit})`, looks.tenth),
      column("Verdict", looks.strongCell),
      column("Date", looks.small),
    ],
    fans.map((fan) => fanLine(fan, factor, job.file.dateOffset)),
  );
}

function fanLine(fan: FanFact, factor: number, dateOffset = 0): (string | number | null)[] {
  const [flow, expanded, required] = [fan.flow, fan.expanded, fan.required].map(
    (value) => value * factor,
  ) as [number, number, number];
  const { isAbsent } = fan;
  if (isAbsent)
    return [
      "none",
      fan.room,
      fan.duty,
      "",
      "",
      null,
      null,
      null,
      orNull(required),
      null,
      "no fan",
      "",
    ];
  return [
    fan.tag,
    fan.room,
    fan.duty,
    fan.by,
    fan.readings.map((reading) => figure(reading, 2)).join(", "),
    orNull(fan.pressure),
    orNull(flow),
    orNull(expanded),
    orNull(required),
    fan.verdict === "short" ? orNull(required - flow) : null,
    [
      fan.replacedAs === "part of a mean"
        ? ""
        : `${fan.verdict ?? "no rate"}${fan.verdictOn && ` (${fan.verdictOn})`}`,
      fan.alreadyMeets ? "already meets, and the box only lowers it" : "",
      fan.replacedAs ?? "",
    ]
      .filter((word) => word !== "")
      .join(", "),
    isoDay(fan.date, dateOffset),
  ];
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
