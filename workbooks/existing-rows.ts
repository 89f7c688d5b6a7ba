import { usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { dice, rounded } from "./dice";
import { serial } from "./job-rows";

/**
 * Mill Lane: an invented terrace of ten flats at 5,400 ft, weatherized in autumn. Old fans, some
 * rooms without one, windows that open, leakage measured at 50 Pa, ducts read with a pressure pan.
 * Two flats more are of the group and were not tested.
 * Nothing here is a measurement.
 */
const openings = [
  { opening: "A", shape: "round", size1: 3.5 },
  { opening: "B", shape: "round", size1: 5 },
  { opening: "C", shape: "rectangular", size1: 6, size2: 7 },
  { opening: "D", shape: "rectangular", size1: 9, size2: 10 },
] as const;

const areas: Readonly<Record<string, number>> = Object.fromEntries(
  openings.map((opening) => [
    opening.opening,
    "size2" in opening ? opening.size1 * opening.size2 : (Math.PI / 4) * opening.size1 ** 2,
  ]),
);

const box = "Box 7";
const day = serial("2026-10-19");
const testers = ["J. Achterberg", "S. Nwosu"] as const;

const flats = [
  { dwelling: "Flat 1", floor: 780, bedrooms: 2, leak50: 1120, exposed: 0.72 },
  { dwelling: "Flat 2", floor: 640, bedrooms: 1, leak50: 860, exposed: 0.45 },
  { dwelling: "Flat 3", floor: 640, bedrooms: 1, leak50: 905, exposed: 0.45 },
  { dwelling: "Flat 4", floor: 910, bedrooms: 3, leak50: 1340, exposed: 0.5 },
  { dwelling: "Flat 5", floor: 910, bedrooms: 3, leak50: 1275, exposed: 0.5 },
  { dwelling: "Flat 6", floor: 640, bedrooms: 1, leak50: 790, exposed: 0.45 },
  { dwelling: "Flat 7", floor: 640, bedrooms: 2, leak50: 845, exposed: 0.45 },
  { dwelling: "Flat 8", floor: 780, bedrooms: 2, leak50: 1090, exposed: 0.72 },
  { dwelling: "Flat 9", floor: 640, bedrooms: 1, exposed: 0.45 },
  { dwelling: "Flat 10", floor: 780, bedrooms: 2, exposed: 0.72 },
] as const;

export function existingRows(): JobRows {
  return {
    settings: {
      ...usualSettings("ip"),
      name: "Mill Lane, fans after weatherization",
      edition: "62.2-2016",
      judging: "guarded",
      judgeBy: "measured",
      temperature: 68,
      humidity: 40,
      elevation: 5400,
      work: "existing",
      weather: 0.58,
      equipment: "IECC-2021",
      ducts: "IRC-2021",
      sampling: "weatherization monitoring",
    },
    features: ["spread", "instruments", "twoOpenings", "air", "equipment", "existing", "registers"],
    dwellings: flats.map((flat, i) => ({
      ...flat,
      plan: "Terrace",
      height: 9,
      balanced: "no",
      appliance: i === 3 ? "yes" : "no",
    })),
    boxes: openings.map((opening) => ({
      box,
      ...opening,
      count: 1,
      tolerance: 0.03,
      constant: 1.07,
      how: "steel rule, both sides",
      checked: serial("2026-09-28"),
    })),
    instruments: [
      {
        instrument: "Hood R2",
        kind: "powered hood",
        constant: 1,
        exponent: 1,
        lowest: 10,
        highest: 300,
        percent: 5,
        floor: 5,
        resolution: 1,
        checked: serial("2026-07-02"),
        certificate: "ML-114",
      },
      {
        instrument: "Bag 8 ft³",
        kind: "timed bag",
        constant: 480,
        exponent: -1,
        lowest: 4,
        highest: 60,
        percent: 10,
        floor: 2,
        resolution: 0.1,
        checked: serial("2026-07-02"),
        note: "60 × 8 ft³ over the seconds to fill",
      },
    ],
    fans: flats.slice(0, 8).flatMap(({ dwelling }, i) => fansOf(dwelling, i)),
    registers: flats.slice(0, 4).flatMap(({ dwelling }, i) => registersOf(dwelling, i)),
  };
}

function fansOf(dwelling: string, i: number): Row[] {
  const random = dice(7000 + i);
  const common = { dwelling, tester: testers[i % 2] as string, date: day + i };
  const byBox = (flow: number): Row => {
    const use = Object.keys(areas).find((label) => {
      const pressure = (flow / (1.07 * (areas[label] as number))) ** 2;
      return pressure >= 1.2 && pressure <= 7;
    });
    if (!use) throw new Error(`no opening for ${flow} cfm`);
    const pressure = (flow / (1.07 * (areas[use] as number))) ** 2;
    const read = () => rounded(pressure * (0.97 + 0.06 * random()), 1);
    return { box, openings: use, reading1: read(), reading2: read(), reading3: read() };
  };
  const bath: Row = {
    ...common,
    tag: "B1",
    room: "Bath",
    roomKind: "bathroom",
    duty: "on demand",
    window: i % 3 === 0 ? "yes" : "no",
    fanKind: "bath or utility",
    rated: 50,
    watts: i === 2 || i === 6 ? 26 : 15,
    sones: 2.5,
    ...(i === 4 ? { note: "gusty, readings jumped" } : {}),
    ductKind: "flex",
    ductDiameter: 4,
    ductLength: 8 + 2 * (i % 4),
    elbows: 2,
    ...byBox(24 + 6 * (i % 5)),
  };
  const whole: Row = {
    ...common,
    tag: "B2",
    room: "Hall",
    roomKind: "bathroom",
    duty: "continuous",
    fanKind: "bath or utility",
    rated: 80,
    watts: i === 3 ? 38 : 11,
    sones: 0.8,
    ductKind: "smooth",
    ductDiameter: 6,
    ductLength: 14,
    elbows: 1,
    ...(i === 5
      ? { instrument: "Hood R2", device1: 46, device2: 47, device3: 46 }
      : withSecond(byBox(52 + 5 * (i % 4)))),
  };
  const kitchen: Row =
    i % 4 === 1
      ? { ...common, tag: "none", room: "Kitchen", roomKind: "kitchen hood", window: "yes" }
      : {
          ...common,
          tag: "K1",
          room: "Kitchen",
          roomKind: "kitchen hood",
          window: "no",
          fanKind: "range hood",
          rated: 150,
          watts: 60,
          sones: 3,
          ductKind: "smooth",
          ductDiameter: 6,
          ductLength: 10,
          elbows: 2,
          ...(i === 2
            ? { instrument: "Bag 8 ft³", device1: 5.1, device2: 5.3, device3: 5.2 }
            : byBox(82 + 9 * (i % 5))),
        };
  return [bath, whole, { ...kitchen, duty: "on demand" }];
}

/** The same fan once more through the next larger opening: the box holds it back less. */
function withSecond(row: Row): Row {
  const labels = Object.keys(areas);
  const next = labels[labels.indexOf(String(row.openings)) + 1];
  if (!next) return row;
  const ratio = (areas[String(row.openings)] as number) / (areas[next] as number);
  const pressure = Number(row.reading2) * ratio ** 2 * 1.03;
  return pressure < 1 ? row : { ...row, openings2: next, pressure2: rounded(pressure, 1) };
}

function registersOf(dwelling: string, i: number): Row[] {
  const random = dice(7700 + i);
  return ["Living room", "Kitchen", "Bedroom"].map((room, r) => {
    const leak = i === 1 && r === 2 ? 2.4 : 0.3 + 0.5 * random();
    const read = () => rounded(leak + 0.2 * (random() - 0.5), 1);
    return {
      dwelling,
      register: `R${r + 1}`,
      room,
      house: 50,
      reading1: read(),
      reading2: i === 3 && r === 0 ? rounded(leak + 1.1, 1) : read(),
      reading3: read(),
      tester: testers[i % 2] as string,
      date: day + i,
    };
  });
}
