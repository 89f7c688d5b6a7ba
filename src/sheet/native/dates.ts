import { parseDate } from "numfmt";
import {
  type CellError,
  type CellValue,
  type Day,
  dayOfSerial,
  errors,
  isCellError,
  offsetOf,
  serialOfDay,
} from "../../cells";
import type { Value } from "../area";
import { toNumber } from "../coerce";
import type { Natives } from "./natives";
import { forEachValue } from "./read";

/** Calendar of a workbook: serial numbers count days from 1900 or from 1904. */
export interface Calendar {
  readonly date1904: boolean;
  /** Now, in local time. */
  readonly now: () => Date;
}

export function addDates(to: Natives, calendar: Calendar): void {
  const dayOf = (serial: number) => dayOfSerial(serial, calendar.date1904);
  const serialOf = (day: Day) => serialOfDay(day, calendar.date1904);
  const part = (name: string, read: (day: Day) => number) =>
    to.add(name, "n", (serial) => (serial < 0 ? errors.num : read(dayOf(serial))));
  part("YEAR", (day) => day.year);
  part("MONTH", (day) => day.month);
  part("DAY", (day) => day.day);
  const clock = (name: string, unit: number, cycle: number) =>
    to.add(name, "n", (serial) =>
      // The half-second guards against 0.5 stored as 0.49999999999.
      serial < 0 ? errors.num : Math.floor((Math.round(serial * 86_400) % 86_400) / unit) % cycle,
    );
  clock("HOUR", 3600, 24);
  clock("MINUTE", 60, 60);
  clock("SECOND", 1, 60);
  const date = (year: number, month: number, day: number): CellValue => {
    const base = calendar.date1904 ? 1904 : 1900;
    const full = Math.trunc(year) < base ? Math.trunc(year) + 1900 : Math.trunc(year);
    const serial = serialOf({ year: full, month: Math.trunc(month), day: Math.trunc(day) });
    return serial < 0 || full > 9999 ? errors.num : serial;
  };
  to.add("DATE", "n n n", date)
    .add("TIME", "n n n", (h, m, s) => {
      const seconds = Math.trunc(h) * 3600 + Math.trunc(m) * 60 + Math.trunc(s);
      return seconds < 0 ? errors.num : (seconds % 86_400) / 86_400;
    })
    .add("DATEVALUE", "t", (text) => {
      const read = parseDate(text.trim())?.value;
      if (typeof read !== "number") return errors.value;
      return Math.floor(read) - offsetOf(calendar.date1904);
    })
    .add("TODAY", "", () => Math.floor(serialNow(calendar)), { isVolatile: true })
    .add("NOW", "", () => serialNow(calendar), { isVolatile: true })
    .add("DAYS", "n n", (end, start) => Math.trunc(end) - Math.trunc(start))
    .add("EDATE", "n n", (start, months) => monthsOn(start, months, false))
    .add("EOMONTH", "n n", (start, months) => monthsOn(start, months, true))
    .add("WEEKDAY", "n n?", weekday)
    .add("ISOWEEKNUM", "n", isoWeek)
    .add("DATEDIF", "n n t", (start, end, unit) =>
      datedif(Math.trunc(start), Math.trunc(end), unit.toUpperCase()),
    )
    .add("NETWORKDAYS", "n n r?", workdays);

  function serialNow({ now }: Calendar): number {
    const at = now();
    const day = serialOf({ year: at.getFullYear(), month: at.getMonth() + 1, day: at.getDate() });
    return day + (at.getHours() * 3600 + at.getMinutes() * 60 + at.getSeconds()) / 86_400;
  }

  function monthsOn(start: number, months: number, toEnd: boolean): CellValue {
    if (start < 0) return errors.num;
    const from = dayOf(Math.trunc(start));
    const month = from.month + Math.trunc(months);
    const last = new Date(Date.UTC(from.year, month, 0)).getUTCDate();
    const day = toEnd ? last : Math.min(from.day, last);
    const serial = serialOf({ year: from.year, month, day });
    return serial < 0 ? errors.num : serial;
  }

  /** 0 for Monday to 6 for Sunday. */
  function weekdayIndex(serial: number): number {
    const shift = calendar.date1904 ? 4 : 5;
    return (((Math.floor(serial) + shift) % 7) + 7) % 7;
  }

  function weekday(serial: number, type = 1): CellValue {
    if (serial < 0) return errors.num;
    const monday = weekdayIndex(serial);
    if (type === 3) return monday;
    const start =
      type === 1 ? 6 : type === 2 ? 0 : type >= 11 && type <= 17 ? Math.trunc(type) - 11 : -1;
    return start < 0 ? errors.num : ((monday - start + 7) % 7) + 1;
  }

  function isoWeek(serial: number): CellValue {
    if (serial < 0) return errors.num;
    // A week belongs to the year of its Thursday.
    const thursday = Math.floor(serial) - weekdayIndex(serial) + 3;
    const first = serialOf({ year: dayOf(thursday).year, month: 1, day: 1 });
    return Math.floor((thursday - first) / 7) + 1;
  }

  function datedif(start: number, end: number, unit: string): CellValue {
    if (start < 0 || start > end) return errors.num;
    const a = dayOf(start);
    const b = dayOf(end);
    const months = (b.year - a.year) * 12 + b.month - a.month - (b.day < a.day ? 1 : 0);
    switch (unit) {
      case "D":
        return end - start;
      case "M":
        return months;
      case "Y":
        return Math.floor(months / 12);
      case "YM":
        return months % 12;
      case "MD":
        if (b.day >= a.day) return b.day - a.day;
        return end - serialOf({ year: b.year, month: b.month - 1, day: a.day });
      case "YD": {
        const sameYear = serialOf({ ...a, year: b.year });
        return end - (sameYear <= end ? sameYear : serialOf({ ...a, year: b.year - 1 }));
      }
      default:
        return errors.num;
    }
  }

  function workdays(start: number, end: number, holidays?: Value): CellValue {
    const [low, high] = [Math.min(start, end), Math.max(start, end)].map(Math.floor) as [
      number,
      number,
    ];
    const free = new Set<number>();
    let failed: CellError | undefined;
    forEachValue(holidays === undefined ? [] : [holidays], (value) => {
      const day = value === null ? -1 : toNumber(value);
      if (isCellError(day)) failed ??= day;
      else if (day >= low && day <= high && weekdayIndex(day) < 5) free.add(Math.floor(day));
    });
    if (failed) return failed;
    const weeks = Math.floor((high - low + 1) / 7);
    let count = weeks * 5;
    for (let day = low + weeks * 7; day <= high; day++) if (weekdayIndex(day) < 5) count++;
    return (count - free.size) * (end < start ? -1 : 1);
  }
}
