import { shown } from "../../cells";
import { retestBands } from "../../editions";
import { unitOf } from "../columns";
import type { Job } from "../read";
import type { Check } from "./check";
import { eachFan } from "./each";
import { where } from "./equipment";

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

/** Fans that a reviewer read again and found otherwise, by the bands of a second test. */
export const checkReviews = eachFan((fans, { settings }) => {
  if (!fans.table.has("review")) return undefined;
  const { rows, source } = retestBands;
  const unit = unitOf("flow", settings.system);
  return (i, say) => {
    const [own, theirs] = [fans.flow[i] as number, fans.table.number("review", i)];
    const apart = Math.abs(own - theirs) / theirs;
    const [sound] = rows;
    const graded = rows.find(
      ({ upTo, edge }) => apart < upTo || (edge === "inside" && apart <= upTo),
    );
    if (!(theirs > 0) || !graded || graded === sound) return;
    say("review-apart", "review", {
      what: `the reviewer read ${shown(theirs)} ${unit} where ${shown(own)} ${unit} stand: ${shown(100 * apart)} % apart, deviation band ${graded.band} of ${rows.length - 1} (${where({ source })})`,
      effect: `Below ${100 * sound.upTo} % the two agree; beyond it one of them is not to be trusted.`,
      mend: "Read the fan together, each with their own instrument, and look for what differs: openings, seal, speed, zero.",
    });
  };
});

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
