import { fixed, InputError, shown } from "../../cells";
import { inSixteenths, type OpeningPlan, planOpenings, type Settings } from "../../job";

/** What the user asks of a plan, as typed. */
export interface PlanWish {
  readonly least: string;
  readonly most: string;
  /** Fineness of the tool: a fraction of an inch ("1/16") or millimetres ("1"). */
  readonly step: string;
  /** Overlap of neighbours, per cent. */
  readonly overlap: string;
}

/** One line of the list that goes to the workshop. */
export interface Cut {
  readonly label: string;
  readonly diameter: number;
  /** In decimals: inches, or millimetres in a job that keeps centimetres. */
  readonly exact: string;
  /** In inches and sixteenths: "4 3/16"; "" in a job that keeps centimetres. */
  readonly fraction: string;
  /** The hole saw, inches in eighths, at or below the diameter; "" where none is sold. */
  readonly saw: string;
  readonly area: number;
  readonly lowest: number;
  readonly highest: number;
}

/** Hole saws are sold up to about this many inches (common practice). */
export const largestSaw = 6;

export type Planned =
  | { readonly cuts: readonly Cut[]; readonly plan: readonly OpeningPlan[] }
  | { readonly problem: string };

export const usualWish: Record<Settings["system"], PlanWish> = {
  ip: { least: "20", most: "300", step: "1/16", overlap: "10" },
  si: { least: "10", most: "150", step: "1", overlap: "10" },
};

/** The tool steps offered. */
export const steps: Record<Settings["system"], readonly { value: string; label: string }[]> = {
  ip: [
    { value: "1/16", label: "1/16 in" },
    { value: "1/8", label: "1/8 in (hole saws)" },
    { value: "1/4", label: "1/4 in" },
  ],
  si: [
    { value: "1", label: "1 mm" },
    { value: "2", label: "2 mm" },
    { value: "5", label: "5 mm" },
  ],
};

/** The fewest round openings for the wish, as a cutting list, or what to change about the wish. */
export function planFor(wish: PlanWish, settings: Settings): Planned {
  const [least, most, overlap] = [wish.least, wish.most, wish.overlap].map(typedNumber);
  if (least === undefined) return { problem: "Type the lowest flow as a number above 0." };
  if (most === undefined) return { problem: "Type the highest flow as a number above 0." };
  if (overlap === undefined || overlap > 100)
    return { problem: "Type the overlap as a number of per cent from 0 to 100." };
  try {
    const plan = planOpenings(least, most, settings.constant, {
      step: stepOf(wish.step, settings.system),
      overlap: overlap / 100,
      window: settings,
    });
    return { plan, cuts: plan.map((opening) => cutOf(opening, settings.system)) };
  } catch (error) {
    if (error instanceof InputError) return { problem: sentence(error.message) };
    throw error;
  }
}

function cutOf(opening: OpeningPlan, system: Settings["system"]): Cut {
  const { label, diameter, area, reach } = opening;
  const inches = system === "ip" ? diameter : diameter / 2.54;
  const eighths = Math.floor(inches * 8 + 1e-9);
  return {
    label,
    diameter,
    exact: system === "ip" ? fixed(diameter, 4) : shown(diameter * 10),
    fraction: system === "ip" ? inSixteenths(diameter) : "",
    saw: eighths > 0 && eighths <= largestSaw * 8 ? inSixteenths(eighths / 8) : "",
    area,
    lowest: reach.lowest,
    highest: reach.highest,
  };
}

function stepOf(text: string, system: Settings["system"]): number {
  const [top, bottom = "1"] = text.split("/");
  const step = Number(top) / Number(bottom);
  return system === "ip" ? step : step / 10;
}

/** A number of 0 or more, with a point or a comma for the decimals. */
function typedNumber(text: string): number | undefined {
  const trimmed = text.trim().replace(",", ".");
  const value = Number(trimmed);
  return trimmed !== "" && Number.isFinite(value) && value >= 0 ? value : undefined;
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
