import type { Job } from "../read";
import type { Check } from "./check";

/** A fan read again: dated before the reading that came first. */
export const checkRetests: Check = (job, report) => {
  const { fans } = job;
  if (!fans?.table.has("date")) return;
  const { table } = fans;
  for (const [first, i] of job.firm ? ofFirm(job) : ofVisits(job)) {
    const [before, now] = [table.number("date", first), table.number("date", i)] as const;
    if (!(now < before)) continue;
    report.at("retest-order", table, "date", i, fans.label(i), {
      what: "the retest is dated before the first test",
      effect: "Which of the two readings stands for the fan as it now is cannot be told.",
      mend: "Compare both dates with the field notes.",
    });
  }
};

type Pair = readonly [first: number, again: number];

/** Retests that a firm writes into lines of their own. */
function ofFirm({ fans, firm }: Job): Pair[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => i).flatMap((i): Pair[] => {
    const tested = firm?.firstTestOf(i) ?? -1;
    return tested < 0 ? [] : [[tested, i]];
  });
}

/** The visits of each fan, one after the other. */
function ofVisits({ fans }: Job): Pair[] {
  return (fans?.histories ?? []).flatMap((rows) =>
    rows.slice(1).map((i, at): Pair => [rows[at] as number, i]),
  );
}
