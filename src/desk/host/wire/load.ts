import { HostError } from "./errors";
import type { QueryInfo } from "./messages";
import { memberNamed, type Served, wireName } from "./served";

/** The names to load, as a tree along the slashes; an empty tree loads every plain property. */
interface Wanted {
  readonly [name: string]: Wanted;
}

/** What a load asks for: `{ Values: …, Format: { Fill: { Color: … } } }`, items for a collection. */
export function load(served: Served | null, query: QueryInfo): unknown {
  const wanted = treeOf([...(query.Select ?? []), ...(query.Expand ?? [])]);
  return read(served, wanted, query);
}

function treeOf(names: readonly string[]): Wanted {
  const root: Record<string, Wanted> = {};
  for (const name of names) {
    let at: Record<string, Wanted> = root;
    for (const step of name.split(/[/.]/)) {
      if (step === "") continue;
      at[step] ??= {};
      at = at[step] as Record<string, Wanted>;
    }
  }
  return root;
}

function read(served: Served | null, wanted: Wanted, page: QueryInfo = {}): unknown {
  if (served === null) return null;
  const { members, self } = served;
  if (members.items !== undefined) return readItems(served, members.items(self), wanted, page);
  const out = served.identity();
  const names = Object.keys(wanted);
  if (names.length === 0) readAll(served, out);
  for (const name of names) {
    const below = wanted[name] as Wanted;
    if (name === "*") readAll(served, out);
    else if (!readValue(served, name, out)) readLink(served, name, below, out);
  }
  return out;
}

function readItems(
  served: Served,
  items: readonly Served[],
  wanted: Wanted,
  { Skip = 0, Top }: QueryInfo,
): unknown {
  const out: Record<string, unknown> = {};
  const ofItems: Record<string, Wanted> = {};
  for (const [name, below] of Object.entries(wanted)) {
    if (name.toLowerCase() === "items") Object.assign(ofItems, below);
    else if (!readValue(served, name, out)) ofItems[name] = below;
  }
  const end = Top === undefined ? items.length : Skip + Top;
  out._Items = items.slice(Skip, end).map((item) => read(item, ofItems));
  return out;
}

function readAll(served: Served, out: Record<string, unknown>): void {
  for (const [name, property] of Object.entries(served.members.values ?? {}))
    out[wireName(name)] = property.get(served.self);
}

function readValue(served: Served, name: string, out: Record<string, unknown>): boolean {
  const found = memberNamed(served.members.values, name);
  if (found === undefined) return false;
  out[found.name] = found.member.get(served.self);
  return true;
}

function readLink(served: Served, name: string, below: Wanted, out: Record<string, unknown>): void {
  const found = memberNamed(served.members.links, name);
  if (found === undefined) throw unknownMember(served, name);
  out[found.name] = read(found.member(served.self), below);
}

/** The refusal of a member that is not served. */
export function unknownMember(served: Served, name: string): HostError {
  return new HostError(
    "ApiNotFound",
    `${served.members.className}.${name} is not available in this host.`,
  );
}
