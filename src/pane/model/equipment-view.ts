import { findDuct, findFan } from "../../editions";
import {
  designMatch,
  flowUnit,
  type Job,
  leastEfficacy,
  longestDuct,
  loudest,
  makeupAir,
  plainName,
  type Ruling,
  shown,
  unitOf,
} from "../../job";
import { atMost, type EquipmentView, needs, viewOf } from "./demand";
import { clauseOf } from "./marks";
import { attempt } from "./said";

/** What a job's rules ask of one fan and its duct; empty where the sheet has no such fields. */
export function equipmentViews(job: Job, i: number): EquipmentView[] {
  const { fans } = job;
  if (!fans || fans.isAbsent(i)) return [];
  return [efficacy(job, i), sound(job, i), duct(job, i), makeup(job, i), design(job, i)].filter(
    (view) => view !== undefined,
  );
}

export type { EquipmentView } from "./demand";

type View = EquipmentView | undefined;

function efficacy(job: Job, i: number): View {
  const { table, rated, system } = rowOf(job, i);
  if (!table.has("watts")) return undefined;
  const own = rated / table.number("watts", i);
  const { equipment } = job.settings;
  return viewOf(
    "Efficacy",
    Number.isFinite(own) ? `${shown(own)} ${flowUnit(system)}/W` : "not stated",
    () => {
      needs(equipment !== "", "the Job sheet names no equipment rules");
      const kind = table.text("fanKind", i);
      needs(kind !== "", "the row does not say what kind of fan it is");
      const flow = Number.isNaN(rated) ? undefined : rated;
      return leastEfficacy(equipment, findFan(kind), flow, system);
    },
    ({ value }) => ({
      asked: `${shown(value)} cfm/W or more`,
      isMet: Number.isFinite(own) ? own >= value : undefined,
    }),
  );
}

function sound(job: Job, i: number): View {
  const { table, rated, system } = rowOf(job, i);
  if (!table.has("sones")) return undefined;
  const own = table.number("sones", i);
  const { edition } = job.settings;
  const duty = job.fans?.duty(i);
  return viewOf(
    "Sound",
    Number.isNaN(own) ? "not stated" : `${shown(own)} sones`,
    () => {
      if (!edition) throw new RangeError("no edition");
      if (!duty || "problem" in duty) throw duty?.problem ?? new RangeError("the duty is blank");
      const flow = Number.isNaN(rated) ? undefined : rated;
      return loudest(edition.id, duty.value, flow, false, system);
    },
    ({ value }) => ({
      asked: typeof value === "number" ? `${shown(value)} sones at most` : value,
      isMet: typeof value === "number" ? atMost(own, value) : true,
    }),
  );
}

function duct(job: Job, i: number): View {
  const { table, rated, system, flow } = rowOf(job, i);
  if (!table.has("ductLength")) return undefined;
  const unit = unitOf("distance", system);
  const own = table.number("ductLength", i);
  const { ducts } = job.settings;
  const ruling = (measured: boolean) => {
    needs(ducts !== "", "the Job sheet names no duct table");
    const elbows = table.number("elbows", i);
    return longestDuct(
      ducts,
      {
        kind: findDuct(table.text("ductKind", i)),
        diameter: table.number("ductDiameter", i),
        ratedFlow: rated,
        elbows: Number.isNaN(elbows) ? 0 : elbows,
      },
      system,
      measured,
    );
  };
  const view = viewOf(
    "Duct",
    Number.isNaN(own) ? "not stated" : `${shown(own)} ${unit}`,
    () => ruling(false),
    ({ value }) => ({
      asked: typeof value === "number" ? `${shown(value)} ${unit} at most` : value,
      isMet: value === "no limit" || (typeof value === "number" ? atMost(own, value) : false),
    }),
  );
  const waiver = Number.isNaN(flow) ? undefined : attempt(() => ruling(true));
  return waiver && "value" in waiver ? waived(view, waiver.value) : view;
}

/** A table of lengths does not bind once the flow itself was measured. */
function waived(view: EquipmentView, { working, source }: Ruling<unknown>): EquipmentView {
  const { outcome } = view;
  const table = "problem" in outcome ? undefined : outcome;
  return {
    ...view,
    outcome: {
      asked: table ? `${table.asked} by the table` : "no limit",
      verdict: "a measured flow waives it",
      isMet: true,
      working: [...(table?.working ?? []), working],
      clauses: [...(table?.clauses ?? []), clauseOf(source)],
    },
  };
}

function makeup(job: Job, i: number): View {
  const { table, rated, system, flow } = rowOf(job, i);
  const room = job.fans?.room(i);
  const isKitchen = room && "value" in room && room.value.startsWith("kitchen");
  const { dwellings } = job.tables;
  if (!isKitchen || !(dwellings?.has("appliance") || table.has("fanKind"))) return undefined;
  const { ducts } = job.settings;
  const most = Math.max(...[flow, rated].filter((value) => value > 0));
  return viewOf(
    "Makeup air",
    Number.isFinite(most) ? `${shown(most)} ${flowUnit(system)}` : "not stated",
    () => {
      needs(ducts !== "", "the Job sheet names no duct table, whose code would say");
      needs(Number.isFinite(most), "the row has no rated and no measured flow");
      return makeupAir(ducts, most, hasAppliance(job, i), system);
    },
    ({ value }) => ({
      asked: value,
      verdict: value === "needed" ? "show it, or provide it" : "",
      isMet: value === "not needed",
    }),
  );
}

function design(job: Job, i: number): View {
  const { table, system, flow } = rowOf(job, i);
  const own = table.number("design", i);
  const { programme } = job.settings;
  if (!table.has("design") || (Number.isNaN(own) && programme === "")) return undefined;
  const unit = flowUnit(system);
  const view = viewOf(
    "Design match",
    Number.isNaN(flow) ? "not measured" : `${shown(flow)} ${unit}`,
    () => {
      needs(programme !== "", "the Job sheet names no programme");
      needs(!Number.isNaN(own), "the row has no design flow");
      return designMatch(programme, own, Number.isNaN(flow) ? own : flow, system);
    },
    ({ value, lowest, highest }) => ({
      asked: `${shown(lowest)} to ${shown(highest)} ${unit}, for a design of ${shown(own)}`,
      verdict: Number.isNaN(flow) ? "" : value,
      isMet: Number.isNaN(flow) ? undefined : value === "matches",
    }),
  );
  return view;
}

function rowOf(job: Job, i: number) {
  const { table, flow } = job.fans as NonNullable<Job["fans"]>;
  return {
    table,
    rated: table.number("rated", i),
    flow: flow[i] as number,
    system: job.settings.system,
  };
}

/** "yes" or "no" of the fan's dwelling; undefined where the sheet does not say. */
function hasAppliance(job: Job, i: number): boolean | undefined {
  const { dwellings } = job.tables;
  const name = plainName(job.fans?.table.text("dwelling", i) ?? "");
  const row = (dwellings?.texts("dwelling") ?? []).findIndex((each) => plainName(each) === name);
  const said = row < 0 ? "" : (dwellings?.text("appliance", row).toLowerCase() ?? "");
  return said === "" ? undefined : said === "yes";
}
