import { format, isDateFormat } from "numfmt";
import { type CellValue, errors, offsetOf } from "../../cells";
import { Unsupported } from "../values";

/** The last day of the calendar, 31 December 9999. */
const lastDay = 2_958_465;

/** A number as TEXT shows it. Formats that the library shows otherwise than Excel are not evaluated. */
export function formattedNumber(x: number, pattern: string, date1904: boolean): CellValue {
  const bare = pattern.replace(/"[^"]*"|\\./g, "");
  const isDate = isDateFormat(pattern);
  const isElapsed = isDate && /\[[hms]+\]/i.test(bare);
  const value = isDate && !isElapsed ? x + offsetOf(date1904) : x;
  // Below zero the calendar of 1900 shows a lone count of hours, minutes or seconds, and nothing else.
  if (isElapsed && x < 0 && !date1904 && !/^\[[hms]+\]$/i.test(pattern)) return errors.value;
  if (isDate && !isElapsed && (value < 0 || value >= lastDay + 1)) return errors.value;
  if (isDate ? isRareDate(bare) : pattern.split(";").some(isRareNumber))
    throw new Unsupported(`the number format ${pattern}`);
  try {
    return isElapsed && value < 0 ? `-${format(pattern, -value)}` : format(pattern, value);
  } catch {
    return errors.value;
  }
}

/** An elapsed time beside another or beside the clock's own hours or seconds, or the short marks of noon in small letters. */
function isRareDate(bare: string): boolean {
  return /\[([hms])+\].*(\[|\1)|\[h+\].*h|a\/p/i.test(bare);
}

/** Literals within an exponent, a fraction or grouped digits; several percent signs; thousands cut off. */
function isRareNumber(section: string): boolean {
  const isExponent = /e[+-]/i.test(section);
  const isFraction = section.includes("/") && /[0#?]/.test(section);
  return (
    (isExponent && !/^[^"\\|;e]*[0#?.,]E[+-]0+[^0#?|]*$/.test(section)) ||
    (isFraction && !/^(\[[^\]]*\])?([0#?]+ )?[0#?]+\/[0#?1-9]+ ?$/.test(section)) ||
    (section.match(/%/g)?.length ?? 0) > 1 ||
    /[#0?]\.?[#0?]*,(\.|$)|,[^0#?,]+[0#?]|[0#?][^0#?.,]+[^.]*,[^.]*[0#?]|,[0#?]*\D+\.\d/.test(
      section,
    )
  );
}
