import { cellName, isoDay } from "../../cells";
import { editions } from "../../editions";
import type { Check } from "./check";

/** The day from which the edition is in force, against the edition's own year and the readings' days. */
export const checkEditionDay: Check = (job, report) => {
  const { adopted, edition } = job.settings;
  const at = job.fit.settings.get("adopted");
  if (!at || adopted === undefined || !edition) return;
  const day = isoDay(adopted, job.file.dateOffset ?? 0);
  const year = yearOf(edition.id);
  const add = (what: string, other: string | undefined) =>
    report.add("edition-day", at.sheet, cellName(at.row, at.col), at.row, "", {
      what,
      effect: `Another edition may be the one that applies${other ? `, such as ${other}` : ""}, with other rates.`,
      mend: "Compare the edition with the day of the permit; the comparison with another edition shows what that one changes.",
    });
  // A code is printed in the year before the one it is named for, at the earliest.
  const newest = Number(day.slice(0, 4)) + 1;
  if (newest < year)
    return add(
      `the sheet says that ${edition.id} is in force from ${day}, before that edition was printed`,
      latestOf(edition.id, newest),
    );
  const early = Array.from({ length: job.fans?.length ?? 0 }, (_, i) => i).filter(
    (i) => (job.fans?.table.number("date", i) ?? Number.NaN) < adopted,
  ).length;
  if (early > 0)
    add(
      `${early === 1 ? "1 fan was" : `${early} fans were`} read before ${day}, from which ${edition.id} is in force here`,
      latestOf(edition.id, year - 1),
    );
};

/** The year that an edition is named for; 0 where it is named for none. */
export const yearOf = (id: string) => Number(/\d{4}$/.exec(id)?.[0] ?? 0);

/** The latest edition of the same code that is named for this year or an earlier one. */
export function latestOf(id: string, year: number): string | undefined {
  const family = id.replace(/\d{4}$/, "");
  return editions
    .map((each) => each.id)
    .filter((other) => other === `${family}${yearOf(other)}` && yearOf(other) <= year)
    .sort()
    .at(-1);
}
