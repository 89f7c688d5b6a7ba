import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { type Edition, type RoomKind, type System, UnknownNameError } from "../editions";
import { rateWithDeficits, roomDeficit } from "../formulas";
import { type RequiredRate, requireSystem } from "./room-rate";
import { ruleOf, statedIn, worked } from "./ruling";

const what = "alternative for weak fans in existing dwellings";

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
  const rule = ruleOf(edition, "deficits", what);
  if (!(measured >= 0))
    throw new InputError(`measured ${measured}: give 0 or more, or "none" where there is no fan`);
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
  return {
    rate: oneValue(roomDeficit, given),
    source: rule.source,
    working: worked(roomDeficit, given, system),
  };
}

/** The dwelling rate raised by the edition's part of the sum of its rooms' deficits. */
export function withDeficits(edition: Edition, total: number, sum: number): RequiredRate {
  const rule = ruleOf(edition, "deficits", what);
  if (!(total > 0)) throw new InputError(`total ${total}: give a number above 0`);
  if (!(sum >= 0)) throw new InputError(`deficits of ${sum}: give 0 or more`);
  const given = { T: total, q: rule.share, S: sum };
  return {
    rate: oneValue(rateWithDeficits, given),
    source: rule.source,
    working: worked(rateWithDeficits, given, edition.systems[0] ?? "ip"),
  };
}
