import { shown, shownApart } from "../../cells";
import { type Edition, kindOf } from "../../editions";
import { type JudgeBy, readYesNo } from "../../rules";
import { factsOf } from "../facts";
import { attempt, type FanRows, type Job, valueIn } from "../read";
import { eachFan } from "./each";
import { where } from "./equipment";

/** Fans whose flow is short of what the edition asks, or too near it to tell. */
export const checkFanRates = eachFan((fans, job) => {
  const facts = factsOf(job).fans;
  if (!facts) return undefined;
  const field = judgedField(job);
  return (i, say) => {
    const [flow, required, verdict] = [facts.judged(i), facts.required(i), facts.verdict(i)];
    const short = howShort(job, i);
    if (!short && (verdict !== "too close to call" || job.firm?.says(i) === "pass")) return;
    const unit = fans.table.unit("flow", i) ?? "";
    const factor = fans.table.factor("flow", i);
    const [own, least] = shownApart(flow / factor, required / factor);
    const said = `${own} ${unit}${judgedWords[job.settings.judgeBy]}`;
    if (!short)
      return say("flow-close", field, {
        what: `${said} against ${least} ${unit}: the chance of truly meeting it is ${shown(100 * facts.chance(i))} %`,
        effect: `The job asks for ${shown(100 * job.settings.chance)} %: neither "meets" nor "short" can be said.`,
        mend: "Measure with a smaller spread (a pressure of 3 to 6 Pa, more readings, a proved constant), or raise the flow.",
      });
    if (short === "room-unsaid")
      return say(short, "required", {
        what: `${said} against ${least} ${unit}, which counts the kitchen as open and its cooking as by fuel where the row does not say`,
        effect: `It could need as little as ${shown(facts.leastIfSaid(i) / factor)} ${unit}, and the fan meets that.`,
        mend: 'Type "yes" or "no" under Enclosed kitchen, and "electric" or "fuel" under Cooking.',
      });
    const rated = fans.table.number("rated", i);
    const { edition } = job.settings;
    if (short === "hood-listed")
      return say(short, field, {
        what: `${said} was measured where ${least} ${unit} are asked, and the hood is listed at ${shown(rated / factor)} ${unit}`,
        effect:
          "The code checks such a hood by the listing of the model on site, and that is enough; less than that was measured here.",
        mend: "Keep the model number and its listing with the record, and look at the duct and the damper.",
      });
    const deficit = facts.deficit(i);
    if (short === "deficit-carried" && deficit && "value" in deficit) {
      const { rate, source } = deficit.value;
      const credit = windowCredit(fans, i, job.settings);
      const [flowShown] = shownApart(flow / factor, (required - credit) / factor);
      const forWindow =
        credit > 0 ? `, less ${shown(credit / factor)} for the window that opens` : "";
      const left = rate > 0 ? `${shown(rate / factor)} ${unit}` : "0, and nothing is added";
      say(short, field, {
        what: `${flowShown} ${unit}${judgedWords[job.settings.judgeBy]} is short of ${least} ${unit}${forWindow}: the room's deficit is ${left}`,
        effect: `A deficit may stay: ${shown(100 * (edition?.deficits?.share ?? 0))} % of it is added to the dwelling's rate (${where({ source })}).`,
        mend: "Where a deficit is left, mend or replace the fan, or see that the dwelling's continuous flow carries it; see that a window that was counted opens.",
      });
    } else
      say("flow-short", field, {
        what: `${said} is short of the required ${least} ${unit} by ${shown((required - flow) / factor)}`,
        effect: shortBy(fans, i, edition, rated >= required),
        mend: "Look for a crushed or long duct, a stuck damper, a blocked terminal or a low speed setting; mend, then test again.",
      });
  };
});

/** What becomes of a fan that is short of its rate; undefined for one that is not. */
export function howShort(job: Job, i: number) {
  const facts = factsOf(job).fans;
  if (facts?.verdict(i) !== "short" || job.firm?.says(i) === "pass") return undefined;
  if (facts.replacedAs(i) === "part of a mean") return undefined;
  const { table } = facts.fans;
  if (facts.judged(i) >= facts.leastIfSaid(i)) return "room-unsaid";
  const isListed = table.number("rated", i) >= facts.required(i);
  if (isListed && facts.fans.kindOfRate(i) === "model check") return "hood-listed";
  const deficit = table.has("deficit") ? facts.deficit(i) : undefined;
  return deficit && "value" in deficit ? "deficit-carried" : "flow-short";
}

/** What a short flow means, by what the edition's number is a number of. */
function shortBy(fans: FanRows, i: number, edition: Edition | undefined, isRated: boolean): string {
  const rule = edition && fans.ruleUnder(edition, i);
  if (!rule)
    return `The room does not get the rate that ${edition ? "the edition" : "its own sheet"} asks for.`;
  const asked = `The room does not get its rate, which is ${kindOf(rule)}.`;
  return isRated && (rule.is === "capacity" || rule.is === "listed")
    ? `${asked} The rating is enough by the letter of it, the delivered flow is not; which counts, the code official decides.`
    : asked;
}

/** What a window that opens counts for in the deficit; 0 where there is none. */
function windowCredit({ table }: FanRows, i: number, { edition, system }: Job["settings"]): number {
  const opens = valueIn(attempt(() => readYesNo("window", table.text("window", i)))) === true;
  return (opens && edition?.deficits?.window[system]) || 0;
}

/** The cell that shows the flow judged. */
function judgedField({ settings, fans }: Job): string {
  return settings.judgeBy !== "measured" && fans?.table.has("judged") ? "judged" : "flow";
}

const judgedWords: Readonly<Record<JudgeBy, string>> = {
  measured: "",
  actual: " at the density at hand",
  standard: " at standard air",
  "without box": " without the box",
};
