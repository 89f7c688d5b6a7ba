import { findEdition, findRoom } from "../../editions";
import {
  balancedRate,
  betweenTwoRows,
  creditCapped,
  fanRateAfterCredit,
  fanRateAfterExcess,
  infiltrationByLeakageIp,
  infiltrationByLeakageSi,
  infiltrationShort,
  onRate,
  rateWithDeficits,
  roomDeficit,
  runningRate,
  unbalancedShare,
} from "../../formulas";
import {
  deficitOf,
  fanRate,
  infiltration,
  type RequiredRate,
  rateIfBalanced,
  rateWhileOn,
  withDeficits,
  works,
} from "../rules";
import { ArgumentError, aboveZero, type Given, notNegative } from "./given";
import { lookedUp } from "./looked-up";
import { flowUnit } from "./required";
import type { Working } from "./working";

const positive = { refuse: aboveZero };
const zeroOrMore = { refuse: notNegative };
const share = {
  refuse: (value: number) => (value >= 0 && value <= 1 ? undefined : "give a share from 0 to 1"),
};

export const credits = {
  INFILTRATION: {
    title: "Infiltration of a dwelling over a year",
    takes: ["edition", "leak50", "floorArea", "height", "weather", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const edition = findEdition(given.text("edition"));
      const envelope = {
        leak50: given.number("leak50", positive),
        floorArea: given.number("floorArea", positive),
        height: given.number("height", positive),
        weather: given.number("weather", positive),
      };
      return ruled(infiltration(edition, envelope, system), given, [
        infiltrationByLeakageIp,
        infiltrationByLeakageSi,
        infiltrationShort,
      ]);
    },
  },
  FAN_RATE: {
    title: "Rate for the fans after the infiltration credit",
    takes: [
      "edition",
      "total",
      "infiltration",
      "exposedShare",
      "balanced",
      "work",
      "units",
      "floorArea",
    ],
    explain: (given) => {
      const { system = "ip" } = given;
      const edition = findEdition(given.text("edition"));
      const named = given.optionalText("work").toLowerCase();
      const work = named === "" ? "new" : works.find((each) => each === named);
      if (!work)
        throw new ArgumentError(
          "unusable",
          `unknown work "${named}": use one of ${works.join(", ")}`,
        );
      const credited = {
        total: given.number("total", positive),
        infiltration: given.number("infiltration", zeroOrMore),
        exposedShare: given.optionalNumber("exposedShare", share) ?? 1,
        balanced: given.yesNo("balanced") ?? false,
        work,
        floorArea: given.optionalNumber("floorArea", positive),
      };
      return ruled(fanRate(edition, credited, system), given, [
        creditCapped,
        unbalancedShare,
        fanRateAfterCredit,
        fanRateAfterExcess,
      ]);
    },
  },
  ON_RATE: {
    title: "Flow while on of a fan that runs part of the time",
    takes: ["edition", "rate", "runShare", "cycleHours"],
    explain: (given) => {
      const edition = findEdition(given.text("edition"));
      const rate = given.number("rate", positive);
      const runShare = given.number("runShare", positive);
      const hours = given.optionalNumber("cycleHours", positive);
      return ruled(rateWhileOn(edition, rate, runShare, hours), given, [
        onRate,
        betweenTwoRows,
        runningRate,
      ]);
    },
  },
  DEFICIT: {
    title: "What a room's exhaust lacks",
    takes: ["edition", "room", "measured", "window", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const isNone = given.optionalText("measured").toLowerCase() === "none";
      const measured = isNone ? 0 : given.number("measured", zeroOrMore);
      const edition = findEdition(given.text("edition"));
      const room = findRoom(given.text("room"));
      const opens = given.yesNo("window") ?? false;
      return ruled(deficitOf(edition, room, measured, opens, system), given, [roomDeficit]);
    },
  },
  DEFICIT_RATE: {
    title: "Dwelling rate raised by the deficits of its rooms",
    takes: ["edition", "total", "deficits"],
    lists: ["deficits"],
    explain: (given) => {
      const edition = findEdition(given.text("edition"));
      const total = given.number("total", positive);
      const sum = given.numbers("deficits", notNegative).reduce((all, each) => all + each, 0);
      return ruled(withDeficits(edition, total, sum), given, [rateWithDeficits]);
    },
  },
  BALANCED_RATE: {
    title: "Dwelling rate of a balanced and ducted system",
    takes: ["edition", "rate", "balancedDucted"],
    explain: (given) => {
      const code = given.text("edition");
      const rate = given.number("rate", positive);
      const answer = given.yesNo("balancedDucted");
      if (answer === undefined) throw new ArgumentError("blank", "balancedDucted is blank");
      return ruled(rateIfBalanced(code, rate, answer), given, [balancedRate]);
    },
  },
} satisfies Record<string, Working>;

function ruled(
  { rate, ...why }: RequiredRate,
  given: Given,
  formulas: Parameters<typeof lookedUp>[3],
) {
  return lookedUp({ ...why, value: rate }, flowUnit, given.system, formulas);
}
