import { significant } from "../../cells";
import type { Block } from "../types";

/** More rates and openings than this are counted, not listed. */
const mostListed = 8;

/** What a block keeps to of its own accord, in words, each habit with how it is known. */
export function habitsInWords({ habits, roles }: Block): string[] {
  const { sign, constant, window, openings, rates, start } = habits;
  const said: string[] = [];
  if (constant) {
    const hole = roles.has("area") ? "area" : "diameter²";
    said.push(
      `flow = ${significant(constant.value, 5)} × ${hole} × √pressure: ${constant.because}`,
    );
  }
  if (sign) said.push(`sign: ${sign.because}`);
  if (window) said.push(`window of ${window.value.join(" to ")}: ${window.because}`);
  if (habits.decimalComma) said.push("numbers are written with a decimal comma");
  for (const kind of ["pass", "fail", "neither"] as const)
    if (habits[kind].length > 0)
      said.push(`${kind}: ${firstOf(habits[kind].map((word) => `"${word}"`))}`);
  if (habits.verdict) said.push(`verdict: ${habits.verdict}`);
  const unit = habits.units.required ?? habits.units.flow ?? "";
  const asked = rates.map(({ room, duty, rate, follow, rows }) => {
    const of = [room, duty].filter((word) => word !== "").join(", ");
    return `${`${rate} ${unit}`.trim()} for ${of} (${follow} of ${rows} rows)`;
  });
  if (asked.length > 0) said.push(`required: ${firstOf(asked, "; ")}`);
  const listed = openings.map(({ name, area, diameter, unit: own = "" }) =>
    `${name} ${area ?? (diameter === undefined ? "" : `⌀ ${diameter}`)} ${own}`.trim(),
  );
  if (listed.length > 0) said.push(`openings: ${firstOf(listed)}`);
  if (start) said.push(`start of the job: ${start.because}`);
  return said;
}

function firstOf(texts: readonly string[], joined = ", "): string {
  const more = texts.length - mostListed;
  const shown = texts.slice(0, mostListed).join(joined);
  return more > 0 ? `${shown} and ${more} more` : shown;
}
