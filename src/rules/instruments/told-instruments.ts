import type { Instrument } from "../instrument";
import { instruments } from "../instruments";

/** What is known of one kind of instrument, each number with its mark. */
function told({ name, limits, procedure, cautions }: Instrument): string {
  const errors = limits.map(({ what, percent, upToPercent, floorPressure, floorFlow, source }) => {
    const share = upToPercent === undefined ? `±${percent} %` : `${percent} to ${upToPercent} %`;
    const floor =
      floorPressure === undefined
        ? floorFlow?.ip === undefined
          ? ""
          : ` or ${floorFlow.ip} cfm`
        : ` or ${floorPressure} Pa`;
    return `${what} ${share}${floor} (${source.work}, ${source.mark})`;
  });
  const steps = procedure.map(
    ({ what, value, unit, source }) => `${what}: ${value} ${unit} (${source.mark})`,
  );
  return `${name[0]?.toUpperCase()}${name.slice(1)}. ${[...errors, ...steps].join("; ")}. ${cautions
    .map(({ words }) => words)
    .join(" ")}`;
}

export const toldInstruments = (...names: readonly Instrument["name"][]): string[] =>
  instruments.filter(({ name }) => names.includes(name)).map(told);
