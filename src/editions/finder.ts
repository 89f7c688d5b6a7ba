import { InputError } from "../cells";

/** A name that is none of the known ones; the message says which are. */
export class UnknownNameError extends InputError {}

type Entry<T> = readonly [found: T, names: readonly string[]];

/** Spellings kept at most: a sheet repeats the same few, but nobody knows what else it holds. */
const mostKept = 10_000;
/** Known names that a message lists; of more it lists those alike. */
const mostListed = 12;

/** A search by name that throws an UnknownNameError for a name that is none of the known ones. */
export function finder<T>(what: string, entries: readonly Entry<T>[], label: (found: T) => string) {
  const bySqueezed = new Map<string, T>();
  for (const [found, names] of entries)
    for (const name of names)
      if (!bySqueezed.has(squeeze(name))) bySqueezed.set(squeeze(name), found);
  /** By the name as it was written. */
  const byName = new Map<string, T>();
  return (name: string): T => {
    const known = byName.get(name);
    if (known !== undefined) return known;
    const found = bySqueezed.get(squeeze(name));
    if (found === undefined)
      throw new UnknownNameError(
        `unknown ${what} "${name}": ${oneOf(
          name,
          entries.map(([each]) => label(each)),
        )}`,
      );
    if (byName.size < mostKept) byName.set(name, found);
    return found;
  };
}

/** "use one of …": all known names, or of many those most like the one given. */
export function oneOf(name: string, known: readonly string[]): string {
  if (known.length <= mostListed) return `use one of ${known.join(", ")}`;
  const words = name.toLowerCase().match(/[a-z]+|\d+(\.\d+)?/g) ?? [];
  const alike = known.filter((each) => words.some((word) => each.toLowerCase().includes(word)));
  const shown = (alike.length > 0 ? alike : known).slice(0, mostListed);
  return `use one of ${shown.join(", ")}; =FANROW.EDITIONS() lists all`;
}

/** A name without case, spaces and publisher. */
function squeeze(name: string): string {
  return name
    .toLowerCase()
    .replace(/^\s*(ansi\/)?ashrae\s+(standard\s+)?/, "")
    .replace(/[\s\-_]+/g, "");
}
