import { totalsRows, usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { serial } from "./job-rows";

/**
 * Heron Field: an invented subdivision of 36 lots on four plans, estimated before anything is
 * built: what each fan must move, what to buy, whether the drawn duct will do, which opening of
 * the box to bring to the test.
 */
interface PlannedFan {
  readonly tag: string;
  readonly room: string;
  readonly roomKind: string;
  readonly duty: string;
  readonly whole: "yes" | "no";
  readonly ductKind: "flex" | "smooth";
  readonly ductDiameter: number;
  readonly ductLength: number;
  readonly elbows: number;
}

const bath = (tag: string, room: string, whole: "yes" | "no", duct: number): PlannedFan => ({
  tag,
  room,
  roomKind: "bathroom",
  duty: whole === "yes" ? "continuous" : "on demand",
  whole,
  ductKind: duct > 12 ? "smooth" : "flex",
  ductDiameter: whole === "yes" ? 6 : duct > 20 ? 4 : 5,
  ductLength: duct,
  elbows: duct > 12 ? 2 : 1,
});

const hood = (length: number, diameter: number): PlannedFan => ({
  tag: "K1",
  room: "Kitchen",
  roomKind: "kitchen hood",
  duty: "on demand",
  whole: "no",
  ductKind: "smooth",
  ductDiameter: diameter,
  ductLength: length,
  elbows: 1,
});

const plans = [
  { plan: "Heron", floor: 1240, bedrooms: 2, fans: [bath("B1", "Bath", "yes", 10), hood(12, 6)] },
  {
    plan: "Teal",
    floor: 1710,
    bedrooms: 3,
    fans: [bath("B1", "Bath", "yes", 16), bath("B2", "Hall bath", "no", 9), hood(18, 6)],
  },
  {
    plan: "Grebe",
    floor: 2260,
    bedrooms: 4,
    fans: [
      bath("B1", "Bath", "yes", 22),
      bath("B2", "Hall bath", "no", 14),
      bath("B3", "Guest bath", "no", 30),
      hood(9, 5),
    ],
  },
  {
    plan: "Avocet",
    floor: 3180,
    bedrooms: 4,
    fans: [bath("B1", "Bath", "yes", 18), bath("B2", "Hall bath", "no", 11), hood(24, 7)],
  },
] as const;

const phaseOf = (i: number) => `Phase ${1 + Math.floor(i / 12)}`;

const lots = 36;
const box = "Box 2";

export function estimateRows(): JobRows {
  const all = Array.from({ length: lots }, (_, i) => ({
    dwelling: `Lot ${String(i + 1).padStart(2, "0")}`,
    ...(plans[(i * 5 + (i >> 3)) % plans.length] as (typeof plans)[number]),
  }));
  return {
    settings: {
      ...usualSettings("ip"),
      name: "Heron Field, fan schedule",
      edition: "62.2-2019",
      ducts: "IRC-2021",
      equipment: "IECC-2021",
      margin: 15,
      hoursFan: 1.5,
      hoursDwelling: 2,
      hourRate: 60,
      priceMargin: 20,
    },
    features: ["estimate"],
    dwellings: all.map(({ dwelling, plan, floor, bedrooms }, i) => ({
      dwelling,
      plan,
      phase: phaseOf(i),
      floor,
      bedrooms,
    })),
    boxes: [
      { opening: "A", shape: "round", size1: 4 },
      { opening: "B", shape: "round", size1: 5.5 },
      { opening: "C", shape: "rectangular", size1: 6, size2: 8 },
      { opening: "D", shape: "rectangular", size1: 9, size2: 10 },
    ].map((opening) => ({
      box,
      ...opening,
      size2: opening.size2 ?? null,
      count: 1,
      constant: 1.07,
      how: "steel rule, both sides",
      checked: serial("2026-06-18"),
    })),
    fans: Array.from({ length: 20 }, (): Row => ({})),
    catalogue: [
      ...[50, 80, 110, 130, 150, 200, 300].map((rated) => ({
        model: `Stock ${rated}`,
        rated,
        serves: rated === 300 ? "kitchen hood" : null,
        watts: Math.round(rated / 4.2),
        sones: rated < 100 ? 0.7 : 1,
        cost: 40 + rated,
      })),
      ...["flex 4", "flex 5", "flex 6", "smooth 4", "smooth 5", "smooth 6", "smooth 7"].map(
        (model, i) => ({
          model,
          cost: 2 + i / 2,
        }),
      ),
    ],
    totals: totalsRows(all.map(({ plan }, i) => ({ plan, phase: phaseOf(i) }))),
    schedule: all.flatMap(({ dwelling, fans }) => fans.map((fan) => ({ dwelling, ...fan, box }))),
  };
}
