import { boxesLayout } from "./boxes";
import { catalogueLayout } from "./catalogue";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { FeatureKey } from "./features";
import type { SheetLayout } from "./field";
import { instrumentsLayout } from "./instruments";
import { pairsLayout } from "./pairs";
import { registersLayout } from "./registers";
import { scheduleLayout } from "./schedule";
import type { SheetKind } from "./sheet-kind";
import { totalsLayout } from "./totals";

/** The sheets of a new job with the columns it has, in their order. */
export type JobPlan = Readonly<
  Record<"dwellings" | "boxes" | "fans", SheetLayout> & Partial<Record<SheetKind, SheetLayout>>
>;

const inOrder: readonly SheetLayout[] = [
  dwellingsLayout,
  boxesLayout,
  fansLayout,
  instrumentsLayout,
  pairsLayout,
  registersLayout,
  catalogueLayout,
  scheduleLayout,
  totalsLayout,
];

/** The sheets of a new job with these features. */
export function jobPlan(wanted: readonly FeatureKey[]): JobPlan {
  const isWanted = (feature: FeatureKey) => wanted.includes(feature);
  return Object.fromEntries(
    inOrder
      .filter(({ features }) => features === undefined || features.some(isWanted))
      .map((layout) => [
        layout.kind,
        {
          ...layout,
          fields: layout.fields.filter(
            ({ feature }) => feature === undefined || [feature].flat().some(isWanted),
          ),
        },
      ]),
  ) as Partial<JobPlan> as JobPlan;
}

/** A plain job: readings and verdicts, nothing further. */
export const plainPlan = jobPlan([]);

/** The job whose blank form comes with the project. */
export const usualFeatures: readonly FeatureKey[] = ["spread", "proof"];
