import { cellName, shownApart } from "../../../cells";
import type { Words } from "../../report";
import type { Check } from "../check";
import { lookForCause } from "../fan-rates";
import { shareThatPasses, slackOf } from "./verdict";

/** Means of several tests against the required rate that stands beside them alone. */
export const checkFirmMeans: Check = (job, report) => {
  const { fans, firm } = job;
  if (!fans || !firm) return;
  const share = shareThatPasses(job);
  for (const [at, { means, habits }] of firm.reading.blocks.entries())
    for (const { of, flow, flowAt, required, verdict } of means) {
      const i = firm.rowOf(at, of);
      const about = i < 0 ? "" : fans.label(i);
      const unit = habits.units.flow ?? "";
      const [own, least] = shownApart(flow, required);
      const isShort = flow < required * share - slackOf(habits);
      const told = `the mean of ${own} ${unit} ${isShort ? "is short of" : "meets"} the required ${least} ${unit}`;
      const tell = (kind: "flow-short" | "verdict-differs", place: typeof flowAt, words: Words) =>
        report.add(kind, place.sheet, cellName(place.row, place.col), place.row, about, words);
      if (verdict && isShort !== (verdict.says === "fail"))
        tell("verdict-differs", verdict.at, {
          what: `the verdict is "${verdict.word}", but ${told}`,
          effect: isShort ? "A fan that is short counts as sound." : "A sound fan counts as short.",
          mend: "Correct the verdict, or the flow and required rate that it rests on.",
        });
      else if (isShort)
        tell("flow-short", flowAt, {
          what: told,
          effect: "The room does not get the rate that its own sheet asks for.",
          mend: lookForCause,
        });
    }
};
