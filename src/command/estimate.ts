import { basename, extname } from "node:path";
import { InputError, isBlankCell } from "../cells";
import { ductRules, type Edition, findEdition } from "../editions";
import {
  type Job,
  layoutOf,
  rowsFromLots,
  type SheetKind,
  totalsRows,
  usualSettings,
} from "../job";
import { type JobRows, jobWorkbook, type Row } from "../new-job";
import { type Look, readNamed } from "./check-file";

/** Rated sizes of common practice, for those who give no catalogue: models and costs are theirs to type. */
const usualSizes = {
  ip: [50, 80, 110, 130, 150, 200, 300, 400],
  si: [25, 40, 55, 65, 75, 100, 150],
};
/** Rows for the readings to come. */
const blankFans = 20;

/**
 * An estimate as a new job workbook, of lists of lots and plans, a catalogue of fans and a list of
 * openings, each in a file of its own or all in one; with what had to be taken for granted.
 */
export async function makeEstimate(
  files: readonly string[],
  wanted: string | undefined,
  look: Look,
): Promise<{ readonly bytes: Uint8Array; readonly said: readonly string[] }> {
  const jobs: Job[] = [];
  for (const file of files) jobs.push(await readNamed(file, look));
  const edition = wanted === undefined ? undefined : findEdition(wanted);
  const made = estimateRows(jobs, basename(files[0] ?? "", extname(files[0] ?? "")), edition);
  if (!made)
    throw new InputError(
      `${files.join(", ")}: no list of lots was recognised: give it headings such as Lot, Plan, Phase, Floor area, Bedrooms, Baths`,
    );
  return { bytes: jobWorkbook(made.rows).save(), said: made.said };
}

function estimateRows(jobs: readonly Job[], name: string, edition: Edition | undefined) {
  const lists = jobs.flatMap(({ lots }) => lots);
  if (!lists.some(({ lots }) => lots.some((lot) => lot.name !== ""))) return undefined;
  const isMetric = lists.some(({ floorUnit }) => floorUnit === "m²");
  const system =
    edition?.systems.length === 1 ? (edition.systems[0] ?? "ip") : isMetric ? "si" : "ip";
  const boxes = typedRows(jobs, "boxes");
  const names = new Set(boxes.map(({ box }) => String(box ?? "")));
  const { dwellings, schedule, said } = rowsFromLots(
    lists,
    system,
    names.size === 1 ? ([...names][0] ?? "") : "",
  );
  const given = typedRows(jobs, "catalogue").map((row) =>
    row.serves === undefined
      ? row
      : { ...row, serves: /hood/i.test(String(row.serves)) ? "kitchen hood" : "other rooms" },
  );
  const catalogue: Row[] =
    given.length > 0
      ? given
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
      ducts: ductRules.some(({ code }) => code === edition?.id) ? (edition?.id ?? "") : "",
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
    said: [
      ...(edition ? [] : ["no edition is named: --edition names one, or type it on the Job sheet"]),
      ...(given.length > 0 ? [] : ["no catalogue was given: usual sizes stand in for your fans"]),
      ...(boxes.length > 0 ? [] : ["no list of openings was given: which to bring is left blank"]),
      ...said,
    ],
  };
}

/** What was typed on the sheets of a kind, row by row. */
function typedRows(jobs: readonly Job[], kind: SheetKind): Row[] {
  return jobs.flatMap(({ tables }) => {
    const table = tables[kind];
    return Array.from({ length: table?.length ?? 0 }, (_, i) =>
      Object.fromEntries(
        layoutOf(kind).fields.flatMap(({ key, is }) => {
          const value = table?.raw(key, i) ?? null;
          if (is || isBlankCell(value) || typeof value === "boolean") return [];
          return [
            [key, typeof value === "number" ? (table?.number(key, i) ?? value) : String(value)],
          ];
        }),
      ),
    );
  });
}
