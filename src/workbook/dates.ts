const dayMs = 86_400_000;
const iso =
  /^(?:(-?\d{4,})-(\d{2})-(\d{2}))?(?:T?(\d{2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?)?(?:Z|[+-]\d{2}:\d{2})?$/;

/**
 * Serial number of an ISO 8601 date, time or both (cells of type "d"); undefined when it is none.
 * The 1900 system counts a 29 February 1900 that never was, so days before 1 March 1900 are one less.
 */
export function serialOfIsoDate(text: string, date1904: boolean): number | undefined {
  const match = text === "" ? null : iso.exec(text);
  if (match === null) return undefined;
  const [, year, month, day, hour, minute, second] = match;
  const time = (Number(hour ?? 0) * 3600 + Number(minute ?? 0) * 60 + Number(second ?? 0)) / 86_400;
  if (year === undefined) return time;
  const stamp = Date.UTC(Number(year), Number(month) - 1, Number(day));
  if (new Date(stamp).getUTCDate() !== Number(day)) return undefined;
  if (date1904) return (stamp - Date.UTC(1904, 0, 1)) / dayMs + time;
  const days = (stamp - Date.UTC(1899, 11, 30)) / dayMs;
  return (days < 61 ? days - 1 : days) + time;
}
