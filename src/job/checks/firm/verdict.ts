import { once, shown, shownApart } from "../../../cells";
import type { Job } from "../../read";
import { eachFan } from "../each";
import { inSheetUnit } from "./sheet-unit";

/** A firm may pass what comes near enough; these shares of the required rate are tried. */
const usualShares = [1, 0.95, 0.9, 0.85, 0.8];

/** The firm's own verdicts against its own flows, required rates and window. */
export const checkFirmVerdicts = eachFan((fans, job) => {
  const { firm, settings } = job;
  if (!firm) return undefined;
  const { table } = fans;
  const share = shareThatPasses(job);
  const rest = share === 1 ? "" : ` (this job passes ${shown(100 * share)} % of it)`;
  return (i, say) => {
    const says = firm.says(i);
    if (says === undefined || firm.replacedAs(i)) return;
    const typed = fans.typedPressure(i);
    if (!fans.isMeasured(i)) {
      const gap = table.gap(typed, i);
      if (says === "pass" && (gap === "blank" || gap === "absent"))
        say("passed-unread", typed, {
          what: `"${table.text("verdict", i)}" stands here without a reading`,
          effect: "Nothing was measured that this verdict could rest on.",
          mend: "Measure the fan, or take the verdict away.",
        });
      return;
    }
    const status = fans.status[i];
    if (says === "pass" && (status === "above" || status === "below")) {
      const limit = status === "above" ? settings.high : settings.low;
      const [own, end] = shownApart(fans.pressure[i] as number, limit);
      say("passed-outside", typed, {
        what: `${own} Pa is ${status} the ${end} Pa window, yet the fan passes`,
        effect: "The verdict rests on a reading that cannot carry it.",
        mend: `Read again with a ${status === "above" ? "larger" : "smaller"} opening.`,
        also: table.hasFormula("verdict", i) ? [] : [table.cell("verdict", i)],
      });
      return;
    }
    // A formula that judges wrongly departs from its column, or reads a cell that is told of itself.
    if (table.hasFormula("verdict", i)) return;
    const [flow, required] = [judged(job, i), table.number("required", i)];
    const slack = slackOf(firm.at(i).block.habits) * table.factor("flow", i);
    const isShort = flow < required * share - slack;
    const meets = flow >= required * share + slack;
    if (status === "reversed" || !(says === "pass" ? isShort : meets && inWindow(job, i))) return;
    say("verdict-differs", "verdict", {
      what: `the verdict is "${table.text("verdict", i)}", but ${inSheetUnit(table, "flow", i, flow, required)} ${isShort ? "is short of" : "meets"} ${inSheetUnit(table, "required", i, required, flow)}${rest}`,
      effect: isShort ? "A fan that is short counts as sound." : "A sound fan counts as short.",
      mend: "Correct the verdict, or the flow and required rate that it rests on.",
    });
  };
});

/** The flow that the reading gives; as it is stored where no law of the box tells it. */
function judged({ fans }: Job, i: number): number {
  const flow = fans?.flow[i] ?? Number.NaN;
  return Number.isNaN(flow) ? (fans?.table.number("flow", i) ?? Number.NaN) : flow;
}

function inWindow({ fans }: Job, i: number): boolean {
  return fans?.status[i] === "in range" || Number.isNaN(fans?.pressure[i]);
}

/** Half a step of the rounding that the sheet itself does before it compares. */
function slackOf({ rounding }: { readonly rounding?: number | undefined }): number {
  return rounding === undefined ? 1e-9 : 0.5 * 10 ** -rounding;
}

/** The share of the required rate from which most verdicts of the job say pass. */
const shareThatPasses = once((job: Job): number => {
  const { fans, firm } = job;
  const ratios: { ratio: number; pass: boolean }[] = [];
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const says = firm?.says(i);
    const ratio = judged(job, i) / (fans?.table.number("required", i) ?? Number.NaN);
    if (says && inWindow(job, i) && ratio > 0) ratios.push({ ratio, pass: says === "pass" });
  }
  const wrong = (share: number) =>
    ratios.filter(
      ({ ratio, pass }) => pass !== ratio >= share - 0.01 && Math.abs(ratio - share) > 0.01,
    ).length;
  const scored = usualShares.map((share) => ({ share, wrong: wrong(share) }));
  const [asStated] = scored as [(typeof scored)[number]];
  // Another rule than the plain one must explain clearly more.
  const best = scored.reduce((a, b) => (b.wrong < a.wrong ? b : a));
  return asStated.wrong - best.wrong >= Math.max(3, 0.04 * ratios.length) ? best.share : 1;
});
