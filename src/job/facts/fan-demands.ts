import { InputError } from "../../cells";
import { findDuct, findFan } from "../../editions";
import {
  DesignMatch,
  designMatch,
  leastEfficacy,
  longestDuct,
  loudest,
  makeupAir,
  Ruling,
  readYesNo,
} from "../../rules";
import { dwellingRow, type FanRows, type Job, valueIn, valueOrThrow } from "../read";

/*
 * What the job's rules ask of the fan of a row, apart from its flow. Each throws what the row or
 * the Job sheet lacks, or that the rule named has no such number.
 */

/** The least flow for each watt. */
export function efficacyAsked(job: Job, i: number): Ruling<number> {
  const { equipment, system } = job.settings;
  const fans = fansOf(job);
  const { table } = fans;
  needs(equipment !== "", "the Job sheet names no equipment rules");
  // IECC 2021 R403.6.2 and its kin speak of the fans of the whole-house system alone.
  needs(
    valueIn(fans.duty(i)) === "continuous" || table.number("runShare", i) > 0,
    "the rule asks it of fans that ventilate the whole dwelling, not of a room's own",
  );
  const kind = table.text("fanKind", i);
  needs(kind !== "", "the row does not say what kind of fan it is");
  return leastEfficacy(equipment, findFan(kind), stated(table.number("rated", i)), system);
}

/** The loudest rating. */
export function soundAllowed(job: Job, i: number): Ruling<number | "no limit"> {
  const { edition, system } = job.settings;
  const fans = fansOf(job);
  if (!edition) throw new InputError("no edition");
  const rated = stated(fans.table.number("rated", i));
  return loudest(edition.id, valueOrThrow(fans.duty(i)), rated, false, system);
}

/** The longest duct; once the flow is measured the table does not bind. */
export function ductAllowed(
  job: Job,
  i: number,
  measured = false,
): Ruling<number | "no limit" | "not allowed"> {
  const { ducts, system } = job.settings;
  const { table } = fansOf(job);
  needs(ducts !== "", "the Job sheet names no duct table");
  const duct = {
    kind: findDuct(table.text("ductKind", i)),
    diameter: table.number("ductDiameter", i),
    ratedFlow: table.number("rated", i),
    elbows: stated(table.number("elbows", i)) ?? 0,
  };
  return longestDuct(ducts, duct, system, measured);
}

/** Whether a row's room is a kitchen, whose exhaust may need makeup air. */
export function isKitchen(job: Job, i: number): boolean {
  return valueIn(fansOf(job).room(i))?.startsWith("kitchen") === true;
}

/** The most that a row's fan may move: the larger of measured and rated flow; NaN for neither. */
export function mostFlow(job: Job, i: number): number {
  const { flow, table } = fansOf(job);
  const flows = [flow[i] as number, table.number("rated", i)].filter((value) => value > 0);
  return flows.length > 0 ? Math.max(...flows) : Number.NaN;
}

/** Whether a row's fan needs makeup air. */
export function makeupAsked(job: Job, i: number): Ruling<"needed" | "not needed"> {
  const { ducts, system } = job.settings;
  needs(ducts !== "", "the Job sheet names no duct table, whose code would say");
  const flow = mostFlow(job, i);
  needs(!Number.isNaN(flow), "the row has no rated and no measured flow");
  return makeupAir(ducts, flow, hasAppliance(job, i), system);
}

/** How a flow stands against the design flow of its row under the job's programme. */
export function designAsked(job: Job, i: number, flow: number): DesignMatch {
  const { programme, system } = job.settings;
  needs(programme !== "", "the Job sheet names no programme");
  const design = fansOf(job).table.number("design", i);
  needs(!Number.isNaN(design), "the row has no design flow");
  const match = designMatch(programme, design, flow, system);
  if (match.value !== "high" || valueIn(fansOf(job).duty(i)) !== "on demand") return match;
  const { source, parts, lowest, highest } = match;
  const words = "a fan on demand may move more than its design";
  return new DesignMatch(new Ruling("matches", source, system, [...parts, words]), lowest, highest);
}

/** What the fan's dwelling says of an open-flue appliance; undefined where it says nothing. */
function hasAppliance(job: Job, i: number): boolean | undefined {
  const row = dwellingRow(job, fansOf(job).table.text("dwelling", i));
  const said = row === undefined ? "" : (job.tables.dwellings?.text("appliance", row) ?? "");
  return readYesNo("open-flue appliance", said);
}

function fansOf({ fans }: Job): FanRows {
  if (!fans) throw new InputError("no sheet with fans was found");
  return fans;
}

function needs(condition: boolean, otherwise: string): void {
  if (!condition) throw new InputError(otherwise);
}

function stated(value: number): number | undefined {
  return Number.isNaN(value) ? undefined : value;
}
