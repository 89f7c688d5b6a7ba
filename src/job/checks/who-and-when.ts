import type { Job } from "../read";
import { eachFan } from "./each";

/** 1990-01-01 as a serial number: no test is older. */
const oldest = 32874;

/** Tester and date of every measured fan. */
export const checkWhoAndWhen = eachFan((fans, job, { today }) => {
  const { table } = fans;
  const first = firstDay(job);
  const offset = job.file.dateOffset ?? 0;
  const effect = job.tables.boxes
    ? "Whether the box was within its check on that day cannot be told."
    : "On which day the fan was measured is not known.";
  return (i, say) => {
    if (!fans.isMeasured(i)) return;
    if (table.has("tester", i) && table.text("tester", i) === "")
      say("tester-missing", "tester", {
        cause: "blank",
        what: "a reading stands here without a tester",
        effect: "Nobody answers for the reading.",
        mend: "Type the tester's name or initials.",
      });
    if (!table.has("date", i)) return;
    const gap = table.gap("date", i);
    const date = table.number("date", i);
    if (gap === "blank")
      say("date-missing", "date", {
        cause: "blank",
        what: "a reading stands here without a date",
        effect,
        mend: "Type the date of the test.",
      });
    else if (gap === "text" || date + offset < oldest || date > today + 1 || date < first)
      say("date-wrong", "date", {
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
  };
});

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
