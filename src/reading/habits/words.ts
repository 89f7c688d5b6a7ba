import type { SheetBlock } from "../blocks/block";
import { cellWord } from "../text/vocabulary";
import type { Habits, RoomKind } from "../types";

/** What the block's words for rooms and duties mean, and those that are not known. */
export function wordsOf(block: SheetBlock): Pick<Habits, "duties" | "rooms" | "unknown"> {
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
      const meaning = cellWord(word);
      if (role === "room" && meaning.room) rooms.set(word, meaning.room);
      else if (role === "duty" && meaning.duty) duties.set(word, meaning.duty);
      else unknown.push({ role, word });
    }
  return { duties, rooms, unknown };
}
