import { oneValue } from "../algebra";
import {
  type Duty,
  type Edition,
  type RoomKind,
  type RoomRule,
  type System,
  UnknownNameError,
} from "../editions";
import { airChangeRateIp, airChangeRateSi, type Source } from "../formulas";

export interface RequiredRate {
  /** cfm (ip) or L/s (si). */
  readonly rate: number;
  readonly source: Source;
  /** How the number came about, in words and numbers. */
  readonly working: string;
}

/**
 * The least rate of one room under an edition, cfm (ip) or L/s (si).
 *
 * `volume` (ft³ or m³) is needed where the edition asks for air changes. Throws
 * `UnknownNameError`, with the known choices, where the edition sets no such rate.
 */
export function roomRate(
  edition: Edition,
  room: RoomKind,
  duty: Duty,
  system: System,
  volume?: number,
): RequiredRate {
  requireSystem(edition, system);
  const rule = edition.rooms.find((entry) => entry.room === room && entry.duty === duty);
  if (!rule) return noRule(edition, room, duty);
  const fixed = rule.rate?.[system];
  const changed = rule.airChanges === undefined ? undefined : byVolume(rule, system, volume);
  if (fixed !== undefined && (changed === undefined || fixed <= changed.rate))
    return {
      rate: fixed,
      source: rule.source,
      working: `${fixed} ${flowUnit(system)}, ${room}, ${duty}`,
    };
  if (changed) return changed;
  throw new UnknownNameError(
    `${edition.id} asks for ${rule.airChanges} air changes an hour of a ${room} ${duty}: give the room's volume`,
  );
}

function byVolume(rule: RoomRule, system: System, volume?: number): RequiredRate | undefined {
  if (volume === undefined || rule.airChanges === undefined) return undefined;
  const formula = system === "ip" ? airChangeRateIp : airChangeRateSi;
  const rate = oneValue(formula, { n: rule.airChanges, V: volume });
  const room = `${volume} ${system === "ip" ? "ft³" : "m³"}`;
  return {
    rate,
    source: rule.source,
    working: `${rule.airChanges} air changes an hour of ${room}`,
  };
}

export function flowUnit(system: System): string {
  return system === "ip" ? "cfm" : "L/s";
}

export function requireSystem(edition: Edition, system: System): void {
  if (edition.systems.includes(system)) return;
  const [own] = edition.systems;
  throw new UnknownNameError(
    `${edition.id} states its numbers in ${flowUnit(own ?? "ip")} only: set units to "${own}"`,
  );
}

function noRule(edition: Edition, room: RoomKind, duty: Duty): never {
  const known = edition.rooms.map((rule) => `${rule.room} ${rule.duty}`);
  throw new UnknownNameError(
    `${edition.id} sets no rate for a ${room} ${duty}: it has ${known.join(", ")}`,
  );
}
