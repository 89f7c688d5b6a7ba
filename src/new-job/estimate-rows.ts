import { InputError, isBlankCell, isCellError } from "../cells";
import { ductRules, type Edition, type System } from "../editions";
import {
  type Job,
  layoutOf,
  rowsFromLots,
  type SheetKind,
  totalsRows,
  unitOf,
  usualSettings,
} from "../job";
import { conversionFactor } from "../units";
import type { JobRows, Row } from "./job-rows";
import { fanOnOffer, numberTold, withOwnCatalogue } from "./on-offer";

/** Rated sizes of common practice, for those who give no catalogue: models and costs are theirs to type. */
const usualSizes = {
  ip: [50, 80, 110, 130, 150, 200, 300, 400],
  si: [25, 40, 55, 65, 75, 100, 150],
};
/** Rows for the readings to come. */
const blankFans = 20;

/**
 * The rows of an estimate of the lists of lots and plans, the catalogue and the openings in these
 * jobs, with what had to be taken for granted. Undefined where no lot is listed; throws an InputError
 * where none has a room.
 */
export function estimateRows(given: readonly Job[], name: string, edition: Edition | undefined) {
  const jobs = given.map(withOwnCatalogue);
  const lists = jobs.flatMap(({ lots }) => lots);
  if (!lists.some(({ lots }) => lots.some((lot) => lot.name !== ""))) return undefined;
  const isMetric = lists.some(({ units }) => units.floor === "m²");
  const system =
    edition?.systems.length === 1 ? (edition.systems[0] ?? "ip") : isMetric ? "si" : "ip";
  const boxes = typedRows(jobs, "boxes", system);
  const names = new Set(boxes.map(({ box }) => String(box ?? "")));
  const { dwellings, schedule, said } = rowsFromLots(
    lists,
    system,
    names.size === 1 ? ([...names][0] ?? "") : "",
  );
  if (schedule.length === 0)
    throw new InputError(
      `None of the ${dwellings.length} lots lists a room with a fan: give them columns such as Baths, Half baths, Kitchens, Laundry with how many of each, or a list of plans that has them.`,
    );
  const onOffer = typedRows(jobs, "catalogue", system).flatMap(fanOnOffer);
  const catalogue: Row[] =
    onOffer.length > 0
      ? onOffer
      : usualSizes[system].map((rated) => ({
          model: `Size ${rated}`,
          rated,
          note: "a usual size: name your model and its cost",
        }));
  const ducts = new Set(
    schedule
      .filter(({ ductKind }) => ductKind !== null)
      .map(({ ductKind, ductDiameter }) => `${ductKind} ${ductDiameter ?? ""}`),
  );
  for (const { model } of catalogue) ducts.delete(String(model));
  const rows: JobRows = {
    settings: {
      ...usualSettings(system),
      name,
      edition: edition?.id ?? "",
      ducts: edition && ductRules.some(({ code }) => code === edition.id) ? edition.id : "",
    },
    features: ["estimate"],
    dwellings,
    boxes: boxes.length > 0 ? boxes : [{}],
    fans: Array.from({ length: blankFans }, () => ({})),
    catalogue: [...catalogue, ...[...ducts].sort().map((model) => ({ model }))],
    schedule,
    totals: totalsRows(
      dwellings.map(({ plan, phase }) => ({ plan: String(plan), phase: String(phase) })),
    ),
  };
  return {
    rows,
    /** Of the jobs given those from which nothing was taken, by their place. */
    unused: jobs.flatMap((job, i) => (isUsed(job) ? [] : [i])),
    said: [
      ...(edition ? [] : ["no edition is named: type it on the Job sheet"]),
      ...(onOffer.length > 0 ? [] : ["no catalogue was given: usual sizes stand in for your fans"]),
      ...(boxes.length > 0 ? [] : ["no list of openings was given: which to bring is left blank"]),
      ...said,
    ],
  };
}

const isUsed = ({ lots, tables }: Job) =>
  lots.length > 0 || tables.catalogue !== undefined || tables.boxes !== undefined;

/** Areas that no size gives are typed, though a new job works them out. */
const typedToo = ["area"];

/** What was typed on the sheets of a kind, row by row, in the units of the estimate. */
function typedRows(jobs: readonly Job[], kind: SheetKind, system: System): Row[] {
  return jobs.flatMap(({ tables, settings }) => {
    const table = tables[kind];
    const fields = (i: number) =>
      layoutOf(kind).fields.filter(
        ({ key, is }) => !is || (typedToo.includes(key) && !((table?.number("size1", i) ?? 0) > 0)),
      );
    return Array.from({ length: table?.length ?? 0 }, (_, i) =>
      Object.fromEntries(
        fields(i).flatMap(({ key, measure, holds }): [string, string | number][] => {
          const value = table?.raw(key, i) ?? null;
          if (isBlankCell(value) || isCellError(value) || typeof value === "boolean") return [];
          if (typeof value !== "number")
            return [[key, holds === "number" ? numberTold(String(value)) : String(value)]];
          const number = table?.number(key, i) ?? value;
          const units =
            measure &&
            ([settings.system, system].map((each) => unitOf(measure, each)) as [string, string]);
          const converted = units ? number * conversionFactor(...units) : number;
          return [[key, converted === value ? value : Number(converted.toPrecision(4))]];
        }),
      ),
    );
  });
}
