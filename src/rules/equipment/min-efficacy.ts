import { InputError } from "../../cells";
import {
  efficacyRules,
  type FanKind,
  findFan,
  findRule,
  type System,
  UnknownNameError,
} from "../../editions";
import { fanEfficacy } from "../../formulas";
import { code, units } from "../arguments";
import { ifGiven, nameToCome, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { Ruling, statedIn } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { efficacies } from "../native/tables/equipment";
import { sumOver } from "../native/text";

/**
 * The least flow for each watt that a code asks of a kind of fan, cfm/W.
 *
 * `flow` is the rated flow, needed where the code has rows by flow.
 */
export function leastEfficacy(
  code: string,
  fan: FanKind,
  flow: number | undefined,
  system: System,
): Ruling {
  const rule = findRule("fan efficacy", efficacyRules, code);
  const own = rule.rows.filter((row) => row.fan === fan);
  if (own.length === 0) {
    const known = [...new Set(rule.rows.map((row) => row.fan))].join(", ");
    throw new UnknownNameError(`${rule.code} sets no efficacy of a ${fan} fan: it has ${known}`);
  }
  for (const { least } of own) statedIn(least, system, rule.code);
  const byFlow = own.length > 1;
  if (byFlow && flow === undefined)
    throw new InputError(
      `${rule.code} sets the efficacy of a ${fan} fan by its flow: give the rated flow`,
    );
  const row = own.find(
    ({ from = 0, below = Number.POSITIVE_INFINITY }) =>
      !byFlow || ((flow ?? 0) >= from && (flow ?? 0) < below),
  );
  if (!row)
    throw new InputError(
      `flow ${flow}: ${rule.code} sets the efficacy of a ${fan} fan from ${own[0]?.from} cfm on`,
    );
  const value = statedIn(row.least, system, rule.code);
  const limits = [
    ...(row.from === undefined ? [] : [`from ${row.from} cfm`]),
    ...(row.below === undefined ? [] : [`below ${row.below} cfm`]),
  ];
  const words = [`${value} cfm/W`, `${fan} fan`, ...limits].join(", ");
  return new Ruling(value, row.source, system, [words]);
}

export const rule = ruleOf({
  id: "MIN_EFFICACY",
  title: "Least flow for each watt",
  arguments: {
    edition: { ...code, ask: "name one, such as IECC-2021" },
    fanKind: nameToCome(findFan, "fan"),
    flow: optional(ifGiven(aboveZero)),
    units,
  },
  work: ({ edition, fanKind, flow, units }) =>
    leastEfficacy(edition, fanKind, flow, units).answer("cfm/W"),
});

export const native: NativeForm = (native) => {
  const table = native.call.table(efficacies);
  const own = [
    `${table.column("Edition no.")}=${native.number("edition")}`,
    `${table.column("System")}=${native.system}`,
    `${table.column("Fan no.")}=${native.number("fanKind")}`,
  ];
  const flow = native.far("flow");
  const count = native.call.step("rows for such a fan", sumOver("1", own));
  const byFlow = sumOver(table.column("No."), [
    ...own,
    `${table.column("Flow from")}<=${flow}`,
    `${table.column("Flow below")}>${flow}`,
  ]);
  const only = sumOver(table.column("No."), own);
  const rule = native.rowBy(
    efficacies,
    `IF(${count}=1,${only},IF(${native.given("flow", "far")},${byFlow},0))`,
  );
  return rule.orNone(rule.of("Least, cfm/W"));
};

export const help: Help = {
  computes: [
    "Codes ask for a least flow for each watt, by kind of fan and partly by rated flow. A fan of 50 cfm on 25 W has 2.0 cfm/W: enough for IECC-2018, too little for IECC-2021.",
    "Other exhaust fans count as bath or utility. Verify against your own copy of the code that applies.",
  ],
  result: "Least efficacy, cfm/W.",
  formulas: [fanEfficacy],
  source: { work: "10 CFR 460", clause: "460.204, table 1", mark: "two sources" },
  examples: [
    {
      words: "A bath fan rated at 80 cfm, under IECC-2021.",
      args: ["IECC-2021", "bath or utility", 80],
      gives: 2.8,
    },
  ],
  troubles: [
    { when: "The code tells fans apart by flow.", args: ["IECC-2021", "bath"] },
    { when: "The code has no such kind of fan.", args: ["10-CFR-460", "range hood"] },
    { when: "The edition sets no efficacy.", args: ["62.2-2016", "in-line"] },
    { when: "The code states no number in these units.", args: ["IECC-2021", "in-line", "", "si"] },
  ],
  related: ["MAX_SONE", "ROOM_RATE"],
};
