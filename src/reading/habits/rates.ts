import type { SheetBlock } from "../blocks/block";
import { plain } from "../text/plain";
import type { FirmRate } from "../types";

/** The rates that the firm itself asks by room and duty: what most rows of each pair hold. */
export function ratesOf(block: SheetBlock): FirmRate[] {
  const groups = new Map<
    string,
    { room: string; duty: string; counts: Map<number, number>; rows: number }
  >();
  for (let at = 0; at < block.fans.length + block.means.length; at++) {
    const rate = block.number(at, "required");
    const room = wordAt(block, at, "room");
    if (rate === null || room === "") continue;
    const duty = wordAt(block, at, "duty");
    const key = `${plain(room)}|${plain(duty)}`;
    const group = groups.get(key) ?? { room, duty, counts: new Map<number, number>(), rows: 0 };
    group.counts.set(rate, (group.counts.get(rate) ?? 0) + 1);
    group.rows++;
    groups.set(key, group);
  }
  return [...groups.values()].flatMap(({ room, duty, counts, rows }) => {
    const [rate, follow] = [...counts].sort((a, b) => b[1] - a[1])[0]!;
    return follow >= 2 && follow > rows / 2 ? [{ room, duty, rate, follow, rows }] : [];
  });
}

function wordAt(block: SheetBlock, at: number, role: "room" | "duty"): string {
  const value = block.field(at, role)?.value;
  return typeof value === "string" ? value.trim() : "";
}
