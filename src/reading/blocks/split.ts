import { counted, kept } from "../../cells";
import type { Core } from "../evidence/laws";
import type { Ledger } from "../evidence/ledger";
import type { LineStats } from "../evidence/stats";
import type { Pool } from "../tables/section";
import { readHeading } from "../text/heading";
import { plain } from "../text/plain";
import { cellWord, ofRetest } from "../text/vocabulary";

/** The lines that one block may take its roles from. */
export interface Part {
  readonly core: Core | undefined;
  /** Lines of its own, and those that it shares with the other blocks. */
  readonly own: readonly number[];
  readonly shared: readonly number[];
  /** The room that its headings name. */
  readonly room: { readonly text: string; readonly line: number } | undefined;
  readonly retest: boolean;
}

/** Cuts the lines of a pool into blocks: as many as there are laws, or flows under names of rooms. */
export function splitLines(
  pool: Pool,
  cores: readonly Core[],
  ledger: Ledger,
  stats: ReadonlyMap<number, LineStats>,
): Part[] {
  const lines = pool.lines;
  const leading = withRepeats(pool, leadingCores(cores, ledger));
  let starts: { start: number; core: Core | undefined; ends: number }[] = [];
  if (leading.length > 1) {
    const times = counted(leading.flatMap(coreLines));
    starts = leading.map((core) => {
      const own = coreLines(core).filter((line) => times.get(line) === 1);
      return { core, start: Math.min(...own), ends: Math.max(...own) };
    });
  } else if (leading.length === 0)
    starts = flowsByRoom(pool, ledger, stats).map((line) => ({
      core: undefined,
      start: line,
      ends: line,
    }));
  if (starts.length < 2)
    return [{ core: leading[0], own: lines, shared: [], room: undefined, retest: false }];
  starts.sort((a, b) => a.start - b.start);
  const back = commonLead(
    pool,
    starts.map(({ start }) => start),
  );
  const gaps = starts.slice(1).map(({ start }, at) => start - starts[at]!.start);
  const regular = gaps.every((gap) => gap === gaps[0]);
  const first = starts[0]!.start - back;
  const lastStart = starts.at(-1)!.start - back;
  const end =
    regular && gaps[0]! > 1
      ? Math.max(lastStart + gaps[0]!, starts.at(-1)!.ends + 1)
      : starts.at(-1)!.core
        ? Number.POSITIVE_INFINITY
        : starts.at(-1)!.ends + 1;
  const shared = lines.filter((line) => line < first || line >= end);
  return starts.map(({ core, start }, at) => {
    const to = at + 1 < starts.length ? starts[at + 1]!.start - back : end;
    const own = lines.filter((line) => line >= start - back && line < to);
    return { core, own, shared, room: roomOf(pool, own), retest: at > 0 && isRetest(pool, own) };
  });
}

/** Blocks under the same headings as one with a law are blocks too, though they hold few readings. */
function withRepeats(pool: Pool, cores: Core[]): Core[] {
  const model = [...cores].sort((a, b) => b.share - a.share)[0];
  const lines = model ? coreLines(model) : [];
  if (!model || lines.length < 3 || lines.some((line) => roomIn(pool, line) === undefined))
    return cores;
  const known = new Set(cores.flatMap(coreLines));
  const all = [...cores];
  for (const start of pool.lines) {
    const away = start - model.pressure;
    if (
      away === 0 ||
      lines.some(
        (line) =>
          known.has(line + away) ||
          !pool.headings.has(line + away) ||
          baseOf(pool, line + away) !== baseOf(pool, line),
      )
    )
      continue;
    const moved = (line: number | undefined) => (line === undefined ? undefined : line + away);
    const core = {
      ...model,
      flow: model.flow + away,
      pressure: start,
      area: moved(model.area),
      diameter: moved(model.diameter),
      opening: moved(model.opening),
      repeats: model.repeats.map((line) => line + away),
      share: 0,
    };
    for (const line of coreLines(core)) known.add(line);
    all.push(core);
  }
  return all;
}

function coreLines(core: Core): number[] {
  return [core.pressure, core.flow, core.area, core.diameter, core.opening].filter(
    (line) => line !== undefined,
  );
}

/** One core a pressure: the flow best told of those that a pressure gives. */
function leadingCores(cores: readonly Core[], ledger: Ledger): Core[] {
  const byPressure = new Map<number, Core>();
  for (const core of cores) {
    const known = byPressure.get(core.pressure);
    if (!known || strength(core, ledger) > strength(known, ledger))
      byPressure.set(core.pressure, core);
  }
  const flows = new Map<number, Core>();
  for (const core of byPressure.values()) {
    const known = flows.get(core.flow);
    if (
      !known ||
      ledger.weight(core.pressure, "pressure") > ledger.weight(known.pressure, "pressure")
    )
      flows.set(core.flow, core);
  }
  return [...flows.values()];
}

function strength(core: Core, ledger: Ledger): number {
  return ledger.weight(core.flow, "flow") - ledger.weight(core.flow, "other") + 3 * core.share;
}

/** Lines of flows alone, each under the name of a room: "Bath cfm", "Kitchen cfm". */
function flowsByRoom(pool: Pool, ledger: Ledger, stats: ReadonlyMap<number, LineStats>): number[] {
  const byBase = new Map<string, number[]>();
  for (const line of pool.lines) {
    const s = stats.get(line)!;
    if (!(s.numeric >= s.filled * 0.6 && s.filled > 0 && s.typedNumeric > 0)) continue;
    if (!roomIn(pool, line)) continue;
    const flow = ledger.weight(line, "flow");
    if (flow < 0.8 && !(s.median >= 4 && s.median <= 900)) continue;
    if (ledger.weight(line, "pressure") > flow) continue;
    kept(byBase, baseOf(pool, line), () => []).push(line);
  }
  const best = [...byBase.values()].sort((a, b) => b.length - a.length)[0] ?? [];
  if (best.length < 2) return [];
  for (const line of best)
    ledger.add(line, "flow", "words", 3, "its amounts stand under the name of a room");
  return best;
}

function headingText(pool: Pool, line: number): string {
  const heading = pool.headings.get(line);
  return heading ? [...heading.parents, heading.text].join(" ") : "";
}

/** The heading without the words of a room and without numbers. */
function baseOf(pool: Pool, line: number): string {
  const { unit, rest } = {
    unit: readHeading(pool.headings.get(line)?.text ?? "").unit,
    rest: readHeading(pool.headings.get(line)?.text ?? "").name,
  };
  const words = rest
    .split(" ")
    .filter((word) => word !== "" && !/\d/.test(word) && !cellWord(word).room);
  return `${words.join(" ")}|${unit?.name ?? ""}`;
}

function roomIn(pool: Pool, line: number): string | undefined {
  const heading = pool.headings.get(line);
  for (const text of heading ? [heading.text, ...heading.parents] : []) {
    const name = readHeading(text).name;
    if (name !== "" && cellWord(name).room) return text;
  }
  return undefined;
}

/** How many lines before each start say the same, so that they belong to the blocks too. */
function commonLead(pool: Pool, starts: readonly number[]): number {
  let back = 0;
  const gap = Math.min(...starts.slice(1).map((start, at) => start - starts[at]!));
  for (let step = 1; step < gap; step++) {
    const bases = new Set(
      starts.map((start) => (pool.headings.has(start - step) ? baseOf(pool, start - step) : " ")),
    );
    if (bases.size > 1 || bases.has(" ")) break;
    back = step;
  }
  return back;
}

function roomOf(pool: Pool, own: readonly number[]): Part["room"] {
  const counts = new Map<string, { line: number; count: number; text: string }>();
  for (const line of own) {
    const found = roomIn(pool, line);
    if (!found) continue;
    const text = readHeading(found).unit ? found.split(/[\s,]+/)[0]! : found;
    const known = counts.get(text);
    if (known) known.count++;
    else counts.set(text, { line, count: 1, text });
  }
  return [...counts.values()].sort((a, b) => b.count - a.count)[0];
}

function isRetest(pool: Pool, own: readonly number[]): boolean {
  return own.some((line) => ofRetest(plain(headingText(pool, line))));
}
