import { oneValue } from "../algebra";
import {
  type Condition,
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

/** What an edition may ask about a room; what is not known is left out. */
export interface RoomFacts {
  /** ft³ or m³ */
  readonly volume?: number | undefined;
  /** Whether a kitchen is shut off from the rooms beside it, as its edition defines that. */
  readonly enclosed?: boolean | undefined;
  readonly cooking?: Condition["cooking"] | undefined;
  /** Whether a window in the room opens. */
  readonly window?: boolean | undefined;
  /** Of the dwelling, ft² or m². */
  readonly floorArea?: number | undefined;
}

/**
 * The least rate of one room under an edition, cfm (ip) or L/s (si).
 *
 * A volume is needed where the edition asks for air changes. What is not known counts as it asks
 * for most. Throws `UnknownNameError`, with the known choices, where the edition sets no such rate.
 */
export function roomRate(
  edition: Edition,
  room: RoomKind,
  duty: Duty,
  system: System,
  facts: RoomFacts = {},
): RequiredRate {
  requireSystem(edition, system);
  const rule = edition.rooms.find(
    (entry) => entry.room === room && entry.duty === duty && mayHold(entry, facts),
  );
  if (!rule) return noRule(edition, room, duty);
  const fixed = rule.rate?.[system];
  if (rule.enclosedOnly && fixed === undefined && facts.enclosed === false)
    throw new UnknownNameError(
      `${edition.id} allows no ${duty} exhaust in an open ${room}: give it a fan on demand`,
    );
  const counts = !rule.enclosedOnly || fixed === undefined || facts.enclosed === true;
  const changed = counts ? byVolume(rule, system, facts.volume) : undefined;
  const isBoth = rule.together === "both";
  const larger = changed !== undefined && fixed !== undefined && fixed > changed.rate;
  if (changed && (fixed === undefined || larger !== isBoth)) return changed;
  if (fixed !== undefined && (!isBoth || changed))
    return {
      rate: fixed,
      source: rule.source,
      working: [
        `${fixed} ${flowUnit(system)}, ${room}, ${duty}`,
        ...(rule.note ? [rule.note] : []),
      ].join("; "),
    };
  throw new UnknownNameError(
    `${edition.id} asks for ${rule.airChanges} air changes an hour of a ${room} ${duty}: give the room's volume`,
  );
}

/** Whether nothing that is known speaks against a rule's conditions. */
function mayHold({ when }: RoomRule, { cooking, window, floorArea }: RoomFacts): boolean {
  if (!when) return true;
  const { floorAbove = 0, floorTo = Number.POSITIVE_INFINITY } = when;
  return (
    (!when.cooking || !cooking || when.cooking === cooking) &&
    !(when.window === "none" && window) &&
    (floorArea === undefined || (floorArea > floorAbove && floorArea <= floorTo))
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
