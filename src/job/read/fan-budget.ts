import type { Budget } from "../../spread";
import { deviceBudget, flowBudget } from "../rules";
import type { FanRows } from "./fan-rows";

/**
 * The spread of a fan row's flow with what each part contributes, recomputed from the row's own
 * cells and the job's settings; undefined where nothing usable was measured.
 *
 * A size without a stated tolerance counts as exact, and an instrument without a stated limit gives
 * no budget at all: its spread is unknown, not zero.
 */
export function fanBudget(fans: FanRows, i: number): Budget | undefined {
  const { meter, constantSpread } = fans.settings;
  if (fans.isByInstrument(i)) {
    const instrument = fans.instruments?.find(fans.table.text("instrument", i));
    const readings = fans.deviceReadings(i).filter((value) => value > 0);
    if (!instrument || readings.length === 0 || Number.isNaN(instrument.percent)) return undefined;
    const { constant, exponent, percent, resolution } = instrument;
    const floor = Number.isNaN(instrument.floor) ? 0 : instrument.floor;
    return deviceBudget(readings, constant, exponent, { percent, floor, resolution });
  }
  const [pressure, area, constant] = [fans.pressure, fans.area, fans.constant].map(
    (column) => column[i] as number,
  ) as [number, number, number];
  if (!(pressure > 0) || !(area > 0)) return undefined;
  return flowBudget({
    readings: fans.readings(i),
    pressure,
    area,
    areaLimit: areaLimit(fans, i),
    constant,
    constantSpread,
    meterPercent: meter.percent,
    meterFloor: meter.floor,
    resolution: meter.resolution,
    zeroLimit: meter.zero,
  });
}

/** Half width of the open area: as stored in the row, or the sum over the openings in use. */
function areaLimit(fans: FanRows, i: number): number {
  const stored = fans.table.number("areaLimit", i);
  if (stored >= 0) return stored;
  const { boxes } = fans;
  if (!boxes?.table.has("areaLimit")) return 0;
  const labels = fans.table.text("openings", i).toUpperCase().split("+");
  return boxes
    .rows(fans.table.text("box", i))
    .filter((row) =>
      labels.some((label) => label.trim() === boxes.table.text("opening", row).toUpperCase()),
    )
    .reduce((sum, row) => sum + (boxes.table.number("areaLimit", row) || 0), 0);
}
