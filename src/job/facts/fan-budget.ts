import { deviceBudget, flowBudget } from "../../rules";
import type { Budget } from "../../spread";
import { attempt, type FanRows, type Settings, valueIn } from "../read";
import { areaLimitOf } from "./area-limit";

/**
 * The spread of a fan row's flow with what each part contributes, worked out from the row's own
 * cells and the job's settings; undefined where nothing usable was measured or a limit is negative.
 *
 * An instrument without a stated limit, and openings that are not listed, give no budget at all:
 * the spread is unknown, not zero.
 */
export function fanBudget(settings: Settings, fans: FanRows, i: number): Budget | undefined {
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
  const areaLimit = valueIn(attempt(() => areaLimitOf(fans, i)));
  if (areaLimit === undefined || areaLimit < 0) return undefined;
  const readings = fans.isSupply(i) ? [pressure] : fans.readings(i);
  const reading = { readings, pressure, area, areaLimit, constant };
  return flowBudget({ ...settings, zeroLimit: settings.zero, ...reading });
}
