import type { RoomKind } from "../../editions";
import type { Lot, LotList, LotRoom } from "../../reading";
import { conversionFactor } from "../../units";
import { unitOf } from "../columns";
import type { Settings } from "../read";
import { roomOf } from "../read";

type TypedRow = Record<string, number | string | null>;

/** The typed cells of the sheets of an estimate, and what had to be taken for granted, in lines. */
export interface PlannedRows {
  readonly dwellings: TypedRow[];
  readonly schedule: TypedRow[];
  readonly said: readonly string[];
}

/** What a list may write in units of its own. */
const measures = {
  floor: "floor",
  volume: "volume",
  ductDiameter: "length",
  ductLength: "distance",
} as const;

type PlannedRoom = LotRoom &
  Readonly<Record<Exclude<keyof typeof measures, "floor">, number | null>>;
type PlannedLot = Omit<Lot, "rooms"> & { readonly rooms: readonly PlannedRoom[] };

const letterOf: Readonly<Record<RoomKind, string>> = {
  bathroom: "B",
  toilet: "T",
  "kitchen hood": "K",
  kitchen: "K",
  utility: "U",
};

/**
 * Dwellings and planned fans of lists of lots. A lot without rooms, floor area or bedrooms of its
 * own takes those of its plan, where a list of plans is there. `box` is the box to bring.
 */
export function rowsFromLots(
  lists: readonly LotList[],
  system: Settings["system"],
  box: string,
): PlannedRows {
  const all = lists.flatMap(({ lots, units }) => {
    const own = (role: keyof typeof measures, value: unknown) => {
      const [number, from, to] = [numberIn(value), units[role], unitOf(measures[role], system)];
      if (number === null || !from || from === to) return number;
      return Number((number * conversionFactor(from, to)).toPrecision(6));
    };
    return lots.map((lot) => ({
      ...lot,
      floor: own("floor", lot.floor) ?? undefined,
      rooms: lot.rooms.map((room) => ({
        ...room,
        volume: own("volume", room.cells.volume),
        ductDiameter: own("ductDiameter", room.cells.ductDiameter),
        ductLength: own("ductLength", room.cells.ductLength),
      })),
    }));
  });
  const plans = new Map(
    all.filter(({ name }) => name === "").map((plan) => [plan.plan.toLowerCase(), plan] as const),
  );
  const lots = all
    .filter(({ name }) => name !== "")
    .map((lot) => completed(lot, plans.get(lot.plan.toLowerCase())));
  const saysDuty = lots.some(({ rooms }) =>
    rooms.some(({ duty, whole }) => duty === "continuous" || whole !== undefined),
  );
  const said = [
    ...(saysDuty
      ? []
      : [
          "no fan is said to run continuously: the first bathroom of each lot is planned so, for the whole dwelling",
        ]),
    ...unsure(lots, (lot) => lot.rooms.length === 0, "without a room that has a fan"),
    ...unsure(
      lots,
      ({ fans, rooms }) => fans !== undefined && fans !== rooms.length,
      "whose number of fans is not that of its rooms",
    ),
    ...unsure(lots, ({ floor }) => !((floor ?? 0) > 0), "without a floor area"),
    ...unsure(lots, ({ bedrooms }) => bedrooms === undefined, "without a number of bedrooms"),
    ...unknownRooms(lots),
    ...unusedColumns(lists),
  ];
  return {
    dwellings: lots.map(({ name, plan, phase, floor, bedrooms }) => ({
      ...{ dwelling: name, plan, phase },
      ...{ floor: floor ?? null, bedrooms: bedrooms ?? null },
    })),
    schedule: lots.flatMap((lot) => fansOf(lot, saysDuty, box)),
    said,
  };
}

function completed(lot: PlannedLot, plan: PlannedLot | undefined): PlannedLot {
  if (!plan) return lot;
  return {
    ...lot,
    floor: lot.floor ?? plan.floor,
    bedrooms: lot.bedrooms ?? plan.bedrooms,
    fans: lot.fans ?? plan.fans,
    rooms: lot.rooms.length > 0 ? lot.rooms : plan.rooms,
  };
}

function unsure(lots: readonly Lot[], is: (lot: Lot) => boolean, what: string): string[] {
  const found = lots.filter(is);
  const some = found.slice(0, 5).map(({ name, row }) => `${name} (row ${row + 1})`);
  const more = found.length > some.length ? ` and ${found.length - some.length} more` : "";
  return found.length === 0 ? [] : [`${found.length} lots ${what}: ${some.join(", ")}${more}`];
}

function unknownRooms(lots: readonly Lot[]): string[] {
  const words = new Set(
    lots.flatMap(({ rooms }) => rooms.filter((room) => !kindOf(room)).map(({ word }) => word)),
  );
  return words.size === 0
    ? []
    : [`rooms of no known kind, to be typed in the schedule: ${[...words].join(", ")}`];
}

function unusedColumns(lists: readonly LotList[]): string[] {
  const unused = lists.flatMap(({ taken }) => taken.filter((column) => column.as === ""));
  return unused.length === 0
    ? []
    : [`columns that were not used: ${unused.map(({ heading }) => heading).join(", ")}`];
}

const kindOf = ({ kind }: LotRoom): RoomKind | undefined => kind && roomOf[kind];

function fansOf({ name, rooms }: PlannedLot, saysDuty: boolean, box: string): TypedRow[] {
  const numbers = new Map<string, number>();
  const first = saysDuty
    ? rooms.findIndex(({ duty }) => duty === "continuous")
    : rooms.findIndex(({ kind }) => kind === "bathroom");
  const saysWhole = rooms.some(({ whole }) => whole !== undefined);
  return rooms.map((room, i) => {
    const kind = kindOf(room);
    const letter = kind ? letterOf[kind] : "F";
    const number = (numbers.get(letter) ?? 0) + 1;
    numbers.set(letter, number);
    const whole = saysWhole ? room.whole === true : i === first;
    const text = (role: "tag" | "ductKind" | "box") => textIn(room.cells[role] ?? null);
    return {
      dwelling: name,
      tag: text("tag") ?? `${letter}${number}`,
      room: room.word,
      roomKind: kind ?? null,
      duty: room.duty ?? (whole ? "continuous" : "on demand"),
      volume: room.volume,
      whole: whole ? "yes" : "no",
      ductKind: text("ductKind"),
      ductDiameter: room.ductDiameter,
      ductLength: room.ductLength,
      elbows: numberIn(room.cells.elbows),
      box: text("box") ?? (box === "" ? null : box),
    };
  });
}

const textIn = (value: unknown): string | null =>
  typeof value === "string" || typeof value === "number" ? String(value).trim() || null : null;

function numberIn(value: unknown): number | null {
  if (typeof value === "number") return value;
  const number = Number(textIn(value) ?? Number.NaN);
  return Number.isFinite(number) ? number : null;
}
