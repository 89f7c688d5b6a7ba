import { cellName, isoDay } from "../../cells";
import type { Check } from "./check";

/** The day from which the edition is in force, against the edition's own year and the readings' days. */
export const checkEditionDay: Check = (job, report) => {
  const { adopted, edition } = job.settings;
  const at = job.fit.settings.get("adopted");
  if (!at || adopted === undefined || !edition) return;
  const day = isoDay(adopted, job.file.dateOffset ?? 0);
  const year = Number(/\d{4}$/.exec(edition.id)?.[0] ?? 0);
  const add = (what: string) =>
    report.add("edition-day", at.sheet, cellName(at.row, at.col), at.row, "", {
      what,
      effect: "Another edition may be the one that applies, with other rates.",
      mend: "Compare the edition with the day of the permit; what another one changes is shown by Rates, Another edition, and by --under.",
    });
  // A code is printed in the year before the one it is named for, at the earliest.
  if (Number(day.slice(0, 4)) < year - 1)
    return add(`${edition.id} is not as old as ${day}, from which it is said to be in force`);
  const early = Array.from({ length: job.fans?.length ?? 0 }, (_, i) => i).filter(
    (i) => (job.fans?.table.number("date", i) ?? Number.NaN) < adopted,
  ).length;
  if (early > 0)
    add(
      `${early === 1 ? "1 fan was" : `${early} fans were`} read before ${day}, from which ${edition.id} is in force here`,
    );
};
