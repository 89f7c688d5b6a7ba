/**
 * Alder Terrace: an invented subdivision of 27 lots on four plans, tested in autumn with four
 * field-made boxes. Nothing here is a measurement; it shows the sheets and exercises the checks.
 */

export interface PlannedFan {
  readonly tag: string;
  readonly room: string;
  readonly roomKind: string;
  readonly duty: "on demand" | "continuous";
  /** Rated and typical measured flow, cfm. */
  readonly rated: number;
  readonly typical: number;
}

export interface Plan {
  readonly name: string;
  /** ft² */
  readonly floor: number;
  readonly bedrooms: number;
  readonly fans: readonly PlannedFan[];
}

const owners = (rated: number, typical: number): PlannedFan => ({
  tag: "B1",
  room: "Owner's bath",
  roomKind: "bathroom",
  duty: "continuous",
  rated,
  typical,
});

const bath = (tag: string, room: string, rated: number, typical: number): PlannedFan => ({
  tag,
  room,
  roomKind: "bathroom",
  duty: "on demand",
  rated,
  typical,
});

const hood = (rated: number, typical: number): PlannedFan => ({
  tag: "K1",
  room: "Kitchen",
  roomKind: "kitchen hood",
  duty: "on demand",
  rated,
  typical,
});

const powder: PlannedFan = {
  tag: "T1",
  room: "Powder room",
  roomKind: "toilet",
  duty: "on demand",
  rated: 70,
  typical: 61,
};

export const plans: readonly Plan[] = [
  {
    name: "Alder",
    floor: 1180,
    bedrooms: 2,
    fans: [owners(80, 62), bath("B2", "Hall bath", 80, 66), hood(160, 132)],
  },
  {
    name: "Birch",
    floor: 1620,
    bedrooms: 3,
    fans: [owners(110, 84), bath("B2", "Hall bath", 80, 65), powder, hood(160, 128)],
  },
  {
    name: "Cedar",
    floor: 2140,
    bedrooms: 4,
    fans: [
      owners(130, 99),
      bath("B2", "Hall bath", 80, 67),
      bath("B3", "Guest bath", 110, 83),
      hood(220, 176),
    ],
  },
  {
    name: "Dogwood",
    floor: 2860,
    bedrooms: 4,
    fans: [
      owners(130, 97),
      bath("B2", "Hall bath", 110, 86),
      bath("B3", "Guest bath", 80, 64),
      powder,
      hood(280, 224),
    ],
  },
];

export interface PlannedOpening {
  readonly box: string;
  readonly opening: string;
  readonly shape: "round" | "rectangular";
  /** in */
  readonly size1: number;
  readonly size2?: number;
  readonly how: string;
  /** ISO date */
  readonly checked: string;
}

const round = (box: string, opening: string, size1: number, checked: string): PlannedOpening => ({
  box,
  opening,
  shape: "round",
  size1,
  how: "caliper, four diameters",
  checked,
});

const slot = (
  box: string,
  opening: string,
  size1: number,
  size2: number,
  checked: string,
): PlannedOpening => ({
  box,
  opening,
  shape: "rectangular",
  size1,
  size2,
  how: "steel rule, both sides",
  checked,
});

export const openings: readonly PlannedOpening[] = [
  round("Box 1", "A", 3, "2026-03-04"),
  round("Box 1", "B", 4.25, "2026-03-04"),
  round("Box 1", "C", 5.5, "2026-03-04"),
  slot("Box 1", "D", 6, 8, "2026-03-04"),
  round("Box 2", "A", 4, "2026-03-05"),
  round("Box 2", "B", 5.5, "2026-03-05"),
  slot("Box 2", "C", 6, 7, "2026-03-05"),
  slot("Box 2", "D", 8, 10, "2026-03-05"),
  round("Box 3", "A", 4.25, "2026-06-18"),
  round("Box 3", "B", 6, "2026-06-18"),
  slot("Box 3", "C", 5, 10, "2026-06-18"),
  slot("Box 3", "D", 9, 10, "2026-06-18"),
  round("Box 4", "A", 5, "2026-06-19"),
  round("Box 4", "B", 6.5, "2026-06-19"),
  slot("Box 4", "C", 7, 8, "2026-06-19"),
  slot("Box 4", "D", 10, 10, "2026-06-19"),
];

export const lots = 26;
export const testers = ["R. Kestrel", "M. Oduya"] as const;
