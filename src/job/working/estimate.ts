import { pressureFromFlow, rateWithMargin } from "../../formulas";
import { aimedPressure, expectedOpening, fanSize } from "../rules";
import { windowOf } from "./flow";
import { aboveZero, notNegative } from "./given";
import { constantOf, openingsOf } from "./openings";
import { sixDigits } from "./say";
import type { Working } from "./working";

const positive = { refuse: aboveZero };

export const estimate = {
  FAN_SIZE: {
    title: "Smallest rated flow that will do",
    takes: ["required", "margin", "ratings"],
    lists: ["ratings"],
    formulas: [rateWithMargin],
    explain: (given) => {
      const R = given.number("required", positive);
      const s = given.optionalNumber("margin", { refuse: notNegative }) ?? 0;
      const ratings = given.numbers("ratings", aboveZero);
      const { rated, largest } = fanSize(R, s, ratings);
      return {
        sums: [{ formula: rateWithMargin, given: { R, s } }],
        words: [`the least of ${ratings.length} ratings that is not below it`],
        gives: [rated ?? `none in the list, largest ${largest}`],
      };
    },
  },
  EXPECTED_OPENING: {
    title: "Opening to take to a fan",
    takes: ["flow", "labels", "areas", "box", "boxes", "constant", "low", "high", "units"],
    lists: ["labels", "areas", "boxes"],
    formulas: [pressureFromFlow],
    explain: (given) => {
      const Q = given.number("flow", positive);
      const K = constantOf(given);
      const next = expectedOpening(Q, K, openingsOf(given), windowOf(given));
      const { source } = pressureFromFlow;
      if (!next) return { sources: [source], gives: ["no opening in the list"] };
      return {
        sums: [{ formula: pressureFromFlow, given: { Q, K, A: next.area } }],
        words: [
          `${next.label} (${sixDigits(next.area)}) comes nearest to ${aimedPressure} Pa by ratio`,
        ],
        gives: [next.inWindow ? next.label : `none in range, nearest ${next.label}`],
      };
    },
  },
} satisfies Record<string, Working>;
