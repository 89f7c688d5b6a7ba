import type { Job } from "../read";
import type { Check } from "./check";

/** 1990-01-01 as a serial number: no test is older. */
const oldest = 32874;

/** Tester and date of every measured fan. */
export const checkWhoAndWhen: Check = (job, report, { today }) => {
  const { fans } = job;
  if (!fans) return;
  const { table } = fans;
  const first = firstDay(job);
  const offset = job.file.dateOffset ?? 0;
  const effect = job.tables.boxes
    ? "Whether the box was within its check on that day cannot be told."
    : "On which day the fan was measured is not known.";
  for (let i = 0; i < fans.length; i++) {
    if (!fans.isMeasured(i)) continue;
    if (table.has("tester", i) && table.text("tester", i) === "")
      report.at("tester-missing", table, "tester", i, fans.label(i), {
        cause: "blank",
        what: "a reading stands here without a tester",
        effect: "Nobody answers for the reading.",
        mend: "Type the tester's name or initials.",
      });
    if (!table.has("date", i)) continue;
    const gap = table.gap("date", i);
    const date = table.number("date", i);
    if (gap === "blank")
      report.at("date-missing", table, "date", i, fans.label(i), {
        cause: "blank",
        what: "a reading stands here without a date",
        effect,
        mend: "Type the date of the test.",
      });
    else if (gap === "text" || date + offset < oldest || date > today + 1 || date < first)
      report.at("date-wrong", table, "date", i, fans.label(i), {
        what:
          gap === "text"
            ? `"${table.text("date", i)}" is text, not a date`
            : date > today + 1
              ? "the date lies ahead"
              : date + offset < oldest
                ? "the date is too old to be one"
                : "the date lies before the job",
        effect,
        mend:
          gap === "text"
            ? "Type the date again so that the cell shows it as a date."
            : "Compare it with the field notes, and type the day of the test.",
      });
  }
};

/** A test is not dated a year before most others (common practice). */
const mostDays = 365;

/** The day on which a firm's job began: as stated, else so long before most tests; −∞ for ours. */
function firstDay({ fans, firm }: Job): number {
  if (!fans || !firm) return Number.NEGATIVE_INFINITY;
  const stated = firm.reading.blocks.find(({ habits }) => habits.start)?.habits.start?.value;
  if (stated !== undefined) return stated;
  const days = fans.table
    .numbers("date")
    .filter((day) => day > 0)
    .sort();
  return (days[Math.floor(days.length / 4)] ?? Number.NEGATIVE_INFINITY) - mostDays;
}
