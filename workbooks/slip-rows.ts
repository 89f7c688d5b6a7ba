import { usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { serial } from "./job-rows";

/**
 * Tern Close: an invented court of cottages at 5,400 ft, tested by a firm new to it with a gauge too
 * coarse below 5 Pa and two boxes of its own. Each row shows a rule of the trade that is easily
 * missed. Nothing here is a measurement.
 */
const day = serial("2026-10-12");
const box = "Box 8";
const areas = { A: 12 * (Math.PI / 4), B: (Math.PI / 4) * 4.5 ** 2, C: (Math.PI / 4) * 5.5 ** 2 };

/** Readings of a box that give a flow, 0.1 Pa apart at most. */
const byBox = (openings: keyof typeof areas, pressure: number): Row => ({
  box,
  openings,
  reading1: pressure,
  reading2: pressure,
  reading3: pressure,
});
const byHood = (flow: number): Row => ({ instrument: "Hood R9", device1: flow, device2: flow + 1 });

export function slipRows(): JobRows {
  const fans: Row[] = [];
  const fan = (cottage: number, row: Row) =>
    fans.push({
      dwelling: `Cottage ${cottage}`,
      tester: cottage % 2 ? "P. Hallam" : "I. Sato",
      date: day + cottage,
      ...row,
    });
  const bath: Row = { tag: "B1", room: "Bath", roomKind: "bathroom", duty: "on demand", rated: 80 };
  const whole: Row = {
    ...bath,
    tag: "B2",
    room: "Hall",
    duty: "continuous",
    rated: 110,
    sones: 0.9,
  };
  const kitchen: Row = { tag: "K1", room: "Kitchen", roomKind: "kitchen", rated: 150 };

  // A downdraft fan whose kitchen nobody described, and a room of which no rate is asked.
  fan(1, { ...kitchen, duty: "on demand", volume: 900, ...byHood(121) });
  fan(1, { ...bath, tag: "T1", room: "Cloakroom", roomKind: "toilet", ...byBox("A", 5.6) });
  fan(1, { ...whole, ...byHood(72) });

  // Kitchens with a fan that runs all the time: an open one, and one shut off from the rooms beside it.
  fan(2, { ...kitchen, duty: "continuous", volume: 900, enclosed: "no", ...byHood(84) });
  fan(3, { ...kitchen, duty: "continuous", volume: 900, enclosed: "yes", ...byHood(84) });

  // A fan that did not run, and one whose flow is enough although the box holds it back.
  fan(3, { ...bath, ...byBox("B", 0), note: "fan would not start" });
  fan(4, { ...bath, ...byBox("C", 8.2) });
  fan(4, { ...whole, sones: 1.4, ...byHood(78) });

  // Short by a hair, and a flow above its design of a fan that runs on demand.
  fan(5, { ...bath, instrument: "Hood R9", device1: 49.9, device2: 50 });
  fan(5, { ...bath, tag: "B3", room: "Guest bath", design: 50, ...byHood(92) });
  fan(5, { ...whole, design: 70, ...byHood(98) });

  // Second openings from which nothing follows: too near to the first, and a flow that rises.
  fan(6, { ...bath, ...byBox("C", 6.6), openings2: "B+C", pressure2: 3.6 });
  fan(6, { ...whole, ...byBox("C", 7.8), openings2: "A+B+C", pressure2: 1.3 });
  fan(7, { ...bath, ...byBox("B", 7.2), openings2: "B+C", pressure2: 2.9 });

  // A strong hood, and nothing said of what burns in the house.
  fan(7, {
    tag: "K1",
    room: "Kitchen",
    roomKind: "kitchen hood",
    duty: "on demand",
    rated: 620,
    sones: 6,
    ...byHood(288),
  });
  fan(7, { ...whole, ...byHood(81) });

  return {
    settings: {
      ...usualSettings("ip"),
      name: "Tern Close, first tests",
      edition: "62.2-2019",
      adopted: serial("2017-05-01"),
      low: 5,
      meterFloor: 0.5,
      resolution: 0.5,
      temperature: 68,
      humidity: 45,
      barometer: 29.92,
      elevation: 5400,
      ducts: "IRC-2021",
      programme: "ENERGY-STAR-3.1",
    },
    features: ["spread", "proof", "instruments", "twoOpenings", "air", "equipment", "kitchens"],
    dwellings: [1, 2, 3, 4, 5, 6, 7].map((cottage) => ({
      dwelling: `Cottage ${cottage}`,
      plan: "Court",
      floor: 980 + 60 * cottage,
      bedrooms: cottage < 4 ? 1 : 2,
    })),
    boxes: [
      { box, opening: "A", shape: "round", size1: 1, count: 12, wall: 0.06 },
      { box, opening: "B", shape: "round", size1: 4.5, count: 1, wall: 0.06 },
      { box, opening: "C", shape: "round", size1: 5.5, count: 1, wall: 0.75 },
      { box: "Box 9", opening: "A", shape: "round", size1: 6, count: 1, wall: 0.06 },
    ].map((opening) => ({
      ...opening,
      tolerance: 0.03,
      constant: 1.07,
      how: "steel rule, both sides",
      checked: serial("2026-09-14"),
    })),
    instruments: [
      instrument("Hood R9", 12, "TC-31"),
      instrument("Hood R2", 3, "TC-32"),
      {
        instrument: "Manometer M4",
        kind: "manometer",
        percent: 1,
        floor: 0.5,
        resolution: 0.5,
        checked: serial("2026-08-03"),
        certificate: "TC-33",
      },
    ],
    pairs: [
      ...pairs(box, "C", areas.C, 1.075, "Hood R9"),
      ...pairs("Box 9", "A", 9 * Math.PI, 1.13, "Hood R2"),
    ],
    fans,
  };
}

const instrument = (name: string, percent: number, certificate: string): Row => ({
  instrument: name,
  kind: "powered hood",
  constant: 1,
  exponent: 1,
  lowest: 10,
  highest: 300,
  percent,
  floor: 1,
  resolution: 1,
  checked: serial("2026-08-03"),
  certificate,
});

/** Five flows through one opening; the flow that a constant of its own would give, a little scattered. */
function pairs(of: string, opening: string, area: number, constant: number, by: string): Row[] {
  return [5.1, 5.7, 6.4, 7.2, 7.9].map((pressure, i) => ({
    box: of,
    openings: opening,
    pressure,
    instrument: by,
    reference:
      Math.round(10 * constant * area * Math.sqrt(pressure) * (1 + 0.004 * ((i % 3) - 1))) / 10,
    tester: "P. Hallam",
    date: serial("2026-09-14"),
  }));
}
