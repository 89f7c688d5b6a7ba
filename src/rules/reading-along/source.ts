import { InputError } from "../../cells";
import type { Duty, Edition, RoomKind } from "../../editions";
import { duty, edition, room } from "../arguments";
import { optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { sourceText } from "../contract/source-text";
import { roomRate } from "../required/room-rate";

/** Where the rate of a room stands. Throws as `roomRate` does where the edition sets none. */
export function roomSource(edition: Edition, room: RoomKind, duty: Duty): string {
  const [system = "ip"] = edition.systems;
  // The source is the same for every volume: any serves where the edition asks for air changes.
  return sourceText(roomRate(edition, room, duty, system, { volume: 1, enclosed: true }).source);
}

/** Where the edition's usual rule for a whole dwelling stands; both places where it has two. */
export function dwellingSource(edition: Edition): string {
  const [usual] = edition.dwelling;
  if (!usual) throw new InputError(`${edition.id} sets no rate for a whole dwelling`);
  const places = edition.dwelling
    .filter(({ method }) => method === usual.method)
    .flatMap((rule) => [rule.source, ...("areaSource" in rule ? [rule.areaSource] : [])]);
  return [...new Set(places.map(sourceText))].join("; ");
}

export const rule = ruleOf({
  id: "SOURCE",
  title: "Where a rate stands",
  arguments: { edition, room: optional(room), duty: optional(duty) },
  together: [
    ["room", "duty"],
    ["edition", "room", "duty"],
  ],
  check({ room, duty }) {
    // Both left out, the whole dwelling is meant.
    if (room && !duty) throw new InputError("duty is blank: say on demand or continuous", "blank");
    if (duty && !room) throw new InputError("room is blank: name one, such as bathroom", "blank");
  },
  work: ({ edition, room, duty }) => ({
    gives: room ? roomSource(edition, room, duty) : dwellingSource(edition),
    why: () => ({ sources: [] }),
  }),
});

export const help: Help = {
  computes: [
    "The work and clause of the number that ROOM_RATE gives for the same edition, room and duty. With the edition alone: of its usual rule for the whole dwelling.",
    'The words in brackets say how far the number has been traced. Verify a number "from memory" against your own copy before it counts.',
  ],
  result: "Text: work, clause (mark).",
  source: { work: "the edition's own data", clause: "", mark: "by definition" },
  examples: [
    {
      words: "Where the 50 cfm of a bathroom fan on demand stand.",
      args: ["62.2-2016", "bathroom", "on demand"],
      gives: "ASHRAE 62.2-2016, table 5.1 (two sources)",
    },
  ],
  troubles: [
    { when: "The edition is not known.", args: ["62.2-1999"] },
    { when: "The edition sets no such rate.", args: ["62.2-2016", "utility", "on demand"] },
    { when: "The duty is blank.", args: ["62.2-2016", "bathroom", ""] },
  ],
  related: ["EDITIONS", "ROOM_RATE", "DWELLING_RATE"],
};
