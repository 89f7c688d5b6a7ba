import type { System } from "../../editions";
import type { Source } from "../../formulas";

/** One number found in data, with what stands around it. */
interface NumberLeaf {
  /** The keys and names on the way to it: "rooms", "bathroom", "on demand", "rate". */
  readonly parts: readonly string[];
  /** The last key on the way that is neither a place in a list nor a system. */
  readonly key: string;
  readonly value: number;
  readonly system: System | undefined;
  /** A unit that the data state beside it. */
  readonly unit: string | undefined;
  /** The nearest source around it. */
  readonly source: Source | undefined;
}

type Data = Readonly<Record<string, unknown>>;

interface Around {
  readonly parts: readonly string[];
  readonly key: string;
  readonly system?: System | undefined;
  readonly unit?: unknown;
  readonly source?: Source | undefined;
  /** Lists of numbers further out, by key: the edges of what stands in lists as long. */
  readonly edges: readonly Edges[];
}

type Edges = readonly [key: string, edges: readonly number[]];

/** Texts that tell one thing from its neighbours stand under other keys than these. */
const notNames = new Set([
  "id",
  "title",
  "note",
  "unit",
  "system",
  "reads",
  "edge",
  "is",
  "together",
  "of",
]);

/**
 * Every number in data of any shape, in its order. Sources are not walked. A number of a list or
 * table is named by its edges where a list of that length stands beside or around it.
 */
export function numberLeaves(data: unknown, system?: System): NumberLeaf[] {
  const found: NumberLeaf[] = [];
  walk(data, { parts: [], key: "", system, edges: [] }, found);
  return found;
}

function walk(data: unknown, around: Around, found: NumberLeaf[]): void {
  if (typeof data === "number") found.push(leaf(data, around));
  else if (Array.isArray(data)) walkList(data, around, found);
  else if (isData(data)) walkObject(data, around, found);
}

function leaf(value: number, { parts, key, system, unit, source }: Around): NumberLeaf {
  const stated = isData(unit) && system ? unit[system] : unit;
  return {
    parts,
    key,
    value,
    system,
    unit: typeof stated === "string" ? stated : undefined,
    source,
  };
}

function walkObject(data: Data, around: Around, found: NumberLeaf[]): void {
  const here: Around = {
    ...around,
    parts: [...around.parts, ...namesOf(data)],
    system: isSystem(data.system) ? data.system : around.system,
    unit: data.unit ?? around.unit,
    source: (data.source as Source | undefined) ?? around.source,
  };
  const lists = Object.entries(data).filter((entry): entry is [string, number[]] =>
    isNumbers(entry[1]),
  );
  for (const [key, value] of Object.entries(data)) {
    if (isSource(key, value)) continue;
    if (isSystem(key)) walk(value, { ...here, system: key }, found);
    else if (isTable(value)) walkTable(value, lists, inside(here, key, data), found);
    else {
      const edges = isNumbers(value)
        ? [...countedFrom(key, value, data), ...around.edges]
        : [...lists, ...around.edges];
      walk(value, { ...inside(here, key, data), edges }, found);
    }
  }
}

/** `byBedrooms` beside `leastBedrooms` counts the bedrooms from there. */
function countedFrom(key: string, list: readonly number[], data: Data): Edges[] {
  const what = key.slice("by".length);
  const first = data[`least${what}`];
  if (!key.startsWith("by") || typeof first !== "number") return [];
  return [[what, list.map((_, i) => first + i)]];
}

/** The texts that name a thing, such as its room and duty. */
function namesOf(data: Data): string[] {
  return Object.entries(data).flatMap(([key, value]) =>
    typeof value === "string" && !notNames.has(key) ? [value] : [],
  );
}

/** Around what stands under a key; `areaSource` is the source of `areaRate`. */
function inside(here: Around, key: string, data: Data): Around {
  const own = Object.keys(data).find(
    (other) => other.endsWith("Source") && key.startsWith(other.slice(0, -"Source".length)),
  );
  return {
    ...here,
    // "value" says nothing beside the name that stands with it.
    parts: key === "value" ? here.parts : [...here.parts, inWords(key)],
    key,
    source: own ? (data[own] as Source) : here.source,
  };
}

function walkList(list: readonly unknown[], around: Around, found: NumberLeaf[]): void {
  const labels = isNumbers(list) ? list.map((_, i) => edge(around.edges, list, i)) : apart(list);
  list.forEach((value, i) => {
    const label = labels[i];
    walk(value, { ...around, parts: label ? [...around.parts, label] : around.parts }, found);
  });
}

/** What tells the things of a list apart where their names do not: system, a number, a place. */
function apart(list: readonly unknown[]): string[] {
  const names = list.map((item) => (isData(item) ? namesOf(item).join() : ""));
  const choices = [() => "", systemOf, firstNumber, (_: unknown, i: number) => String(i + 1)];
  const labels = choices.map((choice) => list.map(choice));
  const best = labels.find((each) => {
    return new Set(each.map((label, i) => `${names[i]}|${label}`)).size === list.length;
  });
  return best ?? (labels.at(-1) as string[]);
}

function systemOf(item: unknown): string {
  return isData(item) && isSystem(item.system) ? item.system : "";
}

function firstNumber(item: unknown): string {
  const entry = isData(item) && Object.entries(item).find(([, value]) => typeof value === "number");
  return entry ? edgeText(entry[0], entry[1] as number) : "";
}

/** A table's numbers, each by the edges that its row and column have among the lists beside it. */
function walkTable(
  table: readonly (readonly unknown[])[],
  lists: readonly Edges[],
  around: Around,
  found: NumberLeaf[],
): void {
  const rows = lists.find(([, list]) => list.length === table.length);
  const others = lists.filter((entry) => entry !== rows);
  table.forEach((row, r) => {
    row.forEach((value, c) => {
      const place = [
        rows ? edge([rows], table, r) : `row ${r + 1}`,
        others.some(([, list]) => list.length === row.length)
          ? edge(others, row, c)
          : `column ${c + 1}`,
      ];
      walk(value, { ...around, parts: [...around.parts, ...place] }, found);
    });
  });
}

/** The edge of place `i` of a list, or its number. */
function edge(lists: readonly Edges[], of: readonly unknown[], i: number): string {
  const list = lists.find(([, edges]) => edges.length === of.length);
  const value = list?.[1][i];
  return list && value !== undefined ? edgeText(list[0], value) : String(i + 1);
}

function edgeText(key: string, value: number): string {
  return `${inWords(key)} ${Number.isFinite(value) ? value : "without end"}`;
}

function isData(value: unknown): value is Data {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isSystem(key: unknown): key is System {
  return key === "ip" || key === "si";
}

function isSource(key: string, value: unknown): boolean {
  return (key === "source" || key.endsWith("Source")) && typeof value === "object";
}

function isTable(value: unknown): value is readonly (readonly unknown[])[] {
  return Array.isArray(value) && value.length > 0 && value.every(Array.isArray);
}

function isNumbers(value: unknown): value is number[] {
  return (
    Array.isArray(value) && value.length > 0 && value.every((each) => typeof each === "number")
  );
}

/** areaRate: "area rate". */
function inWords(key: string): string {
  return key.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`).trim();
}
