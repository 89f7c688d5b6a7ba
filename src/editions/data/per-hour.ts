import type { Source } from "../../formulas";
import type { RoomKind, RoomRule } from "../room";

/** A rate that is printed in m³/h, in L/s: one hour has 3,600 seconds, exactly. */
export const perHour = (cubicMetres: number): number => cubicMetres / 3.6;

/** Rooms of a table in m³/h; each keeps the printed number in its note. */
export const roomsPerHour = (
  source: Source,
  rows: readonly (readonly [room: RoomKind, duty: RoomRule["duty"], printed: number])[],
): RoomRule[] =>
  rows.map(([room, duty, printed]) => ({
    room,
    duty,
    rate: { si: perHour(printed) },
    is: "delivered",
    note: `printed as ${printed} m³/h`,
    source,
  }));
