import { adf2021 } from "./adf-2021";
import { ashrae2010, ashrae2016, ashrae2019 } from "./ashrae-62-2";
import { type Duty, duties, type Edition, type RoomKind, roomKinds } from "./edition";
import { irc2021 } from "./irc-2021";

/** Every edition, in the order in which lists show them. */
export const editions: readonly Edition[] = [ashrae2010, ashrae2016, ashrae2019, irc2021, adf2021];

/** A name that is none of the known ones; the message lists those. */
export class UnknownNameError extends Error {}

/** The edition of this id or alias, whatever the case and with or without its publisher's name. */
export function findEdition(name: string): Edition {
  const wanted = squeeze(name);
  const found = editions.find((edition) =>
    [edition.id, edition.title, ...edition.aliases].some((known) => squeeze(known) === wanted),
  );
  return (
    found ??
    unknown(
      "edition",
      name,
      editions.map((edition) => edition.id),
    )
  );
}

/** The room kind of this name, or of a common other word for it. */
export function findRoom(name: string): RoomKind {
  return lookUp(name, roomWords) ?? unknown("room kind", name, roomKinds);
}

/** The duty of this name, or of a common other word for it. */
export function findDuty(name: string): Duty {
  return lookUp(name, dutyWords) ?? unknown("duty", name, duties);
}

const roomWords: Record<RoomKind, readonly string[]> = {
  bathroom: ["bath", "full bath", "shower room", "wet room", "ensuite", "en suite"],
  toilet: ["toilet room", "half bath", "powder room", "wc", "sanitary"],
  "kitchen hood": ["hood", "range hood", "cooker hood", "vented hood"],
  kitchen: ["kitchen other", "kitchen no hood", "downdraft"],
  utility: ["utility room", "laundry", "laundry room"],
};

const dutyWords: Record<Duty, readonly string[]> = {
  "on demand": ["demand", "intermittent", "demand controlled"],
  continuous: ["cont", "always on"],
};

function lookUp<T extends string>(
  name: string,
  words: Record<T, readonly string[]>,
): T | undefined {
  const wanted = squeeze(name);
  return (Object.keys(words) as T[]).find((kind) =>
    [kind, ...words[kind]].some((word) => squeeze(word) === wanted),
  );
}

const squeezed = new Map<string, string>();

/** A name without case, spaces and publisher; kept, since a sheet repeats the same few names. */
function squeeze(name: string): string {
  let text = squeezed.get(name);
  if (text === undefined) {
    text = plain(name);
    if (squeezed.size < 10_000) squeezed.set(name, text);
  }
  return text;
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/^\s*(ansi\/)?ashrae\s+(standard\s+)?/, "")
    .replace(/[\s\-_]+/g, "");
}

function unknown(what: string, name: string, known: readonly string[]): never {
  throw new UnknownNameError(`unknown ${what} "${name}": use one of ${known.join(", ")}`);
}
