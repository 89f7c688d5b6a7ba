import type { Arguments } from "./arguments";
import { notFound } from "./errors";

/** A plain property as the client loads and sets it. */
export interface Property<T> {
  get(self: T): unknown;
  set?(self: T, value: unknown): void;
}

/**
 * What a class of the object model offers, by the names of the client's API. Whatever is not in the
 * table is answered with ApiNotFound.
 */
export interface Members<T> {
  readonly className: string;
  readonly values?: Readonly<Record<string, Property<T>>>;
  /** Properties that are objects; null is an object that is not there. */
  readonly links?: Readonly<Record<string, (self: T) => Served | null>>;
  /** A Served result becomes the object of a path, anything else a plain result. */
  readonly methods?: Readonly<Record<string, (self: T, args: Arguments) => unknown>>;
  /** What the client needs to find the object again in a later request. */
  readonly identify?: (self: T) => Readonly<Record<string, unknown>>;
  /** Given for collections. */
  readonly items?: (self: T) => readonly Served[];
  readonly item?: (self: T, args: Arguments) => Served;
  /** The object can be kept from one request to the next by a reference. */
  readonly isTracked?: boolean;
}

/** An object as the client sees it: what stands behind it, and its table of members. */
export class Served {
  /** Set once the client asked to keep the object. */
  reference: string | undefined;

  constructor(
    readonly members: Members<unknown>,
    readonly self: unknown,
  ) {}

  /** The identity sent whenever the client meets the object. */
  identity(): Record<string, unknown> {
    const known = this.members.identify?.(this.self) ?? {};
    return this.reference === undefined ? { ...known } : { ...known, _ReferenceId: this.reference };
  }
}

/** Makes a class servable: the result wraps what stands behind an object. */
export function serve<T>(members: Members<T>): (self: T) => Served {
  const table = members as unknown as Members<unknown>;
  return (self) => new Served(table, self);
}

interface Collection<T> extends Members<T> {
  readonly items: NonNullable<Members<T>["items"]>;
  /** One of them by its name or id; null where there is none. */
  readonly find: (self: T, key: string) => Served | null;
  /** What to say of one that is not there. */
  readonly missing: (key: string) => string;
}

/** What every collection offers whose members are found by a name. */
export function collection<T>({ find, missing, ...own }: Collection<T>): Members<T> {
  const key = (args: Arguments) => args.text(0, "The name");
  const item = (self: T, args: Arguments) => {
    const found = find(self, key(args));
    if (found === null) throw notFound(missing(key(args)));
    return found;
  };
  return {
    ...own,
    item,
    methods: {
      getItem: item,
      getItemOrNullObject: (self, args) => find(self, key(args)),
      ...own.methods,
    },
  };
}

/**
 * Makes properties of what stands under a key: how it is told to the client, and how what the client
 * sets is read. `changed` hears of each that is set.
 */
export function keeping<T extends S, O, S = T>(changed: (self: S) => void, of: (self: T) => O) {
  return <K extends keyof O>(
    key: K,
    tell: (value: O[K]) => unknown,
    read: (value: unknown) => O[K],
  ): Property<T> => ({
    get: (self) => tell(of(self)[key]),
    set(self, value) {
      of(self)[key] = read(value);
      changed(self);
    },
  });
}

const lowerCased = new WeakMap<object, ReadonlyMap<string, string>>();

function namesOf(table: object): ReadonlyMap<string, string> {
  let names = lowerCased.get(table);
  if (names === undefined) {
    names = new Map(Object.keys(table).map((name) => [name.toLowerCase(), name]));
    lowerCased.set(table, names);
  }
  return names;
}

/** "values" as it goes over the wire: "Values". */
export function wireName(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** The member of a table that a client names, whatever the case; with its name on the wire. */
export function memberNamed<V>(
  table: Readonly<Record<string, V>> | undefined,
  name: string,
): { readonly name: string; readonly member: V } | undefined {
  const found = table && namesOf(table).get(name.toLowerCase());
  if (table === undefined || found === undefined) return undefined;
  return { name: wireName(found), member: table[found] as V };
}
