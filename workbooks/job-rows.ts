import { serialOf } from "../src/cells";
import { nextOpening, type Opening, usualFeatures, usualSettings } from "../src/job";
import type { JobRows, Row } from "../src/new-job";
import { dice } from "./dice";
import { lots, openings, plans, testers } from "./scenario";

const constant = 1.07;

/** The sound rows of the demo job; faults are planted in them afterwards. */
export function demoRows(): JobRows {
  const random = dice(20261);
  const dwellings: Row[] = [];
  const fans: Row[] = [];
  for (let lot = 1; lot <= lots; lot++) {
    const plan = plans[(lot * 7 + (lot >> 2)) % plans.length] as (typeof plans)[number];
    const dwelling = `Lot ${String(lot).padStart(2, "0")}`;
    dwellings.push({ dwelling, plan: plan.name, floor: plan.floor, bedrooms: plan.bedrooms });
    const box = `Box ${1 + (lot % 4)}`;
    const date = serial("2026-09-07") + 3 * Math.floor((lot - 1) / 2);
    const tester = testers[Math.floor((lot - 1) / 2) % testers.length] as string;
    for (const fan of plan.fans) {
      const flow = fan.typical * (0.95 + 0.1 * random());
      const use = openingFor(flow, box);
      const { tag, room, roomKind, duty, rated } = fan;
      const readings = [0, 1, 2].map(
        () => Math.round(10 * (use.pressure + 0.3 * (random() - 0.5))) / 10,
      );
      fans.push({
        dwelling,
        tag,
        room,
        roomKind,
        duty,
        rated,
        box,
        openings: use.label,
        reading1: readings[0] as number,
        reading2: readings[1] as number,
        reading3: readings[2] as number,
        tester,
        date,
      });
    }
  }
  return {
    settings: {
      ...usualSettings("ip"),
      name: "Alder Terrace, final fan tests",
      edition: "IRC-2021",
    },
    dwellings,
    boxes: openings.map(({ checked, size2, ...opening }) => ({
      ...opening,
      size2: size2 ?? null,
      count: 1,
      constant,
      checked: serial(checked),
    })),
    fans,
  };
}

/** An empty job of a size that a small firm fills in a week. */
export function blankRows(): JobRows {
  const rows = (count: number) => Array.from({ length: count }, (): Row => ({}));
  return {
    settings: usualSettings("ip"),
    features: usualFeatures,
    dwellings: rows(20),
    boxes: rows(12),
    fans: rows(60),
    instruments: rows(6),
    pairs: rows(30),
  };
}

function openingFor(flow: number, box: string): { label: string; pressure: number } {
  const own: Opening[] = openings
    .filter((opening) => opening.box === box)
    .map(({ opening, size1, size2 }) => ({
      label: opening,
      area: size2 ? size1 * size2 : (Math.PI / 4) * size1 ** 2,
    }));
  const first = own[0] as Opening;
  const pressure = (flow / (constant * first.area)) ** 2;
  const found = nextOpening(pressure, first.area, own);
  if (!found) throw new Error(`box ${box} has no openings`);
  return { label: found.label, pressure: found.pressure };
}

/** A day as a spreadsheet's serial number. */
export function serial(isoDate: string): number {
  return serialOf(new Date(isoDate));
}
