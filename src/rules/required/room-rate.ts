import { oneValue, plain } from "../../algebra";
import {
  type Cooking,
  type Duty,
  type Edition,
  findCooking,
  kindOf,
  type RoomKind,
  type RoomRule,
  type System,
  UnknownNameError,
} from "../../editions";
import { airChangeRateIp, airChangeRateSi } from "../../formulas";
import { duty, edition, room, units, yesNo } from "../arguments";
import { ifGiven, namedIfGiven, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, type Need } from "../contract/need";
import { type Answer, rule as ruleOf } from "../contract/rule";
import { flowUnits, RequiredRate, requireSystem } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { roomRates } from "../native/tables/room-rates";
import { firstOver, wrong } from "../native/text";

/** What an edition may ask about a room; what is not known is left out. */
export interface RoomFacts {
  /** ft³ or m³ */
  readonly volume?: number | undefined;
  /** Whether a kitchen is shut off from the rooms beside it, as its edition defines that. */
  readonly enclosed?: boolean | undefined;
  readonly cooking?: Cooking | undefined;
  /** Whether a window in the room opens. */
  readonly window?: boolean | undefined;
  /** Of the dwelling, ft² or m². */
  readonly floorArea?: number | undefined;
  /** What a hood is listed to catch of the cooking's smoke, percent. */
  readonly capture?: number | undefined;
}

/** Nothing is asked of a room's flow. */
export class NoneAsked extends UnknownNameError {}

/** The rule that holds for a room; undefined where the edition has none. */
export const roomRule = (edition: Edition, room: RoomKind, duty: Duty, facts: RoomFacts) =>
  edition.rooms.find(
    (entry) => entry.room === room && entry.duty === duty && mayHold(entry, facts),
  );

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
  if (edition.rooms.length > 0 && !edition.rooms.some((entry) => entry.room === room))
    throw new NoneAsked(`${edition.id} asks no exhaust rate of a ${room}`);
  const rule = roomRule(edition, room, duty, facts);
  if (rule?.captures !== undefined && (facts.capture ?? 0) >= rule.captures)
    throw new NoneAsked(
      `a hood listed to catch ${rule.captures} % or more needs no flow of its own (${rule.source.clause})`,
    );
  if (!rule && facts.window && roomRule(edition, room, duty, { ...facts, window: false }))
    throw new NoneAsked(`${edition.id} asks it of a ${room} without a window that opens`);
  if (!rule) throw noSuchRate(edition, room, duty);
  const fixed = rule.rate?.[system];
  if (rule.enclosedOnly && fixed === undefined && facts.enclosed !== true)
    throw new UnknownNameError(
      facts.enclosed === false
        ? `${edition.id} allows no ${duty} exhaust in an open kitchen: give it a fan on demand`
        : `${edition.id} allows ${duty} exhaust in an enclosed kitchen only: say whether it is enclosed, "yes" or "no"${facts.volume === undefined ? ", and give its volume" : ""}`,
    );
  const counts = !rule.enclosedOnly || fixed === undefined || facts.enclosed === true;
  const changed = counts ? byVolume(rule, system, facts.volume) : undefined;
  const isBoth = rule.together === "both";
  const larger = changed !== undefined && fixed !== undefined && fixed > changed.value;
  if (changed && (fixed === undefined || larger !== isBoth)) return changed;
  if (fixed !== undefined && (!isBoth || changed))
    return new RequiredRate(fixed, rule.source, system, [
      `${fixed} ${flowUnits[system]}, ${room}, ${duty}`,
      kindOf(rule),
      ...(rule.note ? [rule.note] : []),
    ]);
  throw new UnknownNameError(
    `${edition.id} asks for ${rule.airChanges} air changes an hour of a ${room}, ${duty}: give the room's volume`,
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
  const words = `${rule.airChanges} air changes an hour of ${room}`;
  return new RequiredRate(rate, rule.source, system, [words, kindOf(rule)]);
}

function noSuchRate(edition: Edition, room: RoomKind, duty: Duty): UnknownNameError {
  const known = edition.rooms.map((rule) => `${rule.room} ${rule.duty}`);
  return new UnknownNameError(
    `${edition.id} sets no rate for a ${room}, ${duty}: it has ${known.join(", ")}`,
  );
}

const percent: Need = { above: 1, to: 100, say: "give a percentage above 1, such as 65" };

export const rule = ruleOf({
  id: "ROOM_RATE",
  title: "Required rate of a room",
  arguments: {
    edition,
    room,
    duty,
    volume: optional(ifGiven(aboveZero)),
    units,
    enclosed: yesNo,
    cooking: optional(namedIfGiven(findCooking, "cooking")),
    window: yesNo,
    floorArea: optional(ifGiven(aboveZero)),
    capture: optional(ifGiven(percent)),
  },
  together: [["room", "duty"]],
  work({ edition, room, duty, units, ...facts }) {
    requireSystem(edition, units);
    const none = (words: string): Answer => ({
      gives: "none",
      why: () => ({
        words: [words],
        sources: [roomRule(edition, room, duty, facts) ?? edition.rooms[0]].flatMap(
          (rule) => rule?.source ?? [],
        ),
      }),
    });
    try {
      return roomRate(edition, room, duty, units, facts).answer(flowUnits);
    } catch (error) {
      if (error instanceof NoneAsked) return none(error.message);
      throw error;
    }
  },
});

export const native: NativeForm = (native) => {
  const enclosed = native.yesNo("enclosed");
  const cooking = native.number("cooking");
  if (native.has("cooking"))
    native.check(
      `IF(AND(${native.text("cooking")}<>"",${cooking}=0),${wrong("cooking: say electric or fuel")},0)`,
    );
  const floor = native.or("floorArea", "-1", "far");
  const table = native.call.table(roomRates);
  const is = (heading: string, test: string) => `${table.column(heading)}${test}`;
  const rule = native.rowBy(
    roomRates,
    firstOver(table.column("No."), [
      is("Edition no.", `=${native.number("edition")}`),
      is("System", `=${native.system}`),
      is("Room no.", `=${native.number("room")}`),
      is("Duty no.", `=${native.number("duty")}`),
      `(${is("Cooking no.", "=0")})+(${is("Cooking no.", `=${cooking}`)})+(${cooking}=0)>0`,
      `(${is("No window", "=0")})+(${native.yesNo("window")}<>1)>0`,
      `(${floor}<0)+(${is("Floor above", `<${floor}`)})*(${is("Floor to", `>=${floor}`)})>0`,
    ]),
  );
  const ofEdition = { "Edition no.": native.number("edition"), System: native.system };
  const ofRoom = { ...ofEdition, "Room no.": native.number("room") };
  const [any, ofAnyRoom] = [ofRoom, ofEdition].map(
    (where) => native.rowWhere(roomRates, where).row,
  );
  const windowless = native.has("window")
    ? native.rowWhere(roomRates, {
        ...ofRoom,
        "Duty no.": native.number("duty"),
        "No window": "1",
      }).row
    : "0";
  const isNone = `OR(${any}=0,AND(${windowless}>0,${native.yesNo("window")}=1))`;
  const orNone = (rate: string) =>
    `IF(${rule.row}>0,${rate},IF(AND(${isNone},${ofAnyRoom}>0,${native.number("room")}>0,${native.number("duty")}>0),"none",${rule.orNone("0")}))`;
  const fixed = rule.of("Rate, cfm or L/s");
  const n = rule.of("Air changes an hour");
  const none = wrong("this rate goes by air changes: give the volume of the room");
  const onlyFixed = `IF(AND(${fixed}>0,${rule.of("Both")}=0),${fixed},${none})`;
  const open = `AND(${rule.of("Enclosed only")}=1,${fixed}=0,${enclosed}<>1)`;
  const caught = native.has("capture")
    ? `IF(${native.given("capture")},AND(${rule.of("Captures")}>0,${native.near("capture")}>=${rule.of("Captures")}))`
    : "FALSE";
  const closed = (rate: string) =>
    orNone(
      `IF(${caught},"none",IF(${open},${wrong("such exhaust in an enclosed kitchen only")},${rate}))`,
    );
  if (!native.has("volume")) return closed(onlyFixed);
  const given = { n, V: native.near("volume") };
  const changed = native.bySystem(plain(airChangeRateIp, given), plain(airChangeRateSi, given));
  const both = `IF(${rule.of("Both")}=1,MAX(${fixed},${changed}),MIN(${fixed},${changed}))`;
  const either = `IF(${fixed}>0,${both},${changed})`;
  const counts = `OR(${rule.of("Enclosed only")}=0,${fixed}=0,${enclosed}=1)`;
  const isChanged = `IF(${native.given("volume")},AND(${n}>0,${counts}))`;
  return closed(`IF(${isChanged},${either},${onlyFixed})`);
};

export const help: Help = {
  computes: [
    "Editions of standards and codes are kept as data: each number with its clause and with how far it has been traced.",
    "Where the edition asks for air changes, give the volume of the room itself. In some they count in an enclosed kitchen only.",
    'Where a hood may be listed by what it catches instead, and its capture efficiency is enough, no flow is asked: "none".',
    "What is not said counts as it asks for most: a kitchen as open, a hood as over fuel in the smallest dwelling, a room as without a window.",
    "Required rates differ from place to place. Verify against your own copy of the edition that applies.",
  ],
  result:
    'Required rate, cfm (L/s with units "si"); "none" where the edition asks nothing of such a room.',
  formulas: [airChangeRateIp, airChangeRateSi],
  examples: [
    {
      words: "A bathroom whose fan runs on demand, under ASHRAE 62.2-2016.",
      args: ["62.2-2016", "bathroom", "on demand"],
      gives: 50,
    },
    {
      words: "A kitchen of 960 ft³ shut off from other rooms, its fan in the wall.",
      args: ["62.2-2016", "kitchen", "on demand", 960, "ip", "yes"],
      gives: 80,
    },
    {
      words: "A room of which the edition asks nothing.",
      args: ["62.2-2016", "toilet", "on demand"],
      gives: "none",
    },
  ],
  troubles: [
    { when: "The edition is not known.", args: ["62.2-1999", "bathroom", "on demand"] },
    {
      when: "The edition asks for air changes and the volume is missing.",
      args: ["62.2-2016", "kitchen", "continuous"],
    },
    { when: "The edition sets no such rate.", args: ["CA-2022", "kitchen hood", "continuous"] },
    {
      when: "The edition states no number in these units.",
      args: ["IRC-2021", "bathroom", "on demand", null, "si"],
    },
    {
      when: "The edition has no continuous exhaust for an open kitchen.",
      args: ["62.2-2016", "kitchen", "continuous", 960, "ip", "no"],
    },
    { when: "The duty is blank.", args: ["62.2-2016", "bathroom", ""] },
  ],
  related: ["DWELLING_RATE", "DEFICIT", "VERDICT"],
};
