import { Budget, defaultLimits, megabytes } from "./limits";
import type { HostZip, Limits } from "./types";
import { fixedTime, type ZipEntry } from "./zip/entry";
import { unpackEntry } from "./zip/inflate";
import { readZip } from "./zip/read";
import { packEntry, writeZip } from "./zip/write";

interface Part {
  readonly name: string;
  /** Undefined while only its stored form is kept. */
  readonly bytes: Uint8Array | undefined;
  /** How it is stored; null once it was changed. */
  readonly stored: ZipEntry | null;
  readonly time: number;
}

/** Part names compare without case and leading slash (ECMA-376 part 2, 6.2.2); some writers use backslashes. */
function keyOf(name: string): string {
  return name.replaceAll("\\", "/").replace(/^\//, "").toLowerCase();
}

function roomFor({ expandedBytes }: Limits): Budget {
  const most = megabytes(expandedBytes);
  return new Budget(expandedBytes, `The file unpacks to more than ${most}, the most that is read.`);
}

/** The parts of a package in their order. Untouched parts are written back as they were stored. */
export class Package {
  readonly #parts = new Map<string, Part>();
  /** What is left for parts that the general XML parser reads. */
  readonly markup: Budget;
  readonly #weighed = new Set<string>();
  #changed = true;

  private constructor(
    private readonly original: Uint8Array | null,
    private readonly limits: Limits,
    private readonly host?: HostZip,
  ) {
    const most = megabytes(limits.markup);
    this.markup = new Budget(
      limits.markup,
      `The workbook holds more than ${most} of formats, names, links and other things beside plain cells, the most that is read: remove those that it does not need.`,
    );
  }

  static empty(): Package {
    return new Package(null, defaultLimits);
  }

  /** Deepest nesting of elements allowed in its parts. */
  get depth(): number {
    return this.limits.depth;
  }

  static read(bytes: Uint8Array, limits: Limits, host?: HostZip): Package {
    const opened = new Package(bytes, limits, host);
    const budget = roomFor(limits);
    for (const entry of readZip(bytes, limits)) {
      const part = {
        name: entry.name,
        bytes: unpackEntry(entry, budget, host),
        stored: entry,
        time: entry.time,
      };
      opened.#parts.set(keyOf(entry.name), part);
    }
    opened.#changed = false;
    return opened;
  }

  /** Names as stored, in order, without folder entries. */
  names(): string[] {
    return [...this.#parts.values()]
      .map((part) => part.name)
      .filter((name) => !/[\\/]$/.test(name));
  }

  has(name: string): boolean {
    return this.#parts.has(keyOf(name));
  }

  get(name: string): Uint8Array | undefined {
    const part = this.#parts.get(keyOf(name));
    if (part?.bytes || !part?.stored) return part?.bytes;
    return unpackEntry(part.stored, roomFor(this.limits), this.host);
  }

  /** The bytes of a part for the general XML parser, which are counted when they are asked for first. */
  markupOf(name: string): Uint8Array | undefined {
    const bytes = this.get(name);
    const key = keyOf(name);
    if (bytes !== undefined && !this.#weighed.has(key)) this.markup.take(bytes.length);
    this.#weighed.add(key);
    return bytes;
  }

  /** Keeps a part only as it is stored: a large sheet that was read is rarely asked for again. */
  release(name: string): void {
    const part = this.#parts.get(keyOf(name));
    if (part?.stored) this.#parts.set(keyOf(name), { ...part, bytes: undefined });
  }

  /** Replaces a part in its place, or adds it at the end. */
  set(name: string, bytes: Uint8Array): void {
    const old = this.#parts.get(keyOf(name));
    const part = { name: old?.name ?? name, bytes, stored: null, time: old?.time ?? fixedTime };
    this.#parts.set(keyOf(name), part);
    this.#changed = true;
  }

  delete(name: string): void {
    if (this.#parts.delete(keyOf(name))) this.#changed = true;
  }

  /** The very bytes it was read from when nothing was changed. */
  save(): Uint8Array {
    if (this.original !== null && !this.#changed) return this.original;
    const entries: ZipEntry[] = [];
    for (const [key, part] of this.#parts) {
      const stored = part.stored ?? packEntry(part.name, part.bytes as Uint8Array, part.time);
      if (part.stored === null) this.#parts.set(key, { ...part, stored });
      entries.push(stored);
    }
    return writeZip(entries);
  }
}
