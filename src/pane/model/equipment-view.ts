import { shown } from "../../cells";
import {
  attempt,
  designAsked,
  ductAllowed,
  efficacyAsked,
  flowUnit,
  isKitchen,
  type Job,
  makeupAsked,
  mostFlow,
  type Ruling,
  soundAllowed,
  unitOf,
} from "../../job";
import { atMost, type EquipmentView, viewOf } from "./demand";
import { clauseOf } from "./marks";

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
  return viewOf(
    "Efficacy",
    Number.isFinite(own) ? `${shown(own)} ${flowUnit(system)}/W` : "not stated",
    () => efficacyAsked(job, i),
    ({ value }) => ({
      asked: `${shown(value)} cfm/W or more`,
      isMet: Number.isFinite(own) ? own >= value : undefined,
    }),
  );
}

const sones = (value: number) => `${shown(value)} ${value === 1 ? "sone" : "sones"}`;

function sound(job: Job, i: number): View {
  const { table } = rowOf(job, i);
  if (!table.has("sones")) return undefined;
  const own = table.number("sones", i);
  return viewOf(
    "Sound",
    Number.isNaN(own) ? "not stated" : sones(own),
    () => soundAllowed(job, i),
    ({ value }) => ({
      asked: typeof value === "number" ? `${sones(value)} at most` : value,
      isMet: typeof value === "number" ? atMost(own, value) : true,
    }),
  );
}

function duct(job: Job, i: number): View {
  const { table, system, flow } = rowOf(job, i);
  if (!table.has("ductLength")) return undefined;
  const unit = unitOf("distance", system);
  const own = table.number("ductLength", i);
  const view = viewOf(
    "Duct",
    Number.isNaN(own) ? "not stated" : `${shown(own)} ${unit}`,
    () => ductAllowed(job, i),
    ({ value }) => ({
      asked: typeof value === "number" ? `${shown(value)} ${unit} at most` : value,
      isMet: value === "no limit" || (typeof value === "number" ? atMost(own, value) : false),
    }),
  );
  const waiver = Number.isNaN(flow) ? undefined : attempt(() => ductAllowed(job, i, true));
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
  const { table, system } = rowOf(job, i);
  const { dwellings } = job.tables;
  if (!isKitchen(job, i) || !(dwellings?.has("appliance") || table.has("fanKind")))
    return undefined;
  const most = mostFlow(job, i);
  return viewOf(
    "Makeup air",
    most > 0 ? `${shown(most)} ${flowUnit(system)}` : "not stated",
    () => makeupAsked(job, i),
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
    () => designAsked(job, i, Number.isNaN(flow) ? own : flow),
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
