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
import { finite, textNumber, toNumber } from "../coerce";
import { spend } from "../work";
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
  /** 31 December 9999 is the last day. */
  const isDate = (serial: number) =>
    serial >= 0 && serial < (calendar.date1904 ? 2_957_004 : 2_958_466);
  const part = (name: string, read: (day: Day) => number) =>
    to.add(name, "n", (serial) => (isDate(serial) ? read(dayOf(serial)) : errors.num));
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
    // Counted from the first of the month, as the days of the 1900 system are.
    const first = serialOf({ year: full, month: Math.trunc(month), day: 1 });
    const serial = first + Math.trunc(day) - 1;
    return full > 9999 || !isDate(first) || !isDate(serial) ? errors.num : serial;
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
    .add("DAYS", "n n", (end, start) =>
      isDate(end) && isDate(start) ? Math.trunc(end) - Math.trunc(start) : errors.num,
    )
    .add("EDATE", "e e", (start, months) => monthsOn(start, months, false))
    .add("EOMONTH", "e e", (start, months) => monthsOn(start, months, true))
    .add("WEEKDAY", "n n?", weekday)
    .add("WEEKNUM", "e e?", weekNumber)
    .add("WORKDAY", "e e r?", workday)
    .add("DAYS360", "n n b?", (start, end, european = false) =>
      isDate(start) && isDate(end)
        ? days360(dayOf(start), dayOf(end), european, false)
        : errors.num,
    )
    .add("YEARFRAC", "s s s?", yearPart)
    .add("TIMEVALUE", "s", (text) => {
      if (isCellError(text)) return text;
      const isTime = typeof text === "string" && /[:/-]|[a-z]/i.test(text);
      const read = isTime ? textNumber(text) : undefined;
      return read === undefined ? errors.value : read - Math.floor(read);
    })
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

  function weekNumber(serial: number, type = 1): CellValue {
    if (!isDate(serial)) return errors.num;
    if (type === 21) return isoWeek(serial);
    const first = serialOf({ year: dayOf(serial).year, month: 1, day: 1 });
    const start = weekday(first, type === 1 ? 1 : type === 2 ? 2 : type >= 11 ? type : 0);
    return typeof start === "number"
      ? Math.floor((Math.floor(serial) - first + start - 1) / 7) + 1
      : errors.num;
  }

  function workday(start: number, days: number, holidays?: Value): CellValue {
    const free = new Set<number>();
    let failed: CellError | undefined;
    forEachValue(holidays === undefined ? [] : [holidays], (value) => {
      const day = value === null ? -1 : toNumber(value);
      if (isCellError(day)) failed ??= day;
      else free.add(Math.floor(day));
    });
    if (failed) return failed;
    let day = Math.floor(start);
    const step = days < 0 ? -1 : 1;
    for (let left = Math.abs(Math.trunc(days)); left > 0 && isDate(day); ) {
      day += step;
      spend(1);
      if (weekdayIndex(day) < 5 && !free.has(day)) left--;
    }
    return isDate(day) ? day : errors.num;
  }

  /** Years between two days by the count of days: 30/360, actual, actual/360, actual/365, European 30/360. */
  function yearPart(first: CellValue, second: CellValue, by: CellValue = 0): CellValue {
    // The basis tells of its error before the dates do.
    const [basis, from, to] = [by, first, second].map((each) =>
      typeof each === "boolean" ? errors.value : toNumber(each),
    );
    if (typeof basis !== "number") return basis ?? errors.value;
    const kind = Math.trunc(basis);
    if (kind < 0 || kind > 4) return errors.num;
    if (typeof from !== "number") return from ?? errors.value;
    if (typeof to !== "number") return to ?? errors.value;
    const start = Math.floor(Math.min(from, to));
    const end = Math.floor(Math.max(from, to));
    if (!isDate(start) || !isDate(end)) return errors.num;
    const [a, b] = [dayOf(start), dayOf(end)];
    if (kind === 0) return days360(a, b, false, true) / 360;
    if (kind === 4) return days360(a, b, true, false) / 360;
    if (kind === 2) return (end - start) / 360;
    if (kind === 3) return (end - start) / 365;
    return start === end ? 0 : finite((end - start) / yearLength(a, b));
  }

  /** Days of the year that two dates span, on average where they span several. */
  function yearLength(a: Day, b: Day): number {
    const isLater = a.month > b.month || (a.month === b.month && a.day >= b.day);
    const isOneYear = a.year === b.year || (a.year + 1 === b.year && isLater);
    if (!isOneYear) {
      return (Date.UTC(b.year + 1, 0) - Date.UTC(a.year, 0)) / 86_400_000 / (b.year - a.year + 1);
    }
    if (a.year === b.year) return isLeap(a.year) ? 366 : 365;
    const holdsIt =
      (isLeap(a.year) && a.month <= 2) ||
      (isLeap(b.year) && (b.month > 2 || (b.month === 2 && b.day === 29)));
    return holdsIt ? 366 : 365;
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
        // Counted in the year of the first day, with its 29 February.
        const sameYear = serialOf({ ...b, year: a.year });
        return (sameYear >= start ? sameYear : serialOf({ ...b, year: a.year + 1 })) - start;
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

function isLeap(year: number): boolean {
  return new Date(Date.UTC(year, 1, 29)).getUTCMonth() === 1;
}

/** Days between two dates when every month has 30; `february`: its last day counts as the 30th. */
function days360(a: Day, b: Day, european: boolean, february: boolean): number {
  const isEnd = ({ year, month, day }: Day) => month === 2 && day === (isLeap(year) ? 29 : 28);
  const first = !european && isEnd(a) ? 30 : Math.min(a.day, 30);
  let last = b.day;
  if (european) last = Math.min(last, 30);
  else if (february && isEnd(a) && isEnd(b)) last = 30;
  else if (last === 31 && first === 30) last = 30;
  return (b.year - a.year) * 360 + (b.month - a.month) * 30 + last - first;
}
