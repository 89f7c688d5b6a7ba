import type { Role } from "../types";
import type { Part } from "./split";

const ofTheFan: readonly Role[] = [
  "dwelling",
  "fan",
  "room",
  "duty",
  "required",
  "rated",
  "tester",
];

/** A retest is of the same fans: what its own lines do not say, those of the first test say. */
export function inheritRoles(blocks: readonly { part: Part; given: Map<Role, number> }[]): void {
  const first = blocks[0];
  if (!first) return;
  for (const { part, given } of blocks.slice(1)) {
    if (!part.retest) continue;
    for (const role of ofTheFan) {
      const line = first.given.get(role);
      if (line !== undefined && !given.has(role)) given.set(role, line);
    }
  }
}
