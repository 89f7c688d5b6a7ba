import { pressureAtOtherArea, rangeCode } from "../../formulas";
import { aimedPressure, nextOpening, rangeStatus } from "../rules";
import { windowOf } from "./flow";
import { aboveZero } from "./given";
import { openingsOf } from "./openings";
import { sixDigits } from "./say";
import type { Working } from "./working";

const positive = { refuse: aboveZero };

export const range = {
  RANGE_STATUS: {
    title: "Where a pressure stands against the window",
    takes: ["pressure", "low", "high"],
    explain: (given) => {
      const P = given.number("pressure");
      const { low, high } = windowOf(given);
      const status = rangeStatus(P, low, high) ?? "";
      const reason = {
        reversed: "is negative: the hoses are swapped, or the fan blows",
        below: `is below the ${sixDigits(low)} Pa where the window begins`,
        above: `is above the ${sixDigits(high)} Pa where the window ends`,
        "in range": `lies in the window of ${sixDigits(low)} to ${sixDigits(high)} Pa`,
        "": "",
      }[status];
      return {
        words: [`${sixDigits(P)} Pa ${reason}`],
        sources: [rangeCode.source],
        gives: [status],
      };
    },
  },
  NEXT_OPENING: {
    title: "Opening to use next",
    takes: ["pressure", "area", "labels", "areas", "box", "boxes", "low", "high"],
    lists: ["labels", "areas", "boxes"],
    formulas: [pressureAtOtherArea],
    explain: (given) => {
      const P = given.number("pressure", positive);
      const A = given.number("area", positive);
      const window = windowOf(given);
      const { source } = pressureAtOtherArea;
      const [low, high] = [window.low, window.high].map(sixDigits);
      if (P >= window.low && P <= window.high)
        return {
          words: [`${sixDigits(P)} Pa lies in the window of ${low} to ${high} Pa`],
          sources: [source],
          gives: ["keep"],
        };
      const next = nextOpening(P, A, openingsOf(given), window);
      if (!next) return { words: [], sources: [source], gives: ["no opening in the list"] };
      return {
        sums: [{ formula: pressureAtOtherArea, given: { P, A, A2: next.area } }],
        words: [
          `${next.label} (${sixDigits(next.area)}) comes nearest to ${aimedPressure} Pa by ratio`,
        ],
        gives: [next.inWindow ? next.label : `none in range, nearest ${next.label}`],
      };
    },
  },
} satisfies Record<string, Working>;
