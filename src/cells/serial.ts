/** A day of the calendar; the month counts from 1. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const dayMs = 86_400_000;
const origin1900 = Date.UTC(1899, 11, 30);

/** Days by which the serial numbers of a workbook that counts from 1904 lag behind the usual ones. */
export function offsetOf(date1904: boolean): number {
  return date1904 ? 1462 : 0;
}

/** The day of a point in time, in UTC, as a serial number of workbooks that count from 1900. */
export function serialOf(date: Date): number {
  return Math.floor((date.getTime() - origin1900) / dayMs);
}

/** "2026-09-07" for a serial number; `offset` where its workbook counts from 1904. "" for none. */
export function isoDay(serial: number, offset = 0): string {
  const day = new Date(origin1900 + (Math.floor(serial) + offset) * dayMs);
  return serial > 0 && !Number.isNaN(day.getTime()) ? day.toISOString().slice(0, 10) : "";
}

/**
 * Serial number of a day; months and days beyond the calendar run on. The 1900 system counts a
 * 29 February 1900 that never was, so days before 1 March 1900 are one less.
 */
export function serialOfDay({ year, month, day }: Day, date1904: boolean): number {
  if (!date1904 && year === 1900 && month === 2 && day === 29) return 60;
  const days = Math.round((Date.UTC(year, month - 1, day) - origin1900) / dayMs);
  if (date1904) return days - offsetOf(true);
  return days < 61 ? days - 1 : days;
}

/** The day of a serial number, with 29 February 1900 and the day 0 that the 1900 system has. */
export function dayOfSerial(serial: number, date1904: boolean): Day {
  const whole = Math.floor(serial);
  if (!date1904 && whole === 60) return { year: 1900, month: 2, day: 29 };
  if (!date1904 && whole === 0) return { year: 1900, month: 1, day: 0 };
  const days = date1904 ? whole + offsetOf(true) : whole < 60 ? whole + 1 : whole;
  const at = new Date(origin1900 + days * dayMs);
  return { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, day: at.getUTCDate() };
}

/** The day of today by the days of a workbook, which may count from 1904. */
export const todayOf = ({ dateOffset = 0 }: { readonly dateOffset?: number | undefined }): number =>
  serialOf(new Date()) - dateOffset;
