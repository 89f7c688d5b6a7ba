import { boxesLayout } from "./boxes";
import { catalogueLayout } from "./catalogue";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { SheetKind, SheetLayout } from "./field";
import { instrumentsLayout } from "./instruments";
import { pairsLayout } from "./pairs";
import { registersLayout } from "./registers";
import { scheduleLayout } from "./schedule";

/** What a new job may have beyond readings and verdicts. */
export interface Feature {
  readonly title: string;
  readonly help: string;
  /** Fields that it adds, by sheet. */
  readonly fields: Readonly<Partial<Record<SheetKind, readonly string[]>>>;
  /** Whole sheets that it adds. */
  readonly sheets: readonly SheetKind[];
}

export const features = {
  spread: {
    title: "Spread of each flow",
    help: "What the manometer, the sizes and the constant leave open, and the chance that a fan meets its rate",
    fields: {
      boxes: ["tolerance", "areaLimit"],
      fans: ["areaLimit", "spread", "expanded", "chance"],
    },
    sheets: [],
  },
  proof: {
    title: "Proof of the boxes",
    help: "Paired readings of a box and a reference, and a list of instruments",
    fields: {},
    sheets: ["instruments", "pairs"],
  },
  instruments: {
    title: "Other instruments",
    help: "Fans measured with a hood, a bag or a device with range settings",
    fields: { fans: ["instrument", "device1", "device2", "device3"] },
    sheets: ["instruments"],
  },
  twoOpenings: {
    title: "Second opening",
    help: "A second reading, from which the flow without the box follows",
    fields: { fans: ["openings2", "area2", "pressure2", "unboxed"] },
    sheets: [],
  },
  air: {
    title: "Air density",
    help: "Actual and standard flow beside the measured one",
    fields: { fans: ["temperature", "density", "actual", "standard", "judged"] },
    sheets: [],
  },
  equipment: {
    title: "Equipment",
    help: "Watts, sones, ducts and the design flow of each fan",
    fields: {
      fans: [
        "fanKind",
        "watts",
        "sones",
        "design",
        "ductKind",
        "ductDiameter",
        "ductLength",
        "elbows",
        "match",
      ],
      dwellings: ["appliance"],
    },
    sheets: [],
  },
  existing: {
    title: "Existing building",
    help: "Room deficits, infiltration credit and what is still missing",
    fields: {
      fans: ["window", "deficit"],
      dwellings: [
        "leak50",
        "height",
        "exposed",
        "balanced",
        "deficits",
        "raised",
        "infiltration",
        "needed",
        "missing",
      ],
    },
    sheets: [],
  },
  registers: {
    title: "Pressure pan",
    help: "The closed box over each register, house at 50 Pa",
    fields: {},
    sheets: ["registers"],
  },
  estimate: {
    title: "Estimate",
    help: "Planned fans: what to buy, whether the duct will do, which opening to bring",
    fields: {},
    sheets: ["catalogue", "schedule"],
  },
} as const satisfies Record<string, Feature>;

export type FeatureKey = keyof typeof features;

/** The sheets of a new job with the columns it has, in their order. */
export type JobPlan = Readonly<
  Record<AlwaysKind, SheetLayout> & Partial<Record<SheetKind, SheetLayout>>
>;

type AlwaysKind = "dwellings" | "boxes" | "fans";

const always: readonly SheetLayout[] = [dwellingsLayout, boxesLayout, fansLayout];
const onWish: readonly SheetLayout[] = [
  instrumentsLayout,
  pairsLayout,
  registersLayout,
  catalogueLayout,
  scheduleLayout,
];

/** The sheets of a new job with these features. */
export function jobPlan(wanted: readonly FeatureKey[]): JobPlan {
  const chosen: Feature[] = wanted.map((key) => features[key]);
  const layouts = [
    ...always,
    ...onWish.filter(({ kind }) => chosen.some(({ sheets }) => sheets.includes(kind))),
  ];
  return Object.fromEntries(
    layouts.map((layout) => {
      const extras = new Set(chosen.flatMap(({ fields }) => fields[layout.kind] ?? []));
      return [layout.kind, withExtras(layout, extras)];
    }),
  ) as JobPlan;
}

/** A layout with its usual fields and some of the extra ones, each in its place. */
function withExtras(layout: SheetLayout, extras: ReadonlySet<string>): SheetLayout {
  const fields = layout.fields.filter(({ after }) => after === undefined);
  for (const extra of layout.fields)
    if (extra.after !== undefined && extras.has(extra.key)) {
      const before = nearest(layout, extra.after, (key) =>
        fields.some((field) => field.key === key),
      );
      fields.splice(fields.findIndex((field) => field.key === before) + 1, 0, extra);
    }
  return { ...layout, fields };
}

/** The field that an extra one stands after: where that is left out itself, the one before it. */
function nearest(layout: SheetLayout, key: string, isThere: (key: string) => boolean): string {
  if (isThere(key)) return key;
  const after = layout.fields.find((field) => field.key === key)?.after;
  return after === undefined ? key : nearest(layout, after, isThere);
}

/** A plain job: readings and verdicts, nothing further. */
export const plainPlan = jobPlan([]);

/** The job whose blank form comes with the project. */
export const usualFeatures: readonly FeatureKey[] = ["spread", "proof"];
