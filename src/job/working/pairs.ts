import { oneValue } from "../../algebra";
import { openingStrength, type Source } from "../../formulas";
import { agreement, percentDifferences, throughOrigin } from "../../spread";
import { ArgumentError, aboveZero, type Given } from "./given";
import { sixDigits } from "./say";
import type { Working } from "./working";

const agreementSource: Source = {
  work: "Bland and Altman, Lancet 1986",
  clause: "bias and limits of agreement",
  mark: "from memory",
};

export const pairs = {
  PAIR_CONSTANT: {
    title: "Constant of a box from paired readings",
    takes: ["areas", "pressures", "references"],
    lists: ["areas", "pressures", "references"],
    formulas: [openingStrength],
    explain: (given) => {
      const [areas = [], pressures = [], references = []] = paired(
        given,
        ["areas", "pressures", "references"],
        ["pressures", "references"],
      );
      const strengths = areas.map((A, i) =>
        oneValue(openingStrength, { A, P: pressures[i] as number }),
      );
      const { slope, slopeError, dof, n } = throughOrigin(strengths, references);
      return {
        words: [
          `${n} pairs: the slope of the reference flows against area × √pressure, through 0, is ${sixDigits(slope)}`,
        ],
        sources: [openingStrength.source],
        gives: [slope, known(slopeError), known(dof)],
        result: `${sixDigits(slope)} ± ${said(slopeError)}, ${dof} degrees of freedom`,
      };
    },
  },
  PAIR_BIAS: {
    title: "How far a box is off on average",
    takes: ["boxFlows", "referenceFlows"],
    lists: ["boxFlows", "referenceFlows"],
    explain: (given) => {
      const { bias, sd, n } = errorsOf(given);
      return {
        words: [`${n} errors of the box in % of the reference: their mean and standard deviation`],
        sources: [agreementSource],
        gives: [bias, known(sd), n],
        result: `bias ${sixDigits(bias)} %, standard deviation ${said(sd)} %, ${n} pairs`,
      };
    },
  },
  PAIR_LIMITS: {
    title: "Limits of a box's errors",
    takes: ["boxFlows", "referenceFlows"],
    lists: ["boxFlows", "referenceFlows"],
    explain: (given) => {
      const { bias, sd, low, high, largest } = errorsOf(given);
      return {
        words: [
          `bias ${sixDigits(bias)} %, 1.96 standard deviations of ${sixDigits(sd)} % either way`,
        ],
        sources: [agreementSource],
        gives: [known(low), known(high), largest],
        result: `${said(low)} to ${said(high)} %, largest error ${sixDigits(largest)} %`,
      };
    },
  },
} satisfies Record<string, Working>;

function errorsOf(given: Given) {
  const [flows = [], references = []] = paired(given, ["boxFlows", "referenceFlows"]);
  return agreement(percentDifferences(flows, references));
}

/** A blank for what too few pairs cannot tell. */
const known = (value: number) => (Number.isNaN(value) ? "" : value);

const said = (value: number) => (Number.isNaN(value) ? "unknown" : sixDigits(value));

/** Columns of one length as numbers; a pair where one of the `read` is blank is passed over. */
function paired(given: Given, names: readonly string[], read = names): number[][] {
  const cells = names.map((name) => given.list(name));
  const isBlank = (cell: unknown) => cell === null || cell === undefined || cell === "";
  const rows = (cells[0] ?? []).map((_, i) => i);
  const kept = rows.filter(
    (i) => !names.some((name, n) => read.includes(name) && isBlank(cells[n]?.[i])),
  );
  if (kept.length === 0) throw new ArgumentError("blank", `${names[0]} is blank`);
  return cells.map((column, n) =>
    kept.map((i) => {
      const cell = column[i];
      if (typeof cell === "number" && !aboveZero(cell)) return cell;
      throw new ArgumentError(
        "unusable",
        `${names[n]}, pair ${i + 1}: give a number above 0`,
        typeof cell === "object" && cell !== null ? cell : undefined,
      );
    }),
  );
}
