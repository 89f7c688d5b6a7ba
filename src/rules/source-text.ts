import { InputError } from "../cells";
import type { Duty, Edition, RoomKind } from "../editions";
import type { Source } from "../formulas";
import { verifyNote } from "./numbers";
import { roomRate } from "./room-rate";

/** "work, clause (mark)"; what was recalled asks to be verified. */
export function sourceText({ work, clause, mark }: Source): string {
  const place = clause === "" ? work : `${work}, ${clause}`;
  return `${place} (${[mark, verifyNote(mark)].filter((part) => part !== "").join(", ")})`;
}

/** Where the rate of a room stands. Throws as `roomRate` does where the edition sets none. */
export function roomSource(edition: Edition, room: RoomKind, duty: Duty): string {
  const [system = "ip"] = edition.systems;
  // The source is the same for every volume: any serves where the edition asks for air changes.
  return sourceText(roomRate(edition, room, duty, system, { volume: 1 }).source);
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
