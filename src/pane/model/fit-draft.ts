import { type FitChoice, readHeading, type SheetLayout, unitOf } from "../../job";
import type { FitRow, FitView } from "./fit-view";

/** Corrections that are not saved yet. */
export type FitDraft = readonly FitChoice[];

/** The view with the corrections in it: who takes a field takes it from the heading that had it. */
export function withDraft(view: FitView, draft: FitDraft, ownUnit: OwnUnit): FitView {
  const own = draft.filter((choice) => choice.sheet === view.sheet);
  if (own.length === 0) return view;
  const rows = view.rows.map((row): FitRow => {
    const choice = own.find((entry) => entry.heading === row.heading);
    const lost = own.some((entry) => entry.field === row.field && entry.heading !== row.heading);
    if (!choice && !lost) return row;
    const field = choice?.field ?? "";
    const named = readHeading(row.heading).unit?.name;
    const unit = named ?? ownUnit(view.layout, field);
    return {
      ...row,
      field,
      unit,
      unitAssumed: !named && unit !== "",
      chosen: choice !== undefined,
    };
  });
  const absent = view.layout.fields.filter((field) => !rows.some((row) => row.field === field.key));
  return {
    ...view,
    rows,
    absent: absent.map((field) => field.title),
    needed: absent.filter((field) => field.needed).map((field) => field.title),
  };
}

/** The unit that a job of this system keeps a field in; "" where it has none. */
export type OwnUnit = (layout: SheetLayout, field: string) => string;

export function ownUnitOf(system: Parameters<typeof unitOf>[1]): OwnUnit {
  return (layout, key) => {
    const measure = layout.fields.find((field) => field.key === key)?.measure;
    return measure ? unitOf(measure, system) : "";
  };
}

/** The fields that a heading may stand for: a unit in it rules out those that measure otherwise. */
export function fieldsFor(layout: SheetLayout, heading: string): SheetLayout["fields"] {
  const named = readHeading(heading).unit?.dimension;
  if (!named) return layout.fields;
  return layout.fields.filter(
    ({ measure }) =>
      measure === undefined ||
      readHeading(`x (${unitOf(measure, "ip")})`).unit?.dimension === named,
  );
}
