import { units } from "../../units";
import type { Core } from "./laws";
import type { LineStats } from "./stats";

/**
 * Flow of one m² at one Pa through a sharp-edged opening, m³/s: discharge coefficient 0.607, air of
 * 1.2 kg/m³. Constants of field-made boxes stand within an eighth of it; common practice.
 */
const perSquareMetre = 0.607 * Math.sqrt(2 / 1.2);
const nearConstant = 0.125;

export interface KnownConstant {
  readonly flow: string;
  readonly pressure: string;
  readonly area: string;
  readonly round: boolean;
  readonly constant: number;
}

const of = (dimension: string, names: readonly string[]) =>
  units.filter((unit) => unit.dimension === dimension && names.includes(unit.name));

/** The constant in every pair of units that a sheet may keep, the usual ones first. */
export const knownConstants: readonly KnownConstant[] = of("pressure", [
  "Pa",
  "in w.c.",
  "mm w.c.",
]).flatMap((pressure) =>
  of("flow", ["cfm", "L/s", "m³/h", "m³/s", "L/min", "m³/min"]).flatMap((flow) => [
    ...of("area", ["in²", "cm²", "mm²", "m²", "ft²"]).map((area) => ({
      flow: flow.name,
      pressure: pressure.name,
      area: area.name,
      round: false,
      constant: (perSquareMetre * area.factor * Math.sqrt(pressure.factor)) / flow.factor,
    })),
    ...of("length", ["in", "mm", "cm"]).map((length) => ({
      flow: flow.name,
      pressure: pressure.name,
      area: length.name,
      round: true,
      constant:
        (perSquareMetre * (Math.PI / 4) * length.factor ** 2 * Math.sqrt(pressure.factor)) /
        flow.factor,
    })),
  ]),
);

/** The units that make a constant a usual one; undefined where none do. */
export function unitsOfConstant(
  constant: number,
  stated: { flow?: string | undefined; pressure?: string | undefined; area?: string | undefined },
  round: boolean,
): KnownConstant | undefined {
  const fits = knownConstants.filter(
    (known) =>
      known.round === round &&
      Math.abs(constant / known.constant - 1) < nearConstant &&
      (stated.flow === undefined || stated.flow === known.flow) &&
      (stated.pressure === undefined || stated.pressure === known.pressure) &&
      (stated.area === undefined || stated.area === known.area),
  );
  return fits[0];
}

/** How much a row may stray from the law: what rounding of the flow or the pressure makes of it. */
const strays = 0.025;

interface Fit {
  readonly share: number;
  readonly constant: number;
  readonly triples: number;
}

/** How well flow = constant × area^power × √|pressure| holds over the rows. */
export function lawFit(
  flow: LineStats,
  pressure: LineStats,
  area: LineStats | undefined,
  power: number,
): Fit | undefined {
  const ratios: number[] = [];
  const seen = new Set<string>();
  const roundings: number[] = [];
  for (let at = 0; at < flow.numbers.length; at++) {
    const [f, p, a] = [
      flow.numbers[at]!,
      Math.abs(pressure.numbers[at]!),
      area ? area.numbers[at]! : 1,
    ];
    if (!(f > 0 && p > 0 && a > 0)) continue;
    ratios.push(f / (a ** power * Math.sqrt(p)));
    roundings.push((Number.isInteger(f) ? 0.51 : 0.06) / f);
    seen.add(`${f} ${p} ${a}`);
  }
  if (ratios.length < 3) return undefined;
  const constant = [...ratios].sort((a, b) => a - b)[Math.floor(ratios.length / 2)]!;
  let fits = 0;
  ratios.forEach((ratio, at) => {
    if (Math.abs(ratio / constant - 1) <= Math.max(strays, roundings[at]!)) fits++;
  });
  return { share: fits / ratios.length, constant, triples: seen.size };
}

/** The laws that typed values follow, best first, each flow once. */
export function coresByValues(
  stats: ReadonlyMap<number, LineStats>,
  unitOfLine: (line: number) => string | undefined,
): Core[] {
  const usable = [...stats.values()].filter(
    (s) =>
      s.numeric >= 3 &&
      s.numeric >= s.filled * 0.6 &&
      s.dates < s.filled * 0.5 &&
      s.distinctNumbers > 1,
  );
  // A sheet with very many lines of numbers is no table of fans.
  const lines = usable.slice(0, 60);
  const flows = lines.filter((s) => s.distinctNumbers >= 3 && s.negative < 0.1 && s.median > 0.5);
  const pressures = lines.filter((s) => s.distinctNumbers >= 3 && s.median < 400 && s.low > 0);
  const found: (Core & { fit: Fit; near: boolean })[] = [];
  for (const flow of flows)
    for (const pressure of pressures) {
      if (pressure === flow) continue;
      for (const area of lines) {
        if (
          area === flow ||
          area === pressure ||
          area.negative > 0.1 ||
          Math.abs(area.line - flow.line) > 40
        )
          continue;
        for (const power of [1, 2]) {
          const fit = lawFit(flow, pressure, area, power);
          if (!fit || fit.share < 0.6 || fit.triples < 3) continue;
          const known =
            unitsOfConstant(
              fit.constant,
              {
                flow: unitOfLine(flow.line),
                pressure: unitOfLine(pressure.line),
                area: unitOfLine(area.line),
              },
              power === 2,
            ) ?? unitsOfConstant(fit.constant, {}, power === 2);
          if (!known && (fit.triples < 8 || fit.share < 0.8)) continue;
          found.push({
            flow: flow.line,
            pressure: pressure.line,
            area: power === 1 ? area.line : undefined,
            diameter: power === 2 ? area.line : undefined,
            opening: undefined,
            constant: undefined,
            repeats: [],
            by: "physics",
            share: fit.share,
            fit,
            near: known !== undefined,
          });
        }
      }
    }
  found.sort(
    (a, b) => Number(b.near) - Number(a.near) || b.share - a.share || closeness(a) - closeness(b),
  );
  const cores: Core[] = [];
  for (const { fit: _, near: __, ...core } of found) {
    const same = cores.find((other) => other.flow === core.flow);
    if (!same) cores.push(core);
    // Area and diameter of the same hole both fit.
    else if (
      same.pressure === core.pressure &&
      same.diameter === undefined &&
      core.diameter !== undefined
    )
      cores[cores.indexOf(same)] = { ...same, diameter: core.diameter };
    else if (same.pressure === core.pressure && same.area === undefined && core.area !== undefined)
      cores[cores.indexOf(same)] = { ...same, area: core.area };
  }
  return cores;
}

function closeness(core: Core): number {
  const hole = core.area ?? core.diameter ?? core.flow;
  return Math.abs(core.flow - core.pressure) + Math.abs(core.flow - hole);
}

/** Flow over √pressure is one number for each opening: what tells openings by name. */
export function coreByOpening(
  stats: ReadonlyMap<number, LineStats>,
  codes: readonly { line: number; keys: readonly string[] }[],
): Core | undefined {
  let best: Core | undefined;
  const numeric = [...stats.values()].filter(
    (s) => s.numeric >= 6 && s.dates < s.filled * 0.5 && s.distinctNumbers > 3,
  );
  for (const flow of numeric)
    for (const pressure of numeric) {
      if (flow === pressure || flow.median < pressure.median) continue;
      for (const { line, keys } of codes) {
        const groups = new Map<string, number[]>();
        for (let at = 0; at < keys.length; at++) {
          const ratio = flow.numbers[at]! / Math.sqrt(Math.abs(pressure.numbers[at]!));
          if (keys[at] === "" || !(ratio > 0) || !Number.isFinite(ratio)) continue;
          groups.set(keys[at]!, [...(groups.get(keys[at]!) ?? []), ratio]);
        }
        if (groups.size < 1 || groups.size > 12) continue;
        let [fits, all, levels] = [0, 0, new Set<number>()];
        for (const ratios of groups.values()) {
          if (ratios.length < 2) continue;
          const middle = [...ratios].sort((a, b) => a - b)[Math.floor(ratios.length / 2)]!;
          levels = levels.add(Math.round(Math.log(middle) * 20));
          all += ratios.length;
          fits += ratios.filter((ratio) => Math.abs(ratio / middle - 1) < 0.03).length;
        }
        const share = all ? fits / all : 0;
        if (
          all >= 6 &&
          share >= 0.75 &&
          levels.size >= Math.min(2, groups.size) &&
          share > (best?.share ?? 0)
        )
          best = {
            flow: flow.line,
            pressure: pressure.line,
            area: undefined,
            diameter: undefined,
            opening: line,
            constant: undefined,
            repeats: [],
            by: "physics",
            share,
          };
      }
    }
  return best;
}
