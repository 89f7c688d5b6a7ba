import {
  codes,
  cookings,
  ductKinds,
  duties,
  editions,
  fanKinds,
  findAnyEdition,
  findCooking,
  findDuct,
  findDuty,
  findFan,
  findRoom,
  roomKinds,
  UnknownNameError,
} from "../../editions";

/** What a name may name. Its number among the known ones stands for it in the tables. */
interface NameKind {
  readonly what: string;
  readonly known: readonly string[];
  /** The known name that another spelling means. Throws for one that is none. */
  readonly find: (text: string) => string;
  /** Whether `spellings` are all there are. */
  readonly isWhole: boolean;
  /** Spellings that are sure to be listed. */
  readonly spellings: readonly (readonly [written: string, means: string])[];
  /** Whether the publisher's name may stand before it. */
  readonly hasPublisher: boolean;
}

const everyCode = [...editions, ...codes];

function kind(what: string, known: readonly string[], find: (text: string) => string): NameKind {
  const spellings = known.map((name) => [name, name] as const);
  return { what, known, find, isWhole: false, spellings, hasPublisher: false };
}

export const nameKinds = {
  edition: {
    what: "edition",
    known: everyCode.map(({ id }) => id),
    find: (text) => findAnyEdition(text).id,
    isWhole: true,
    spellings: everyCode.flatMap(({ id, title, aliases }) =>
      [id, title, ...aliases].map((written) => [written, id] as const),
    ),
    hasPublisher: true,
  },
  room: kind("room kind", roomKinds, findRoom),
  duty: kind("duty", duties, findDuty),
  cooking: kind("cooking", cookings, findCooking),
  fan: kind("fan kind", fanKinds, findFan),
  duct: kind("duct kind", ductKinds, findDuct),
} satisfies Record<string, NameKind>;

export type NameKindId = keyof typeof nameKinds;

/** The number by which the tables know a name. */
export function numberOfName(kind: NameKindId, name: string): number {
  return nameKinds[kind].known.indexOf(name) + 1;
}

/** The number that a name as written has; 0 for one that names nothing. */
export function numberOfSpelling(kind: NameKindId, written: string): number {
  try {
    return numberOfName(kind, nameKinds[kind].find(written));
  } catch (error) {
    if (!(error instanceof UnknownNameError)) throw error;
    return 0;
  }
}

/** A name as it is compared: no case, no blanks, hyphens or underscores. */
export function compared(name: string, hasPublisher: boolean): string {
  const lower = name.trim().toLowerCase();
  const own = hasPublisher ? lower.replace(/^(ansi\/)?ashrae\s+(standard\s+)?/, "") : lower;
  return own.replace(/[\s\-_]+/g, "");
}

/** The native text that brings a name to the form in which it is compared, after a "|". */
export function comparedText(name: string, hasPublisher: boolean): string {
  const replaced = (text: string, ...pairs: readonly (readonly [string, string])[]) =>
    pairs.reduce((inner, [from, to]) => `SUBSTITUTE(${inner},"${from}","${to}")`, text);
  const start = `"|"&LOWER(TRIM(${name}))`;
  const bare = hasPublisher
    ? replaced(
        start,
        ["|ansi/ashrae ", "|ashrae "],
        ["|ashrae standard ", "|ashrae "],
        ["|ashrae ", "|"],
      )
    : start;
  return replaced(bare, [" ", ""], ["-", ""], ["_", ""]);
}
