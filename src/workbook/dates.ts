import { serialOfDay } from "../cells";

const iso =
  /^(?:(-?\d{4,})-(\d{2})-(\d{2}))?(?:T?(\d{2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?)?(?:Z|[+-]\d{2}:\d{2})?$/;

/**
 * Serial number of an ISO 8601 date, time or both (cells of type "d"); undefined when it is none.
 */
export function serialOfIsoDate(text: string, date1904: boolean): number | undefined {
  const match = text === "" ? null : iso.exec(text);
  if (match === null) return undefined;
  const [, year, month, day, hour, minute, second] = match;
  const time = (Number(hour ?? 0) * 3600 + Number(minute ?? 0) * 60 + Number(second ?? 0)) / 86_400;
  if (year === undefined) return time;
  const at = { year: Number(year), month: Number(month), day: Number(day) };
  if (new Date(Date.UTC(at.year, at.month - 1, at.day)).getUTCDate() !== at.day) return undefined;
  return serialOfDay(at, date1904) + time;
}
