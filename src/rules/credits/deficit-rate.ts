import { oneValue, plain } from "../../algebra";
import type { Edition } from "../../editions";
import { rateWithDeficits } from "../../formulas";
import { edition, flowToCome } from "../arguments";
import type { NumbersArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must, zeroOrMore } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, ruleOf as part, RequiredRate, sum } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { deficitRooms } from "../native/tables/credits";
import { alternative, appendix } from "./deficit";

const deficits: NumbersArgument = { kind: "numbers", need: zeroOrMore, isReading: true };

/** The dwelling rate raised by the edition's part of the sum of its rooms' deficits. */
export function withDeficits(edition: Edition, total: number, deficits: number): RequiredRate {
  const rule = part(edition, "deficits", alternative);
  must("total", total, aboveZero);
  must("deficits", deficits, zeroOrMore);
  const given = { T: total, q: rule.share, S: deficits };
  const [system = "ip"] = edition.systems;
  return new RequiredRate(oneValue(rateWithDeficits, given), rule.source, system, [
    sum(rateWithDeficits, given),
  ]);
}

export const rule = ruleOf({
  id: "DEFICIT_RATE",
  title: "Dwelling rate raised by the deficits of its rooms",
  arguments: { edition, total: flowToCome, deficits },
  work: ({ edition, total, deficits }) =>
    withDeficits(
      edition,
      total,
      deficits.reduce((all, each) => all + each, 0),
    ).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const numbers = native.call.table(deficitRooms).column("Edition no.");
  const no = native.number("edition");
  // Every room of an edition has the same part: the first will do.
  const rule = native.rowBy(
    deficitRooms,
    `IF(SUMPRODUCT((${numbers}=${no})*1)=0,0,MATCH(${no},${numbers},0))`,
  );
  const [T, q] = [native.near("total"), rule.of("Part that is added")];
  return rule.orNone(
    plain(rateWithDeficits, { T, q, S: `SUM(${native.call.list("deficits").text})` }),
  );
};

export const help: Help = {
  computes: [
    "A quarter of the sum of the deficits of a dwelling's rooms is added to its rate.",
    "Give the deficits of one dwelling only. Blank cells are rooms not entered; where all are blank the result is blank.",
    "Verify against your own copy of the edition that applies.",
  ],
  result: "Raised rate, in the unit of the total.",
  formulas: [rateWithDeficits],
  source: appendix,
  examples: [
    {
      words: "84 cfm, and three rooms that lack 80, 20 and 30 cfm.",
      args: ["62.2-2016", 84, [80, 20, 30]],
      gives: 116.5,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The edition has no such alternative.", args: ["IRC-2021", 60, [30, 20]] },
    { when: "A deficit is text.", args: ["62.2-2016", 84, [30, "none"]] },
  ],
  related: ["DEFICIT", "FAN_RATE"],
};
