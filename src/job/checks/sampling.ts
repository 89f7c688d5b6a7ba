import { cellName, shown } from "../../cells";
import { leastTested, type Sampling } from "../../editions";
import { factsOf } from "../facts";
import type { Words } from "../report";
import { listed } from "../words";
import type { Check } from "./check";
import { where } from "./equipment";
import { howShort } from "./fan-rates";

function shareOf({ first, share }: Sampling): string {
  const part = `${shown(100 * share)} % of ${first > 0 ? "the others" : "them"}`;
  return first > 0 ? `${first} first, then ${part}` : part;
}

/** A group of which only some dwellings are tested: enough of them, and what a failure among them means. */
export const checkSampling: Check = (job, report) => {
  const { sampling } = job.settings;
  const at = job.fit.settings.get("sampling");
  const { fans, dwellings } = factsOf(job);
  if (!sampling || !at || !fans) return;
  const all = dwellings.all();
  const tested = all.filter((each) => each.fans.some((i) => fans.fans.isMeasured(i)));
  const least = leastTested(sampling, all.length);
  const say = (kind: "sample-small" | "sample-failed", words: Words) =>
    report.add(kind, at.sheet, cellName(at.row, at.col), at.row, "", words);
  if (tested.length < least)
    say("sample-small", {
      what: `${tested.length} of ${all.length} dwellings are tested; ${least} are asked for: ${shareOf(sampling)} (${where(sampling)})`,
      effect: "The dwellings that were not tested cannot rest on the sample.",
      mend: `Test ${least - tested.length} more, chosen without notice and of each plan (${sampling.note}).`,
    });
  const isShort = (i: number) => howShort(job, i) === "flow-short" && !fans.isSuperseded(i);
  const failed = tested.filter(
    (each) => each.fans.some(isShort) || (each.isTold && each.missing > 0),
  );
  if (failed.length > 0 && tested.length < all.length)
    say("sample-failed", {
      what: `of ${tested.length} dwellings tested ${failed.length === 1 ? "1 falls" : `${failed.length} fall`} short: ${listed(failed.map(({ name }) => name))}`,
      effect: `What is short here is likely to be so among the ${all.length - tested.length} that were not tested.`,
      mend: "Mend and read again, look for the same cause in the others, and test further ones of the group.",
    });
};
