import type { SheetBlock } from "../blocks/block";
import { cellWord } from "../text/vocabulary";
import { type Habits, type RoomKind, roomKinds } from "../types";
import type { Answered } from "./answered";

/** What the block's words for rooms and duties mean, and those that are not known. */
export function wordsOf(
  block: SheetBlock,
  answered: Answered,
): Pick<Habits, "duties" | "rooms" | "unknown"> {
  const duties = new Map<string, "continuous" | "on demand">();
  const rooms = new Map<string, RoomKind>();
  const unknown: { role: "duty" | "room"; word: string }[] = [];
  const seen = new Set<string>();
  for (let at = 0; at < block.fans.length; at++)
    for (const role of ["room", "duty"] as const) {
      const value = block.field(at, role)?.value;
      const word = typeof value === "string" ? value.trim() : "";
      if (word === "" || seen.has(`${role} ${word}`)) continue;
      seen.add(`${role} ${word}`);
      const said = answered(role, word);
      const meaning = said === undefined && isDoubtful(word) ? undefined : cellWord(word);
      const room = roomKinds.find((kind) => kind === said) ?? meaning?.room;
      const duty = said === "continuous" || said === "on demand" ? said : meaning?.duty;
      if (role === "room" && room) rooms.set(word, room);
      else if (role === "duty" && duty) duties.set(word, duty);
      else unknown.push({ role, word });
    }
  return { duties, rooms, unknown };
}

/** A question mark of the tester's own says that a word is not sure. */
const isDoubtful = (word: string) => /[?¿]/.test(word);
