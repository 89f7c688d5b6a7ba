import { usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { dice, rounded } from "./dice";
import { serial } from "./job-rows";

/**
 * Quarry Yard: an invented workshop proves a new box against a hood on a bench fan, and uses an
 * older one whose proof was never finished. Nothing here is a measurement.
 */
const openings = [
  { box: "Box 5", opening: "A", shape: "round", size1: 3.5, face: 400 },
  { box: "Box 5", opening: "B", shape: "round", size1: 5, face: 400 },
  { box: "Box 5", opening: "C", shape: "rectangular", size1: 6, size2: 7, face: 400 },
  { box: "Box 5", opening: "D", shape: "rectangular", size1: 8, size2: 10, face: 400 },
  { box: "Box 6", opening: "A", shape: "round", size1: 4.5 },
  { box: "Box 6", opening: "B", shape: "rectangular", size1: 6, size2: 8 },
] as const;

const day = serial("2026-10-05");
const tester = "A. Lindqvist";

export function proofRows(): JobRows {
  return {
    settings: {
      ...usualSettings("ip"),
      name: "Quarry Yard, proof of Box 5",
      edition: "62.2-2016",
      judging: "guarded",
    },
    features: ["spread", "proof"],
    dwellings: [{ dwelling: "Bench house", plan: "Workshop", floor: 900, bedrooms: 2 }],
    boxes: openings.map((opening) => ({
      ...opening,
      count: 1,
      wall: opening.box === "Box 6" ? 0.5 : 0.06,
      tolerance: opening.shape === "round" ? 0.02 : 0.03,
      constant: 1.07,
      how: opening.shape === "round" ? "caliper, four diameters" : "steel rule, both sides",
      checked: opening.box === "Box 5" ? day : serial("2026-02-11"),
    })),
    instruments: [
      {
        instrument: "Hood R1",
        kind: "powered hood",
        lowest: 10,
        highest: 300,
        percent: 2,
        floor: 0.4,
        resolution: 0.1,
        checked: serial("2026-08-19"),
        certificate: "QY-2608",
      },
      {
        instrument: "Manometer M1",
        kind: "manometer",
        percent: 1,
        floor: 0.25,
        resolution: 0.1,
        checked: serial("2026-08-19"),
        certificate: "QY-2609",
      },
    ],
    pairs: [...pairsOf("Box 5", 4, day), ...pairsOf("Box 6", 1, serial("2026-02-11"))],
    fans: [
      fan("B1", "continuous", "Box 5", "C", [1.9, 2, 1.9]),
      fan("B2", "on demand", "Box 5", "C", [1.4, 1.3, 1.4]),
      fan("B3", "on demand", "Box 6", "B", [2.6, 2.5, 2.6]),
    ],
  };
}

/** Five flows through each of the first openings of a box, from 1 to 8 Pa. */
function pairsOf(box: string, count: number, date: number): Row[] {
  const random = dice(box === "Box 5" ? 515 : 616);
  const own = openings.filter((opening) => opening.box === box).slice(0, count);
  const pressures = count === 1 ? [2.2, 4.1] : [1.3, 2.4, 3.9, 5.8, 7.6];
  return own.flatMap((opening) => {
    const area =
      "size2" in opening ? opening.size1 * opening.size2 : (Math.PI / 4) * opening.size1 ** 2;
    return pressures.map((aimed): Row => {
      const pressure = rounded(aimed + 0.2 * (random() - 0.5), 1);
      const free = 1.058 * area * Math.sqrt(pressure);
      const reference = rounded(free * (1 + 0.04 * (random() - 0.5)), 1);
      return {
        box,
        openings: opening.opening,
        pressure,
        instrument: "Hood R1",
        reference,
        tester,
        date,
      };
    });
  });
}

function fan(
  tag: string,
  duty: string,
  box: string,
  use: string,
  [reading1, reading2, reading3]: readonly [number, number, number],
): Row {
  return {
    dwelling: "Bench house",
    tag,
    room: "Bath",
    roomKind: "bathroom",
    duty,
    rated: 80,
    box,
    openings: use,
    reading1,
    reading2,
    reading3,
    tester,
    date: day + 2,
  };
}
