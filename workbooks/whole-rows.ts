import { usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { serial } from "./job-rows";

/**
 * Cedar Ferry: an invented row of seven houses under the Washington code, each ventilated in another
 * way: supply and exhaust of a recovery unit, a fan at two speeds, a fan on a timer, or not at all;
 * one fan was mended and read again; a seal and the state of two houses were noted. Nothing here is a measurement.
 */
const box = "Box 3";
const areas = { A: (Math.PI / 4) * 4.25 ** 2, B: (Math.PI / 4) * 6 ** 2, C: 50, D: 90 } as const;
const day = serial("2026-10-05");

const byBox = (openings: keyof typeof areas, flow: number): Row => {
  const pressure = (flow / (1.07 * areas[openings])) ** 2;
  const read = (by: number) => Math.round(10 * (pressure + by)) / 10;
  return { box, openings, reading1: read(0), reading2: read(0.1), reading3: read(-0.1) };
};
const byHood = (flow: number): Row => ({
  instrument: "Hood P4",
  device1: flow,
  device2: flow + 1,
  device3: flow - 1,
});

export function wholeRows(): JobRows {
  const fans: Row[] = [];
  const fan = (house: number, row: Row, visit = 1) =>
    fans.push({
      dwelling: `House ${house}`,
      visit,
      direction: "exhaust",
      tester: house % 2 ? "L. Quade" : "T. Ferro",
      date: day + house + 7 * (visit - 1),
      ...row,
    });
  const bath: Row = { tag: "B1", room: "Bath", roomKind: "bathroom", duty: "on demand" };
  const hood: Row = {
    tag: "K1",
    room: "Kitchen",
    roomKind: "kitchen hood",
    duty: "on demand",
    cooking: "electric",
    rated: 220,
  };

  // A recovery unit: two supply terminals, two exhaust terminals, near enough to each other.
  const unit: Row = { duty: "continuous", note: "recovery unit in the attic" };
  const terminal = (tag: string, room: string, direction: string, flow: number, rest: Row = {}) =>
    ({ ...unit, tag, room, direction, ...byHood(flow), ...rest }) as Row;
  for (const [house, supply] of [
    [1, 34],
    [2, 44],
  ] as const) {
    fan(house, terminal("S1", "Living room", "supply", supply));
    fan(house, terminal("S2", "Bedroom", "supply", 31));
    fan(house, terminal("E1", "Bath", "exhaust", 33, { roomKind: "bathroom" }));
    fan(house, terminal("E2", "Utility room", "exhaust", 29, { roomKind: "utility" }));
    fan(house, { ...hood, ...byBox("D", 190) });
  }

  // One fan at two speeds: low all the time for the whole house, boost for the bath.
  fan(3, { ...bath, speed: "low", duty: "continuous", rated: 110, ...byBox("B", 78) });
  fan(3, { ...bath, speed: "boost", rated: 110, ...byBox("C", 96), review: 82 });
  fan(3, { ...hood, cooking: "fuel", rated: 280, capture: 82, ...byBox("D", 231) });

  // A fan on a timer, half of the time: what it counts for is half of what it moves.
  fan(4, { ...bath, runShare: 0.5, rated: 150, ...byBox("C", 136) });
  fan(4, { ...hood, rated: 180, ...byBox("D", 171) });
  // Both baths go through one booster, and the second was read alone, a day later.
  const guest: Row = { ...bath, tag: "B2", room: "Guest bath", rated: 80, shared: "B1" };
  fan(4, { ...guest, ...byBox("B", 62), date: day + 5 });

  // A crushed duct: short on the first visit, mended, and read again a week later.
  const weak: Row = { ...bath, rated: 110 };
  fan(5, { ...weak, ...byBox("A", 41), note: "duct crushed behind the joist" });
  fan(5, { ...weak, ...byBox("B", 84), note: "duct renewed" }, 2);
  const whole: Row = { ...bath, tag: "B2", room: "Owner's bath", duty: "continuous", rated: 110 };
  fan(5, { ...whole, ...byBox("B", 79) });
  fan(5, { ...hood, rated: 190, ...byBox("D", 152) });

  // An enclosed kitchen with a fan in its wall that runs all the time.
  fan(6, {
    tag: "K1",
    room: "Kitchen",
    roomKind: "kitchen",
    duty: "continuous",
    volume: 820,
    enclosed: "yes",
    cooking: "electric",
    rated: 110,
    ...byBox("B", 82),
  });
  fan(6, { ...bath, rated: 80, shared: "K1", ...byBox("B", 66) });

  // Room fans alone: nothing ventilates the house as a whole.
  fan(7, { ...bath, rated: 80, seal: "leaky", ...byBox("B", 61) });
  fan(7, { ...hood, rated: 210, grille: 260, ...byBox("D", 179) });

  return {
    settings: {
      ...usualSettings("ip"),
      name: "Cedar Ferry, whole-house ventilation",
      edition: "WA-2021",
      ducts: "WA-2021",
      adopted: serial("2024-03-15"),
    },
    features: ["instruments", "kitchens", "visits", "conditions"],
    dwellings: [
      [1, 1480, 3],
      [2, 1480, 3],
      [3, 1620, 3],
      [4, 1310, 2],
      [5, 1710, 3],
      [6, 980, 2],
      [7, 1150, 2],
    ].map(([house, floor, bedrooms]) => ({
      dwelling: `House ${house}`,
      floor: floor as number,
      bedrooms: bedrooms as number,
      ducted: house === 1 || house === 2 ? "yes" : "no",
      appliance: house === 3 ? "yes" : "no",
      windows: house === 5 ? "open" : "shut",
      others: house === 5 ? "on" : "off",
      wind: house === 4 ? "gusty" : "calm",
      baseline: house === 4 ? 6.5 : 0.4,
    })),
    boxes: [
      { opening: "A", shape: "round", size1: 4.25 },
      { opening: "B", shape: "round", size1: 6 },
      { opening: "C", shape: "rectangular", size1: 5, size2: 10 },
      { opening: "D", shape: "rectangular", size1: 9, size2: 10 },
    ].map((opening) => ({
      box,
      size2: null,
      ...opening,
      count: 1,
      constant: 1.07,
      how: "steel rule, both sides",
      face: 196,
      checked: serial("2026-06-18"),
    })),
    instruments: [
      {
        instrument: "Hood P4",
        kind: "powered hood",
        constant: 1,
        exponent: 1,
        lowest: 10,
        highest: 300,
        percent: 3,
        floor: 2,
        resolution: 1,
        checked: serial("2026-04-20"),
        certificate: "CF-22",
      },
    ],
    fans,
  };
}
