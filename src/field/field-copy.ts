import {
  boxesLayout,
  constantInUse,
  type Field,
  fansLayout,
  type Job,
  type SheetLayout,
} from "../job";
import { jobWorkbook, type Row } from "../new-job";
import { plainCopy } from "../plain-copy";
import { firstOpening, usefulSets } from "../records";
import type { Workbook } from "../workbook";

/** Of the Fans sheet: what names the fan, what is typed on the ladder, what comes of it. */
const fanKeys = [
  ...[
    "dwelling",
    "tag",
    "visit",
    "speed",
    "direction",
    "room",
    "first",
    "box",
    "openings",
    "required",
  ],
  ...["reading1", "reading2", "reading3", "flow", "status", "verdict", "next"],
  ...["tester", "date", "note", "duty", "pressure", "area", "constant"],
];
const boxKeys = ["box", "opening", "area", "constant"];

/** Which reading of a fan a row is, in a job that tells. */
const whichKeys = ["visit", "speed", "direction"];

/** The opening to begin with, as a word to read: no field of a job. */
const openFirstField: Field = {
  key: "first",
  title: "Open first",
  words: [],
  holds: "text",
};

/** The fields that a tester types, and that are brought back. */
export const broughtKeys = [
  ...["box", "openings", "reading1", "reading2", "reading3", "tester", "date", "note"],
] as const;

/**
 * A small workbook of native formulas to take to the fans: any spreadsheet program on a phone opens
 * it, shows flow, status, verdict and the next opening as readings are typed, and saves it again.
 */
export function fieldCopy(job: Job): Workbook {
  const { settings } = job;
  const rows = {
    settings: {
      name: settings.name,
      edition: settings.edition?.id ?? "",
      units: settings.system,
      low: settings.low,
      high: settings.high,
      constant: settings.constant,
    },
    dwellings: [],
    boxes: boxRows(job),
    fans: Array.from({ length: job.fans?.length ?? 0 }, (_, i) => fanRow(job, i)),
  };
  const layouts = [
    fansOf(job),
    { ...boxesLayout, fields: fieldsOf(boxesLayout, boxKeys, typedOnly) },
  ];
  return plainCopy(jobWorkbook(rows, layouts)).workbook;
}

/** Without its formula, where the field copy holds what the job came to. */
const typedOnly = ({ is: _is, ...field }: Field): Field => field;

function fieldsOf(
  layout: SheetLayout,
  keys: readonly string[],
  make = (field: Field) => field,
): Field[] {
  return keys.flatMap((key) => {
    if (key === openFirstField.key) return [openFirstField];
    const field = layout.fields.find((each) => each.key === key);
    return field ? [make(field)] : [];
  });
}

function fansOf(job: Job): SheetLayout {
  const choices = {
    box: job.boxes?.names ?? [],
    openings: [...new Set((job.boxes?.names ?? []).flatMap((name) => setsOf(job, name)))],
  };
  const keys = fanKeys.filter((key) => !whichKeys.includes(key) || job.fans?.table.has(key));
  const fields = fieldsOf(fansLayout, keys).map((field): Field => {
    if (field.key === "required") return typedOnly(field);
    const list = field.key === "box" || field.key === "openings" ? choices[field.key] : [];
    return list.length > 0 ? { ...field, choices: list } : field;
  });
  return { ...fansLayout, fields };
}

function setsOf(job: Job, box: string): string[] {
  const openings = job.boxes?.openings(box) ?? [];
  if (openings.length === 0) return [];
  return usefulSets(openings, constantInUse(job, box), job.settings).map(({ label }) => label);
}

function boxRows(job: Job): Row[] {
  return (job.boxes?.names ?? []).flatMap((box) =>
    (job.boxes?.openings(box) ?? []).map(({ label, area }) => ({
      ...{ box, opening: label, area },
      constant: constantInUse(job, box),
    })),
  );
}

function fanRow(job: Job, i: number): Row {
  const { fans } = job;
  if (!fans) return {};
  const { table } = fans;
  const typed = ["dwelling", "tag", ...whichKeys, "room", "duty", ...broughtKeys].flatMap((key) => {
    const value = table.has(key) ? table.raw(key, i) : null;
    return [[key, typeof value === "number" || typeof value === "string" ? value : null] as const];
  });
  const required = fans.requiredNumber(i);
  return {
    ...Object.fromEntries(typed),
    required: required > 0 ? required : null,
    first: openFirst(job, i),
  };
}

/** "C, 3.9 Pa": the opening to begin with. */
function openFirst(job: Job, i: number): string | null {
  const first = firstOpening(job, i);
  return first ? `${first.label}, ${first.pressure.toFixed(1)} Pa` : null;
}
