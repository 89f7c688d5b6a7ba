import { oneValue, plain } from "../../algebra";
import { type Edition, type RoomKind, type System, UnknownNameError } from "../../editions";
import { roomDeficit } from "../../formulas";
import { edition, room, units, yesNo } from "../arguments";
import { reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { must, type Need } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import {
  flowUnits,
  ruleOf as part,
  RequiredRate,
  requireSystem,
  statedIn,
  sum,
} from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { deficitRooms } from "../native/tables/credits";

export const alternative = "alternative for weak fans in existing dwellings";
export const appendix = {
  work: "ASHRAE 62.2",
  clause: "appendix on existing buildings, alternative for weak local fans",
  mark: "from memory",
} as const;

const measuredFlow: Need = {
  from: 0,
  say: 'give a flow of 0 or more, or "none" where there is no fan',
};

/**
 * What a room's exhaust lacks against the on-demand rate of the existing-building alternative.
 *
 * `measured` in cfm (ip) or L/s (si): 0 where there is no fan or none was measured.
 */
export function deficitOf(
  edition: Edition,
  room: RoomKind,
  measured: number,
  window: boolean,
  system: System,
): RequiredRate {
  requireSystem(edition, system);
  const rule = part(edition, "deficits", alternative);
  must("measured", measured, measuredFlow);
  const own = rule.rooms.find((entry) => entry.room === room);
  if (!own)
    throw new UnknownNameError(
      `${edition.id} counts no deficit of a ${room}: it has ${rule.rooms.map((entry) => entry.room).join(", ")}`,
    );
  const given = {
    R: statedIn(own.rate, system, edition.id),
    M: measured,
    W: window ? statedIn(rule.window, system, edition.id) : 0,
  };
  return new RequiredRate(oneValue(roomDeficit, given), rule.source, system, [
    sum(roomDeficit, given),
  ]);
}

export const rule = ruleOf({
  id: "DEFICIT",
  title: "What a room's exhaust lacks",
  arguments: {
    edition,
    room,
    measured: { ...reading(measuredFlow), words: { none: 0 } },
    window: yesNo,
    units,
  },
  work: ({ edition, room, measured, window = false, units }) =>
    deficitOf(edition, room, measured, window, units).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const rule = native.rowWhere(deficitRooms, {
    "Edition no.": native.number("edition"),
    System: native.system,
    "Room no.": native.number("room"),
  });
  const measured = native.near("measured");
  const M = `IF(ISNUMBER(${measured}),${measured},0)`;
  const W = `IF(${native.yesNo("window")}=1,${rule.of("Credit of a window")},0)`;
  return rule.orNone(plain(roomDeficit, { R: rule.of("Rate, cfm or L/s"), M, W }));
};

export const help: Help = {
  computes: [
    "In an existing dwelling weak or missing room fans may stay if the whole dwelling is ventilated more. A room's deficit is its rate on demand less the measured flow, less the credit of an openable window.",
    "A fan that was not measured counts as none: type 0 or none. A blank stays blank, so that nobody's missing reading counts as a fan that is not there. Verify against your own copy of the edition that applies.",
  ],
  result: 'Deficit, cfm (L/s with units "si"); 0 where nothing is lacking.',
  formulas: [roomDeficit],
  source: appendix,
  examples: [
    {
      words: "A bathroom without a fan, with an openable window.",
      args: ["62.2-2016", "bathroom", "none", "yes"],
      gives: 30,
    },
  ],
  troubles: [
    { when: "The room is not among those that count.", args: ["62.2-2016", "utility", 0] },
    { when: "The edition has no such alternative.", args: ["IRC-2021", "bathroom", 0] },
    { when: "The flow is text.", args: ["62.2-2016", "bathroom", "weak"] },
    { when: "The window is neither yes nor no.", args: ["62.2-2016", "bathroom", 0, "half"] },
  ],
  related: ["DEFICIT_RATE", "ROOM_RATE"],
};
