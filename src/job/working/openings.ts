import {
  areaForFlow,
  diameterForArea,
  rectArea,
  rectAreaLimit,
  roundArea,
  roundAreaLimit,
  type Source,
} from "../../formulas";
import { aimedPressure, areaOf, type Opening, openingsNamed, usualConstant } from "../rules";
import { ArgumentError, aboveZero, type Given, notNegative } from "./given";
import { sixDigits, sumValue } from "./say";
import type { Sum, Working } from "./working";

export const openings = {
  ROUND_AREA: {
    title: "Area of a round opening",
    takes: ["diameter"],
    formulas: [roundArea],
    explain: (given) => ({
      sums: [{ formula: roundArea, given: { d: given.number("diameter", positive) } }],
    }),
  },
  RECT_AREA: {
    title: "Area of a rectangular opening",
    takes: ["width", "height"],
    formulas: [rectArea],
    explain: (given) => ({
      sums: [
        {
          formula: rectArea,
          given: { w: given.number("width", positive), h: given.number("height", positive) },
        },
      ],
    }),
  },
  OPEN_AREA: {
    title: "Area of the openings in use",
    takes: ["openings", "labels", "areas", "box", "boxes"],
    lists: ["labels", "areas", "boxes"],
    explain: (given) => {
      const open = openingsNamed(given.text("openings"), openingsOf(given));
      const flawed = open.find(({ area }) => Number.isNaN(area));
      if (flawed)
        throw new ArgumentError(
          "unusable",
          `opening ${flawed.label} has no area above 0 in the list: type it there as a number`,
        );
      const total = areaOf(open);
      const parts = open.map(({ label, area }) => `${label} ${sixDigits(area)}`).join(" + ");
      return {
        words: [`${parts} = ${sixDigits(total)}`],
        sources: [sumOfOpenings],
        gives: [total],
      };
    },
  },
  AREA_FOR: {
    title: "Open area for a flow",
    takes: ["flow", "pressure", "constant", "units"],
    formulas: [areaForFlow],
    explain: (given) => ({ sums: [areaSum(given)] }),
  },
  DIAMETER_FOR: {
    title: "Round hole for a flow",
    takes: ["flow", "pressure", "constant", "units"],
    formulas: [areaForFlow, diameterForArea],
    explain: (given) => {
      const area = areaSum(given);
      return { sums: [area, { formula: diameterForArea, given: { A: sumValue(area) } }] };
    },
  },
  AREA_LIMIT: {
    title: "How far an opening's area may be off",
    takes: ["tolerance", "size1", "size2"],
    formulas: [roundAreaLimit, rectAreaLimit],
    explain: (given) => {
      const size = given.number("size1", positive);
      const t = given.number("tolerance", { refuse: notNegative });
      const h = given.optionalNumber("size2", positive);
      return {
        sums: [
          h === undefined
            ? { formula: roundAreaLimit, given: { t, d: size } }
            : { formula: rectAreaLimit, given: { t, w: size, h } },
        ],
      };
    },
  },
} satisfies Record<string, Working>;

const positive = { refuse: aboveZero };
const sumOfOpenings: Source = {
  work: "sum of the openings in use",
  clause: "",
  mark: "by definition",
};

function areaSum(given: Given): Sum {
  return {
    formula: areaForFlow,
    given: {
      Q: given.number("flow", positive),
      P: given.number("pressure", { otherwise: aimedPressure, ...positive }),
      K: constantOf(given),
    },
  };
}

/** The constant of a call, or the trade's. */
export function constantOf(given: Given): number {
  return given.number("constant", { otherwise: usualConstant[given.system ?? "ip"], ...positive });
}

/** The openings of the box in use, from the columns of a list; a flawed area is NaN. */
export function openingsOf(given: Given): Opening[] {
  const [labels, areas, boxes] = ["labels", "areas", "boxes"].map((name) => given.list(name));
  const box = given.optionalText("box");
  const found: Opening[] = [];
  labels?.forEach((label, i) => {
    const text = textOf(label);
    if (text === "" || (boxes?.length && !isSame(textOf(boxes[i]), box))) return;
    const area = areas?.[i];
    found.push({
      label: text,
      area: typeof area === "number" && area > 0 && area < Infinity ? area : Number.NaN,
    });
  });
  if (found.length === 0 && boxes?.length) throw new RangeError(`unknown box "${box}"`);
  return found;
}

const textOf = (cell: unknown) =>
  typeof cell === "object" || cell === undefined ? "" : String(cell).trim();
const isSame = (a: string, b: string) => a.toUpperCase() === b.toUpperCase();
