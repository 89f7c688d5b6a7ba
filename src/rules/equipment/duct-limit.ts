import { oneValue, plain } from "../../algebra";
import { InputError } from "../../cells";
import { type DuctKind, ductRules, findDuct, findRule, type System } from "../../editions";
import { ductLeft } from "../../formulas";
import { area, code, flowToCome, units } from "../arguments";
import { ifGiven, named, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must, wholeNumber } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { Ruling, statedIn, sum } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { ductCodes, ductLengths } from "../native/tables/equipment";
import { digits, endless, sumOver, wrong } from "../native/text";

export interface Duct {
  readonly kind: DuctKind;
  /** Inches. */
  readonly diameter: number;
  /** The fan's rated flow at 0.25 in w.c., cfm. */
  readonly ratedFlow: number;
  readonly elbows: number;
}

export type DuctLimit = number | "no limit" | "not allowed";

/**
 * The longest duct that a fan may have, ft, "no limit" or "not allowed".
 *
 * A flow between two columns counts as the higher, a diameter between two rows as the smaller. Once
 * the installed flow has been measured (`measured`) the length is free.
 */
export function longestDuct(
  code: string,
  duct: Duct,
  system: System,
  measured = false,
): Ruling<DuctLimit> {
  const rule = findRule("duct lengths", ductRules, code);
  statedIn({ ip: rule.elbow }, system, rule.code);
  const { kind, diameter, ratedFlow, elbows } = duct;
  must("diameter", diameter, aboveZero);
  must("ratedFlow", ratedFlow, aboveZero);
  must("elbows", elbows, wholeNumber);
  if (measured)
    return new Ruling<DuctLimit>("no limit", rule.waivedByMeasuring.source, system, [
      "the installed flow is measured: the table does not apply",
    ]);
  const column = rule.ratedFlows.findIndex((flow) => ratedFlow <= flow);
  if (column < 0)
    throw new InputError(
      `ratedFlow ${ratedFlow}: ${rule.source.work} ${rule.source.clause} ends at ${rule.ratedFlows.at(-1)} cfm: measure the installed flow instead`,
    );
  const row = rule.rows.findLast((entry) => entry.duct === kind && entry.diameter <= diameter);
  const length = row?.lengths[column] ?? 0;
  const source = row?.source ?? rule.source;
  const place = `${kind} duct of ${diameter} in, column of ${rule.ratedFlows[column]} cfm`;
  if (length === 0)
    return new Ruling<DuctLimit>("not allowed", source, system, [`${place}: not allowed`]);
  if (length === Number.POSITIVE_INFINITY)
    return new Ruling<DuctLimit>("no limit", source, system, [`${place}: no limit`]);
  const given = { L0: length, e: rule.elbow, n: Math.max(0, elbows - (rule.freeElbows ?? 0)) };
  const left = oneValue(ductLeft, given);
  return new Ruling<DuctLimit>(left > 0 ? left : "not allowed", source, system, [
    `${place}: ${length} ft`,
    sum(ductLeft, given),
  ]);
}

export const rule = ruleOf({
  id: "DUCT_LIMIT",
  title: "Longest exhaust duct",
  arguments: {
    edition: code,
    ductKind: named(findDuct, "say flex or smooth", "duct"),
    diameter: area,
    ratedFlow: flowToCome,
    elbows: optional(ifGiven(wholeNumber)),
    units,
  },
  work: ({ edition, ductKind, units, elbows = 0, ...sizes }) =>
    longestDuct(edition, { ...sizes, kind: ductKind, elbows }, units).answer("ft"),
});

export const native: NativeForm = (native) => {
  const no = native.number("edition");
  const rule = native.rowWhere(ductCodes, { "Edition no.": no });
  const duct = native.number("ductKind");
  const [diameter, flow] = [native.far("diameter"), native.far("ratedFlow")];
  const lengths = native.call.table(ductLengths);
  const L0 = native.call.step(
    "length of straight duct",
    sumOver(lengths.column("Length, ft"), [
      `${lengths.column("Edition no.")}=${no}`,
      `${lengths.column("Duct no.")}=${duct}`,
      `${lengths.column("Diameter from, in")}<=${diameter}`,
      `${lengths.column("Diameter below, in")}>${diameter}`,
      `${lengths.column("Flow above, cfm")}<${flow}`,
      `${lengths.column("Flow to, cfm")}>=${flow}`,
    ]),
  );
  const n = `MAX(0,${native.or("elbows", "0")}-${rule.of("Free elbows")})`;
  const left = plain(ductLeft, { L0, e: rule.of("Each elbow, ft"), n });
  const length = `IF(${L0}>=${digits(endless)},"no limit",IF(AND(${L0}>0,${left}>0),${left},"not allowed"))`;
  const flaw = `IF(${duct}=0,${wrong("duct kind: say flex or smooth")},IF(${native.near("ratedFlow")}>${rule.of("Most flow, cfm")},${wrong("beyond the end of the table")},${length}))`;
  return rule.orNone(`IF(${native.system}="ip",${flaw},${wrong("stated in ft and in only")})`);
};

export const help: Help = {
  computes: [
    "The table gives feet of straight duct by diameter and by the fan's flow as rated at 0.25 in w.c. A flow between two columns counts as the higher, a diameter between two rows as the smaller. Each elbow takes 15 ft off.",
    "Once the installed flow has been measured, the table does not apply: the measured flow counts instead.",
    "The rows of 3 to 6 in were read; those of 7 in and more are from memory. Verify against your own copy of the code that applies.",
  ],
  result: 'Feet, "no limit" or "not allowed".',
  formulas: [ductLeft],
  source: { work: "IRC 2021", clause: "table M1504.2", mark: "read" },
  examples: [
    {
      words: "A fan rated at 50 cfm on flexible duct of 4 in with two elbows: 56 ft less 2 × 15.",
      args: ["IRC-2021", "flex", 4, 50, 2],
      gives: 26,
    },
  ],
  troubles: [
    { when: "The table ends before this flow.", args: ["IRC-2021", "flex", 8, 350] },
    { when: "The duct kind is not known.", args: ["IRC-2021", "round", 4, 50] },
    { when: "The edition has no such table here.", args: ["62.2-2016", "flex", 4, 50] },
  ],
  related: ["ROOM_RATE", "FLOW"],
};
