import { InputError, shown } from "../../cells";
import {
  asSentence,
  type BoxFace,
  type BoxPlan,
  freeOfFace,
  holeSaws,
  inSixteenths,
  mostOfFace,
  planOpenings,
  type Settings,
} from "../../job";

/** What the user asks of a plan, as typed. */
export interface PlanWish {
  readonly least: string;
  readonly most: string;
  readonly shape: "round" | "square";
  /** Fineness of the tool: a fraction of an inch ("1/16"), millimetres ("1"), or "saws". */
  readonly step: string;
  /** Overlap of neighbours, per cent. */
  readonly overlap: string;
  /** Sides of the face that the openings are cut into; both blank where it does not matter yet. */
  readonly width: string;
  readonly height: string;
  /** What stays at the edges and between holes. */
  readonly rim: string;
}

/** One line of the list that goes to the workshop. */
export interface Cut {
  readonly label: string;
  readonly count: number;
  readonly shape: "round" | "rectangular";
  /** In decimals: inches, or millimetres in a job that keeps centimetres. */
  readonly exact: string;
  /** In inches and sixteenths: "4 3/16"; "" in a job that keeps centimetres. */
  readonly fraction: string;
  /** The hole saw at or below the diameter, as it is sold; "" where none is. */
  readonly saw: string;
  readonly area: number;
  readonly lowest: number;
  readonly highest: number;
}

type Planned =
  | {
      readonly cuts: readonly Cut[];
      readonly plan: BoxPlan;
      /** Undefined where none is given. */
      readonly face: BoxFace | undefined;
      /** Where the middle of each hole goes on it, in words. */
      readonly middles: readonly string[];
      /** A word on how the largest opening sits on the face; "" for none. */
      readonly note: string;
    }
  | { readonly problem: string };

export const usualWish: Record<Settings["system"], PlanWish> = {
  ip: {
    ...{ least: "20", most: "300", shape: "round", step: "1/16", overlap: "10" },
    ...{ width: "", height: "", rim: "3/4" },
  },
  si: {
    ...{ least: "10", most: "150", shape: "round", step: "1", overlap: "10" },
    ...{ width: "", height: "", rim: "20" },
  },
};

/** The tool steps offered. */
export const steps: Record<Settings["system"], readonly { value: string; words: string }[]> = {
  ip: [
    { value: "1/16", words: "knife or jigsaw, 1/16 in" },
    { value: "1/8", words: "knife or jigsaw, 1/8 in" },
    { value: "saws", words: "hole saws as sold" },
  ],
  si: [
    { value: "1", words: "knife or jigsaw, 1 mm" },
    { value: "5", words: "knife or jigsaw, 5 mm" },
    { value: "saws", words: "hole saws as sold" },
  ],
};

/** The fewest openings for the wish, as a cutting list, or what to change about the wish. */
export function planFor(wish: PlanWish, settings: Settings): Planned {
  const { system } = settings;
  const [least, most, overlap] = [wish.least, wish.most, wish.overlap].map(typedNumber);
  if (least === undefined) return { problem: "Type the lowest flow as a number above 0." };
  if (most === undefined) return { problem: "Type the highest flow as a number above 0." };
  if (overlap === undefined || overlap > 100)
    return { problem: "Type the overlap as a number of per cent from 0 to 100." };
  const hasFace = wish.width.trim() !== "" || wish.height.trim() !== "";
  const [width, height, rim] = [wish.width, wish.height, wish.rim].map(typedNumber);
  if (hasFace && !(width && height && rim !== undefined))
    return { problem: "Type both sides of the face and the rim as numbers, or leave both blank." };
  const scale = system === "ip" ? 1 : 0.1;
  const face =
    hasFace && width && height
      ? { width: width * scale, height: height * scale, rim: (rim ?? 0) * scale }
      : undefined;
  if (wish.step === "saws" && wish.shape === "square")
    return { problem: "A hole saw cuts round holes: choose round ones, or another tool." };
  try {
    const plan = planOpenings(least, most, settings.constant, {
      shape: wish.shape,
      ...(wish.step === "saws"
        ? { saws: holeSaws[system] }
        : { step: (typedNumber(wish.step) ?? 1) * scale }),
      overlap: overlap / 100,
      window: settings,
      system,
      face,
    });
    const cuts = plan.openings.map((opening) => cutOf(opening, system));
    return { plan, cuts, face, middles: middlesOf(plan, system), note: noteOn(plan) };
  } catch (error) {
    if (error instanceof InputError) return { problem: asSentence(error.message) };
    throw error;
  }
}

function noteOn({ approach, openings }: BoxPlan): string {
  if (approach === undefined)
    return `Give the sides of the face: an opening of more than ${freeOfFace * 100} % of it begins to read high, one of more than ${mostOfFace * 100} % is refused.`;
  const label = openings.reduce((a, b) => (b.area > a.area ? b : a)).label;
  return approach < 0.004
    ? "All holes fit on the face, and none is so large that it reads high."
    : `All holes fit on the face. ${label}, the largest, makes the flow read about ${shown(100 * approach)} % high: prove the box there, or take a larger face.`;
}

/** "A: 2 3/8 and 4": of each middle how far from the left and from the lower edge. */
function middlesOf({ holes = [] }: BoxPlan, system: Settings["system"]): string[] {
  const told = (length: number) => (system === "ip" ? inSixteenths(length) : shown(length * 10));
  return holes.map(({ opening, x, y }) => `${opening}: ${told(x)} and ${told(y)}`);
}

function cutOf(opening: BoxPlan["openings"][number], system: Settings["system"]): Cut {
  const { label, shape, size, count, area, reach } = opening;
  const below = holeSaws[system].findLast((each) => each <= size + 1e-9);
  // A saw of less than three quarters of the hole is no help in cutting it.
  const saw = shape === "round" && below && below >= 0.75 * size ? below : undefined;
  return {
    ...{ label, shape, count },
    exact: system === "ip" ? String(Number(size.toFixed(4))) : shown(size * 10),
    fraction: system === "ip" ? inSixteenths(size) : "",
    saw: saw === undefined ? "" : system === "ip" ? inSixteenths(saw) : shown(saw * 10),
    area,
    lowest: reach.lowest,
    highest: reach.highest,
  };
}

/** A number of 0 or more, with a point or a comma for the decimals, or a fraction: "3/4", "1 1/2". */
function typedNumber(text: string): number | undefined {
  const trimmed = text.trim().replace(",", ".");
  const [, whole = "0", top = "", bottom = ""] = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(trimmed) ?? [];
  const value = bottom === "" ? Number(trimmed) : Number(whole) + Number(top) / Number(bottom);
  return trimmed !== "" && Number.isFinite(value) && value >= 0 ? value : undefined;
}
