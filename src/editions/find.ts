import { InputError } from "../cells";
import { adf2010, adf2021 } from "./adf";
import { ashrae2010, ashrae2013, ashrae2016, ashrae2019, ashrae2022 } from "./ashrae-62-2";
import { type Code, codes } from "./codes";
import { type DuctKind, ductKinds } from "./ducts";
import { type Duty, duties, type Edition, type RoomKind, roomKinds } from "./edition";
import { type FanKind, fanKinds } from "./efficacy";
import { hud3280 } from "./hud-3280";
import { irc2021 } from "./irc-2021";

/** Every edition, in the order in which lists show them. */
export const editions: readonly Edition[] = [
  ashrae2010,
  ashrae2013,
  ashrae2016,
  ashrae2019,
  ashrae2022,
  irc2021,
  hud3280,
  adf2010,
  adf2021,
];

/** A name that is none of the known ones; the message lists those. */
export class UnknownNameError extends InputError {}

/** The edition of this id or alias, whatever the case and with or without its publisher's name. */
export const findEdition = finder<Edition>(
  "edition",
  editions.map((edition) => [edition, [edition.id, edition.title, ...edition.aliases]]),
  ({ id }) => id,
);

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

const findCode = finder<Code>(
  "edition",
  [...editions, ...codes].map((code) => [code, [code.id, code.title, ...code.aliases]]),
  ({ id }) => id,
);

/**
 * The rule that a code of this name sets, of a list of rules on one matter (`what`). `named` says
 * what the name is one of.
 *
 * Throws `UnknownNameError` with the codes that set such a rule, where this one is unknown or does
 * not.
 */
export function findRule<T extends { readonly code: string }>(
  what: string,
  rules: readonly T[],
  name: string,
  named = "edition",
): T {
  const known = rules.map(({ code }) => code).join(", ");
  let id: string;
  try {
    id = findCode(name).id;
  } catch {
    throw new UnknownNameError(`unknown ${named} "${name}": use one of ${known}`);
  }
  const rule = rules.find(({ code }) => code === id);
  if (!rule) throw new UnknownNameError(`${id} sets no ${what}: use one of ${known}`);
  return rule;
}

const fanWords: Record<FanKind, readonly string[]> = {
  "heat recovery": ["hrv", "erv", "heat recovery ventilator", "energy recovery"],
  "range hood": ["hood", "kitchen hood"],
  "in-line": ["in-line fan", "in-line exhaust", "in-line supply"],
  "bath or utility": ["bath", "bathroom", "bath fan", "utility", "other exhaust", "ceiling"],
  "air handler": ["air handler integrated", "integrated air handler"],
};

/** The fan kind of this name, or of a common other word for it. */
export const findFan = finder<FanKind>("fan kind", entriesOf(fanKinds, fanWords), (kind) => kind);

const ductWords: Record<DuctKind, readonly string[]> = {
  flex: ["flexible", "flex duct"],
  smooth: ["rigid", "smooth wall", "smooth duct", "metal"],
};

/** The duct kind of this name, or of a common other word for it. */
export const findDuct = finder<DuctKind>(
  "duct kind",
  entriesOf(ductKinds, ductWords),
  (kind) => kind,
);

/** The room kind of this name, or of a common other word for it. */
export const findRoom = finder<RoomKind>(
  "room kind",
  entriesOf(roomKinds, roomWords),
  (kind) => kind,
);

/** The duty of this name, or of a common other word for it. */
export const findDuty = finder<Duty>("duty", entriesOf(duties, dutyWords), (duty) => duty);

function entriesOf<T extends string>(kinds: readonly T[], words: Record<T, readonly string[]>) {
  return kinds.map((kind): Entry<T> => [kind, [kind, ...words[kind]]]);
}

type Entry<T> = readonly [found: T, names: readonly string[]];

/** Spellings kept at most: a sheet repeats the same few, but nobody knows what else it holds. */
const mostKept = 10_000;

/** A search by name that throws an UnknownNameError for a name that is none of the known ones. */
function finder<T>(what: string, entries: readonly Entry<T>[], label: (found: T) => string) {
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
    if (found === undefined) {
      const labels = entries.map(([each]) => label(each)).join(", ");
      throw new UnknownNameError(`unknown ${what} "${name}": use one of ${labels}`);
    }
    if (byName.size < mostKept) byName.set(name, found);
    return found;
  };
}

/** A name without case, spaces and publisher. */
function squeeze(name: string): string {
  return name
    .toLowerCase()
    .replace(/^\s*(ansi\/)?ashrae\s+(standard\s+)?/, "")
    .replace(/[\s\-_]+/g, "");
}
