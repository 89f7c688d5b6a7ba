import { units } from "../../units";

/**
 * Flow of one m² at one Pa through a sharp-edged opening, m³/s: discharge coefficient 0.607, air of
 * 1.2 kg/m³. Constants of field-made boxes stand within an eighth of it; common practice.
 */
const perSquareMetre = 0.607 * Math.sqrt(2 / 1.2);
const nearConstant = 0.125;

interface KnownConstant {
  readonly flow: string;
  readonly pressure: string;
  readonly area: string;
  readonly round: boolean;
  readonly constant: number;
}

const of = (dimension: string, names: readonly string[]) =>
  units.filter((unit) => unit.dimension === dimension && names.includes(unit.name));

/** The constant in every pair of units that a sheet may keep, the usual ones first. */
const knownConstants: readonly KnownConstant[] = of("pressure", [
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

/** Sets of units that sheets keep without naming them. */
const common = new Set([
  "cfm in² Pa",
  "L/s cm² Pa",
  "m³/h cm² Pa",
  "cfm in Pa",
  "L/s mm Pa",
  "m³/h mm Pa",
  "cfm cm² Pa",
  "L/s in² Pa",
  "L/s mm² Pa",
  "m³/h mm² Pa",
  "m³/h cm Pa",
  "cfm in² in w.c.",
]);

/** The units that make a constant a usual one; undefined where none do. */
export function unitsOfConstant(
  constant: number,
  stated: { flow?: string | undefined; pressure?: string | undefined; area?: string | undefined },
  round: boolean,
): KnownConstant | undefined {
  const named = Object.values(stated).filter((unit) => unit !== undefined).length;
  return knownConstants.find(
    (known) =>
      known.round === round &&
      Math.abs(constant / known.constant - 1) < nearConstant &&
      (named > 1 || common.has(`${known.flow} ${known.area} ${known.pressure}`)) &&
      (stated.flow ?? known.flow) === known.flow &&
      (stated.pressure ?? known.pressure) === known.pressure &&
      (stated.area ?? known.area) === known.area,
  );
}
