import type { Cells } from "../cells/cells";

/** The headings over one line, from its own upwards. */
export interface LineHeading {
  readonly text: string;
  /** Headings above that cover this line and its neighbours. */
  readonly parents: readonly string[];
  /** What a row of units below says. */
  readonly unit: string;
}

/** Headings and the rows under them, up to the next headings. */
export interface Section {
  readonly cells: Cells;
  /** Added to a line to have its column: cards side by side or stacked share their lines. */
  readonly shift: number;
  readonly band: readonly number[];
  readonly headings: ReadonlyMap<number, LineHeading>;
  /** Rows with a typed number, without totals. */
  readonly records: readonly number[];
  /** Rows with typed text alone: fans without a reading, or lines above a group. */
  readonly texts: readonly number[];
  readonly totals: readonly number[];
  /** First row of the section, headings included, and the row after its last. */
  readonly from: number;
  readonly to: number;
}

/** Sections under the same headings, on one sheet or many, judged together. */
export interface Pool {
  readonly sections: readonly Section[];
  readonly lines: readonly number[];
  readonly headings: ReadonlyMap<number, LineHeading>;
  readonly records: number;
}

/** A row of a section, for looking at a part of a pool. */
export interface Sample {
  readonly section: Section;
  readonly row: number;
}

/** At most so many rows, evenly spread over the pool. */
export function sampleOf(pool: Pool, most: number): Sample[] {
  const step = Math.max(1, pool.records / most);
  const sample: Sample[] = [];
  let next = 0;
  let seen = 0;
  for (const section of pool.sections)
    for (const row of section.records) {
      if (seen >= next) {
        sample.push({ section, row });
        next += step;
      }
      seen++;
    }
  return sample;
}

const alike = 0.8;

/** Puts sections under the same or nearly the same headings together. */
export function poolSections(sections: readonly Section[]): Pool[] {
  const pools: { sections: Section[]; names: Map<number, string> }[] = [];
  const bySignature = new Map<string, (typeof pools)[number]>();
  for (const section of sections) {
    const names = new Map(
      [...section.headings].map(([line, { text }]) => [line, text.trim().toLowerCase()]),
    );
    const signature = [...names].map(([line, name]) => `${line}:${name}`).join("|");
    let pool = bySignature.get(signature);
    pool ??= pools.find((other) => names.size >= 3 && likeness(other.names, names) >= alike);
    if (pool) pool.sections.push(section);
    else {
      pool = { sections: [section], names };
      pools.push(pool);
    }
    bySignature.set(signature, pool);
  }
  return pools.map(({ sections: own }) => toPool(own));
}

function likeness(a: ReadonlyMap<number, string>, b: ReadonlyMap<number, string>): number {
  let same = 0;
  for (const [line, name] of a) if (name !== "" && b.get(line) === name) same++;
  return same / Math.max(a.size, b.size, 1);
}

function toPool(sections: readonly Section[]): Pool {
  const headings = new Map<number, LineHeading>();
  const lines = new Set<number>();
  const isCut = sections.some(({ shift }) => shift !== 0);
  for (const section of sections) {
    for (const [line, heading] of section.headings) {
      lines.add(line);
      if (!headings.has(line)) headings.set(line, heading);
    }
    // Cards share their rows with other cards: only lines under their own headings are theirs.
    if (isCut && section.headings.size > 0) continue;
    for (const row of section.records.slice(0, 200))
      for (let col = 0; col < section.cells.cols; col++)
        if (!section.cells.isBlank(row, col)) lines.add(col - section.shift);
  }
  return {
    sections,
    headings,
    lines: [...lines].sort((a, b) => a - b),
    records: sections.reduce((sum, { records }) => sum + records.length, 0),
  };
}
