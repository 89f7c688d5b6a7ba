import type { Core } from "../evidence/laws";
import type { LineStats } from "../evidence/stats";
import type { Role } from "../types";
import { unitsOfConstant } from "./constants";
import { FirstLook, isRound, lawFit } from "./fit";

/** What else is known of the lines when their values are tried against the law. */
interface LineHints {
  readonly unit: (line: number) => string | undefined;
  /** Whether nothing speaks outright against the role. */
  readonly mayBe: (line: number, role: Role) => boolean;
  /** Whether its heading names the role. */
  readonly named: (line: number, role: Role) => boolean;
  /** Told of a line that only repeats the flows of others. */
  readonly repeats: (line: number) => void;
}

interface Tried {
  readonly core: Core;
  readonly worth: number;
}

/** A sheet with more lines of numbers is no table of fans. */
export const mostLines = 60;

/** An opening stands no farther from its flow. */
const farthest = 40;
/** So many laws are looked into, those between near lines first. */
const mostTries = 20_000;

/** The lines of a law that may hold. */
interface LawLines {
  readonly flow: LineStats;
  readonly pressure: LineStats;
  readonly hole: LineStats;
  /** 1 where the hole is an area, 2 where it is a diameter. */
  readonly power: 1 | 2;
}

const apart = ({ flow, pressure, hole }: LawLines) =>
  Math.abs(flow.line - pressure.line) + Math.abs(flow.line - hole.line);

type Lines = ReadonlyMap<number, LineStats>;

/** The laws that typed values follow; each flow once, and no line in two parts. */
export function coresByValues(stats: Lines, hints: LineHints): Core[] {
  const usable = [...stats.values()].filter(
    (s) =>
      s.numeric >= 3 &&
      s.numeric >= s.filled * 0.6 &&
      s.dates < s.filled * 0.5 &&
      s.negative < 1.01,
  );
  const lines = usable.slice(0, mostLines);
  const holes = lines.filter(
    (s) => s.negative < 0.1 && s.distinctNumbers <= Math.max(12, s.numeric * 0.5),
  );
  const flows = lines.filter(
    (s) =>
      s.distinctNumbers >= 3 && s.negative < 0.1 && s.median > 0.5 && hints.mayBe(s.line, "flow"),
  );
  const pressures = lines.filter(
    (s) => s.distinctNumbers >= 3 && s.median < 400 && s.low > 0 && hints.mayBe(s.line, "pressure"),
  );
  const sizes = holes.flatMap((hole) =>
    ([1, 2] as const)
      .filter((power) => hints.mayBe(hole.line, power === 1 ? "area" : "diameter"))
      .map((power) => ({ hole, power })),
  );
  const worthALook: LawLines[] = [];
  for (const flow of flows) {
    const look = new FirstLook(flow);
    const near = sizes.filter(
      ({ hole }) => hole !== flow && Math.abs(hole.line - flow.line) <= farthest,
    );
    for (const pressure of pressures) {
      if (pressure === flow) continue;
      for (const { hole, power } of near)
        if (hole !== pressure && look.mayFollow(pressure, hole, power))
          worthALook.push({ flow, pressure, hole, power });
    }
  }
  const tried = worthALook
    .sort((a, b) => apart(a) - apart(b))
    .slice(0, mostTries)
    .flatMap((lines) => tryLaw(lines, hints) ?? []);
  tried.sort((a, b) => b.worth - a.worth);
  const cores: Core[] = [];
  const parts = new Map<number, "flow" | "pressure" | "hole">();
  for (const { core } of tried) {
    const hole = (core.area ?? core.diameter)!;
    const wanted = [
      [core.flow, "flow"],
      [core.pressure, "pressure"],
      [hole, "hole"],
    ] as const;
    if (
      cores.some(({ flow }) => flow === core.flow) ||
      wanted.some(([line, part]) => (parts.get(line) ?? part) !== part)
    )
      continue;
    for (const [line, part] of wanted) parts.set(line, part);
    cores.push(withBothSizes(core, stats, holes));
  }
  const repeats = cores.filter((core) => repeatsOthers(core, cores, stats));
  for (const { flow } of repeats) hints.repeats(flow);
  return cores.filter((core) => !repeats.includes(core));
}

/** Rows in which a final result departs from the flows it repeats are slips where they are few. */
const mostRepeat = 0.95;

/** Whether a flow only repeats, row by row, one of several before it, as a final result does. */
function repeatsOthers({ flow }: Core, cores: readonly Core[], stats: Lines): boolean {
  const before = cores.filter((core) => core.flow < flow);
  const from = before.map((core) => stats.get(core.flow)!.numbers);
  const { numbers, numeric } = stats.get(flow)!;
  const repeated = numbers.filter((number, at) => from.some((line) => line[at] === number));
  return from.length > 1 && repeated.length >= mostRepeat * numeric;
}

function tryLaw(lines: LawLines, hints: LineHints): Tried | undefined {
  const { flow, pressure, hole, power } = lines;
  const fit = lawFit(flow, pressure, hole, power, 0.6);
  if (!fit || fit.covered < 0.5 || fit.different < 3) return undefined;
  const stated = {
    flow: hints.unit(flow.line),
    pressure: hints.unit(pressure.line),
    area: hints.unit(hole.line),
  };
  const known = unitsOfConstant(fit.constant, stated, power === 2) !== undefined;
  const named = [
    hints.named(flow.line, "flow"),
    hints.named(pressure.line, "pressure"),
    hints.named(hole.line, power === 1 ? "area" : "diameter"),
  ].filter(Boolean).length;
  // Lines without names must vary to tell a law from chance.
  const varied = fit.different >= 8 && fit.pressures >= 5;
  if (named < 2 && !(varied && fit.share >= 0.8)) return undefined;
  // A few rows may follow some law by chance.
  if (fit.different < (known ? (named > 1 ? 3 : 6) : 8) || (!known && fit.share < 0.8))
    return undefined;
  const core: Core = {
    flow: flow.line,
    pressure: pressure.line,
    area: power === 1 ? hole.line : undefined,
    diameter: power === 2 ? hole.line : undefined,
    opening: undefined,
    constant: undefined,
    repeats: [],
    by: "physics",
    share: fit.share,
  };
  // Of laws that hold about as well, the one whose lines stand nearest each other.
  return {
    core,
    worth:
      fit.share +
      (known ? 1 : 0) -
      apart(lines) * 0.015 -
      (hole.distinctNumbers === 1 ? 0.1 : 0) -
      (power === 2 ? 0.05 : 0),
  };
}

/** Where both area and diameter of the holes are kept, both are named. */
function withBothSizes(core: Core, stats: Lines, holes: readonly LineStats[]): Core {
  const own = stats.get((core.area ?? core.diameter)!)!;
  const others = holes.filter(
    ({ line }) => line !== own.line && line !== core.flow && line !== core.pressure,
  );
  if (core.area !== undefined)
    return { ...core, diameter: others.find((other) => isRound(own, other))?.line };
  return { ...core, area: others.find((other) => isRound(other, own))?.line };
}
