import { oneValue, plain } from "../../algebra";
import { openingStrength } from "../../formulas";
import { throughOrigin } from "../../spread";
import type { PairsArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { blankIfUnknown, saidIfKnown, sixDigits } from "../contract/say";
import type { NativeForm } from "../native/native";
import { nativePairs, ofAll, pairReadings, passedOver } from "./pairs";

const areas: PairsArgument = { kind: "pairs", need: aboveZero };

export const rule = ruleOf({
  id: "PAIR_CONSTANT",
  title: "Constant of a box from paired readings",
  arguments: { areas, pressures: pairReadings, references: pairReadings },
  width: 3,
  formulas: [openingStrength],
  work({ areas, pressures, references }) {
    const strengths = areas.map((A, i) =>
      oneValue(openingStrength, { A, P: pressures[i] as number }),
    );
    const { slope, slopeError, dof, n } = throughOrigin(strengths, references);
    return {
      gives: [slope, blankIfUnknown(slopeError), dof],
      why: () => ({
        words: [
          `${n} pairs: the slope of the reference flows against area × √pressure, through 0, is ${sixDigits(slope)}`,
        ],
        sources: [openingStrength.source],
        result: `${sixDigits(slope)} ± ${saidIfKnown(slopeError)}, ${dof} degrees of freedom`,
      }),
    };
  },
});

export const native: NativeForm = (native) => {
  const read = ["pressures", "references"];
  const found = nativePairs(native, ["areas", ...read], read, [
    ({ areas = "", pressures = "" }, used) =>
      `IF(${used}=1,${plain(openingStrength, { A: areas, P: pressures })},0)`,
    ({ references }, used) => `IF(${used}=1,${references},0)`,
  ]);
  if (typeof found === "string") return found;
  const { used } = found;
  const [x = "", y = ""] = found.columns;
  const dof = `SUM(${used})-1`;
  const fitted = native.call.step(
    "constant of the pairs",
    ofAll(used, `SUMPRODUCT(${x}*${y})/SUMSQ(${x})`),
  );
  const lost = `SUMPRODUCT((${y}-${fitted}*${x})^2)`;
  const error = `IF(${dof}=0,"",SQRT(${lost}/(${dof}))/SQRT(SUMSQ(${x})))`;
  return native.side === 0 ? fitted : ofAll(used, native.side === 1 ? error : dof);
};

export const help: Help = {
  computes: [
    "The constant of a box is the slope, through the origin, of the reference flows against area × √pressure, by least squares. Its spread is that of the pairs alone: what the reference itself may be off by comes on top.",
    passedOver,
  ],
  result:
    "Three cells: the constant, its standard spread (blank for a single pair) and the degrees of freedom.",
  examples: [
    {
      words: "Four pairs of one box.",
      args: [
        [12, 24, 24, 48],
        [4, 4, 2, 3],
        [25.5, 52, 36, 90],
      ],
      gives: [1.07934, 0.00452574, 3],
    },
  ],
  troubles: [
    { when: "The ranges are not of one length.", args: [[12, 24], [4, 4], [26]] },
    {
      when: "An area is blank beside a reading.",
      args: [
        [12, ""],
        [4, 4],
        [26, 52],
      ],
    },
  ],
  related: ["PAIR_BIAS", "PAIR_LIMITS", "FLOW"],
};
