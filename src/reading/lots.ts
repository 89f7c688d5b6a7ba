import type { CellValue } from "../cells";
import { findUnit } from "../units";
import type { ReadGrid } from "./host";
import { readHeading, takeUnit } from "./text/heading";
import { textNumber } from "./text/number";
import { bestRun, likeness, plain } from "./text/plain";
import { cellWord } from "./text/vocabulary";
import type { Lot, LotList, LotRoom, RoomKind } from "./types";
import { phrasesOf } from "./words";
import { type LotRole, lotWords } from "./words/lots";

interface Column {
  readonly col: number;
  readonly heading: string;
  readonly role: LotRole | undefined;
  readonly room: RoomKind | undefined;
  readonly unit: string | undefined;
}

const phrases = (Object.entries(lotWords) as [LotRole, string][]).flatMap(([role, list]) =>
  phrasesOf(list).map((text) => ({ role, words: plain(text).split(" ") })),
);
/** A heading names a role where so much of it is a phrase of that role. */
const enoughNamed = 0.6;
const searchedRows = 20;
/** Lots that a row may stand for. */
const mostOfPlan = 2_000;

/** A sheet that lists lots or plans to be built; undefined for any other. */
export function findLots(grid: ReadGrid): LotList | undefined {
  for (let row = 0; row < Math.min(searchedRows, grid.rowCount); row++) {
    const columns = columnsOf(grid, row);
    if (columns && isListOfLots(columns)) return listOf(grid, row, columns);
  }
  return undefined;
}

/** The headings of a row; undefined where one of them is that of a measurement. */
function columnsOf(grid: ReadGrid, row: number): Column[] | undefined {
  const columns: Column[] = [];
  const taken = new Set<LotRole>();
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(row, col);
    if (typeof value !== "string" || value.trim() === "" || value.length > 60) continue;
    const { unit, rest } = takeUnit(value);
    const named = roleOf(uncounted(plain(rest) || plain(value)));
    // "Bathrooms" over numbers are counted, and are no list of rooms.
    const isNumber = numberOf(grid.value(row + 1, col)) !== undefined;
    const isCounted = named === undefined || (named === "rooms" && isNumber);
    const room = isCounted ? cellWord(singular(uncounted(value))).room : undefined;
    const role = room ? undefined : named;
    if (unit?.dimension === "pressure" || (!role && !room && isMeasured(value))) return undefined;
    if (role && taken.has(role)) continue;
    if (role) taken.add(role);
    columns.push({ col, heading: value.trim(), role, room, unit: unit?.name });
  }
  return columns.map((each) =>
    each.role === "count" && !isCount(grid, row, columns) ? { ...each, role: "name" } : each,
  );
}

/** Whether "Units" says how many there are of each plan, and does not name them. */
function isCount(grid: ReadGrid, head: number, columns: readonly Column[]): boolean {
  const plan = columns.find(({ role }) => role === "plan");
  if (columns.some(({ role }) => role === "name")) return true;
  if (!plan) return false;
  const rows = Array.from({ length: grid.rowCount - head - 1 }, (_, i) => head + 1 + i);
  const plans = rows.map((row) => textOf(grid.value(row, plan.col))).filter((text) => text !== "");
  return new Set(plans).size === plans.length;
}

/** "beds" of "# beds", "chambres" of "nombre de chambres", "half bath" of "1/2 bath". */
const uncounted = (heading: string): string =>
  heading
    .replace(
      /^\s*(#|n°|no|nr|nb|number|nombre|anzahl|numero|aantal)\.?\s+((of|de|der|van) )?(?=\S)/i,
      "",
    )
    .replace(/^\s*(1\/2|½)\s*(?=\p{L})/iu, "Half ");

function roleOf(name: string): LotRole | undefined {
  const words = name.split(" ");
  let best: LotRole | undefined;
  let score = enoughNamed;
  for (const { role, words: phrase } of phrases) {
    const found = bestRun(words, phrase, likeness) * (phrase.length / words.length);
    if (found > score) [best, score] = [role, found];
  }
  return best;
}

function isMeasured(heading: string): boolean {
  const { told } = readHeading(heading);
  return ["pressure", "flow", "verdict", "opening"].some(
    (role) => (told.get(role as "flow")?.weight ?? 0) >= 2.5,
  );
}

function isListOfLots(columns: readonly Column[]): boolean {
  const has = (role: LotRole) => columns.some((column) => column.role === role);
  const kinds = columns.filter(({ room }) => room !== undefined).length;
  const isNamed = has("name") || has("plan");
  const about = (["floor", "bedrooms", "plan", "phase"] as const).filter(has).length;
  const isRoomed = kinds >= 2 || has("room") || has("rooms") || has("fans");
  return (
    isNamed &&
    (has("floor") || has("bedrooms") || has("plan")) &&
    (isRoomed ? about > 0 : about > 1 || (has("name") && columns.every(({ role }) => role)))
  );
}

function listOf(grid: ReadGrid, head: number, columns: readonly Column[]): LotList {
  const at = new Map(columns.flatMap(({ role, col }) => (role ? [[role, col] as const] : [])));
  const key = at.has("name") ? "name" : "plan";
  const lots: (Lot & { readonly rooms: LotRoom[] })[] = [];
  for (let row = head + 1; row < grid.rowCount; row++) {
    const cell = (role: LotRole) => {
      const col = at.get(role);
      return col === undefined ? null : grid.value(row, col);
    };
    const named = textOf(cell(key));
    if (cellWord(named).total) continue;
    const last = lots.at(-1);
    const rooms = roomsOf(grid, row, columns, cell);
    const isSame =
      last && (named === "" || named === textOf(grid.value(last.row, at.get(key) ?? 0)));
    if (isSame && at.has("room")) last.rooms.push(...rooms);
    else if (named !== "") {
      const count = key === "plan" ? Math.min(mostOfPlan, numberOf(cell("count")) ?? 0) : 0;
      const names = Array.from({ length: count }, (_, i) => `${named}-${i + 1}`);
      const lot = {
        plan: textOf(cell("plan")),
        phase: textOf(cell("phase")),
        floor: numberOf(cell("floor")),
        bedrooms: numberOf(cell("bedrooms")),
        fans: numberOf(cell("fans")),
        rooms,
        row,
      };
      for (const name of count > 0 ? names : [key === "name" ? named : ""])
        lots.push({ ...lot, name });
    }
  }
  return {
    sheet: grid.name,
    lots,
    units: Object.fromEntries(columns.flatMap(({ role, unit }) => (role ? [[role, unit]] : []))),
    taken: columns.map(({ heading, role, room }) => ({
      heading,
      as: role ?? (room ? `how many: ${room}` : ""),
    })),
  };
}

/** The rooms that a row names: in a cell of its own, in a list, or as numbers under their names. */
function roomsOf(
  grid: ReadGrid,
  row: number,
  columns: readonly Column[],
  cell: (role: LotRole) => CellValue,
): LotRoom[] {
  const own = textOf(cell("room"));
  if (own !== "") {
    const cells: Partial<Record<LotRole, CellValue>> = {};
    for (const { role, col } of columns) if (role) cells[role] = grid.value(row, col);
    const whole = textOf(cell("whole")).toLowerCase();
    return [
      {
        word: own,
        kind: cellWord(textOf(cell("kind"))).room ?? cellWord(own).room,
        duty: cellWord(textOf(cell("duty"))).duty,
        whole: whole === "" ? undefined : /^(y|j|s|x|1|true|oui|✓)/.test(whole),
        cells,
      },
    ];
  }
  const listed = textOf(cell("rooms"))
    .split(/[,;+/&]| and /)
    .flatMap((part) => {
      const [, count = "1", word = ""] = /^\s*(?:(\d{1,2})\s*[x×]?\s+)?(.*?)\s*$/.exec(part) ?? [];
      return many(word, Number(count));
    });
  const counted = columns.flatMap(({ room, heading, col }) => {
    if (room === undefined) return [];
    const value = grid.value(row, col);
    const count = numberOf(value) ?? (/^(y|x|ja|si|oui|✓)/i.test(textOf(value)) ? 1 : 0);
    // "2.5 baths" are two with a bath or shower and one without.
    const half = room === "bathroom" && count % 1 === 0.5 ? many("Half bath", 1) : [];
    return [...many(singular(uncounted(heading)), Math.floor(count)), ...half];
  });
  return [...listed, ...counted];
}

function many(word: string, count: number): LotRoom[] {
  const { room: kind, ...said } = cellWord(word);
  // One word is a room alone: no duty is heard in "Badezimmer".
  const duty = word.includes(" ") ? said.duty : undefined;
  if (word === "" || !(count > 0 && count <= 20)) return [];
  return Array.from({ length: count }, (_, i) => ({
    word: count > 1 ? `${word} ${i + 1}` : word,
    ...{ kind, duty, whole: undefined, cells: {} },
  }));
}

/** "Laundry" of "Laundries", "Bathroom" of "Bathrooms". */
const singular = (heading: string): string =>
  heading.trim().replace(/ies$/i, "y").replace(/s$/i, "");

const textOf = (value: CellValue): string =>
  typeof value === "object" || value === undefined ? "" : String(value).trim();

/** A number, also one written "1,780", "1.780 m²" or "3 br". */
function numberOf(value: CellValue): number | undefined {
  if (typeof value === "number") return value;
  const text = textOf(value);
  if (/^\d{1,3}([,.' ]\d{3})+$/.test(text)) return Number(text.replace(/\D/g, ""));
  const [first = "", ...rest] = text.split(/\s+/);
  return (
    textNumber(text) ??
    (findUnit(rest.join(" ")) || /^[a-z]+$/i.test(rest.join("")) ? textNumber(first) : undefined)
  );
}
