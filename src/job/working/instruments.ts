import { bagFlowIp, bagFlowSi, deviceFlow } from "../../formulas";
import { repeats } from "../../spread";
import { deviceBudget, panReading, panStatus, usualPan } from "../rules";
import { ArgumentError, aboveZero, notNegative } from "./given";
import { sixDigits } from "./say";
import { budgetGrounds } from "./spread";
import type { Working } from "./working";

const positive = { refuse: aboveZero };
const zeroOrMore = { refuse: notNegative };
const exponent = {
  refuse: (value: number) =>
    value !== 0 && Math.abs(value) <= 3
      ? undefined
      : "give 1 for a flow, 0.5 for a pressure, -1 for a time, or what the device's record says",
};

export const instruments = {
  DEVICE_FLOW: {
    title: "Flow from the reading of a device",
    takes: ["reading", "constant", "exponent"],
    formulas: [deviceFlow],
    explain: (given) => {
      const r = given.number("reading", zeroOrMore);
      const K = given.number("constant", positive);
      const n = given.number("exponent", { otherwise: 1, ...exponent });
      if (r === 0 && n < 0)
        throw new ArgumentError("unusable", `reading 0: give a number above 0 with exponent ${n}`);
      return { sums: [{ formula: deviceFlow, given: { K, r, n } }] };
    },
  },
  BAG_FLOW: {
    title: "Flow that fills a bag",
    takes: ["volume", "seconds", "units"],
    formulas: [bagFlowIp],
    explain: (given) => {
      const t = given.number("seconds", positive);
      const V = given.number("volume", positive);
      return {
        sums: [{ formula: given.system === "si" ? bagFlowSi : bagFlowIp, given: { V, t } }],
      };
    },
  },
  DEVICE_SPREAD: {
    title: "Spread of a flow read with a device",
    takes: ["readings", "constant", "exponent", "percent", "floor", "resolution"],
    lists: ["readings"],
    formulas: [deviceFlow],
    explain: (given) => {
      const readings = given.rowNumbers("readings", aboveZero);
      const K = given.number("constant", positive);
      const n = given.number("exponent", exponent);
      const percent = given.optionalNumber("percent", zeroOrMore);
      const floor = given.optionalNumber("floor", zeroOrMore);
      if (percent === undefined && floor === undefined)
        throw new ArgumentError("blank", "percent and floor are blank");
      const resolution = given.optionalNumber("resolution", zeroOrMore) ?? 0;
      const limits = { percent: percent ?? 0, floor: floor ?? 0, resolution };
      const budget = deviceBudget(readings, K, n, limits);
      return {
        ...budgetGrounds(budget, given.system),
        sums: [{ formula: deviceFlow, given: { K, r: repeats(readings).mean, n } }],
      };
    },
  },
  PAN_STATUS: {
    title: "Whether the duct behind a register is tight",
    takes: ["readings", "limit", "span"],
    lists: ["readings"],
    explain: (given) => {
      const readings = given.rowNumbers("readings");
      const limit = given.optionalNumber("limit", positive) ?? usualPan.limit.value;
      const span = given.optionalNumber("span", positive) ?? usualPan.span.value;
      const read = panReading(readings);
      const [mean, apart] = [read?.mean ?? 0, read?.span ?? 0].map(sixDigits);
      return {
        words: [
          `mean ${mean} Pa against ${sixDigits(limit)} Pa either way; readings ${apart} Pa apart, at most ${sixDigits(span)} Pa allowed`,
        ],
        sources: [usualPan.limit.source, usualPan.span.source],
        gives: [panStatus(readings, limit, span) ?? ""],
      };
    },
  },
} satisfies Record<string, Working>;
