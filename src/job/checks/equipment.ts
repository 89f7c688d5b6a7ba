import { shown, shownApart } from "../../cells";
import type { Ruling } from "../../rules";
import { unitOf } from "../columns";
import {
  designAsked,
  ductAllowed,
  efficacyAsked,
  isKitchen,
  makeupAsked,
  mostFlow,
  soundAllowed,
} from "../facts";
import { attempt, type FanRows, type Job, valueIn } from "../read";
import { eachFan, type Look } from "./each";

/** What a fan is, apart from what it moves: efficacy, sound, duct, makeup air, its design flow. */
export const checkEquipment = eachFan((fans, job) => {
  const { table } = fans;
  const { settings } = job;
  // A job that names no rule, or a sheet without the field, is passed over at once.
  const looks = [
    table.has("watts") && settings.equipment !== "" && checkEfficacy,
    table.has("sones") && checkSound,
    table.has("ductLength") && settings.ducts !== "" && checkDuct,
    table.has("design") && settings.programme !== "" && checkDesign,
    settings.ducts !== "" && checkMakeup,
  ].flatMap((look) => (look ? [look(fans, job)] : []));
  if (looks.length === 0) return undefined;
  return (i, say) => {
    if (!fans.isAbsent(i)) for (const look of looks) look(i, say);
  };
});

type Begin = (fans: FanRows, job: Job) => Look;

const checkEfficacy: Begin = (fans, job) => (i, say) => {
  const { table } = fans;
  const asked = ruled(() => efficacyAsked(job, i));
  const own = table.number("rated", i) / table.number("watts", i);
  if (!asked || !(own < asked.value)) return;
  const [each, least] = shownApart(own, asked.value);
  say("efficacy-short", "watts", {
    what: `${each} ${flowUnit(job)} for each watt, where ${job.settings.equipment} asks for ${least}`,
    effect: `The fan uses more power than it may (${where(asked)}).`,
    mend: "Compare watts and rated flow with the nameplate; choose another fan where they are right.",
  });
};

const checkSound: Begin = (fans, job) => (i, say) => {
  const allowed = ruled(() => soundAllowed(job, i));
  const own = fans.table.number("sones", i);
  if (typeof allowed?.value !== "number" || !(own > allowed.value)) return;
  const [loud, most] = shownApart(own, allowed.value);
  say("sound-over", "sones", {
    what: `${loud} sones, where at most ${most} is allowed of a fan that runs ${valueIn(fans.duty(i)) === "continuous" ? "all the time" : "on demand"}`,
    effect: `The fan is louder than it may be (${where(allowed)}): people switch loud fans off.${job.settings.work === "existing" ? " A fan that is kept in an existing building may be exempt (from memory, verify)." : ""}`,
    mend: "Compare with the fan's certified rating; choose a quieter fan where it is right.",
  });
};

/** A measured flow waives the table: only a fan without one is held against it. */
const checkDuct: Begin = (fans, job) => (i, say) => {
  const length = fans.table.number("ductLength", i);
  if (!Number.isNaN(fans.flow[i]) || !(length > 0)) return;
  const allowed = ruled(() => ductAllowed(job, i));
  if (!allowed || allowed.value === "no limit") return;
  if (typeof allowed.value === "number" && length <= allowed.value) return;
  const { value } = allowed;
  const [own, limit] = value === "not allowed" ? [shown(length), value] : shownApart(length, value);
  const most = value === limit ? value : `${limit} at most`;
  say("duct-over", "ductLength", {
    what: `${own} ${unitOf("distance", job.settings.system)} of duct, where ${where(allowed)} says: ${most} (${allowed.working})`,
    effect: "Without a measured flow the table decides, and the duct does not meet it.",
    mend: "Measure the installed flow, which waives the table; or shorten or widen the duct.",
  });
};

const checkDesign: Begin = (fans, job) => (i, say) => {
  const flow = fans.flow[i] as number;
  const design = fans.table.number("design", i);
  if (!(flow >= 0) || !(design > 0)) return;
  const match = ruled(() => designAsked(job, i, flow));
  if (!match || match.value === "matches") return;
  say("design-differs", "design", {
    what: `${shown(flow)} ${flowUnit(job)} is ${match.value} against the design of ${shown(design)}: ${shown(match.lowest)} to ${shown(match.highest)} would match`,
    effect: `${job.settings.programme} asks for a match both ways: too much air fails as well.`,
    mend: "Set the fan's speed, mend its duct, or have the designer change the design flow.",
  });
};

const checkMakeup: Begin = (_, job) => (i, say) => {
  if (!isKitchen(job, i)) return;
  const asked = ruled(() => makeupAsked(job, i));
  if (asked?.value !== "needed") return;
  say("makeup-air", "rated", {
    what: `${shown(mostFlow(job, i))} ${flowUnit(job)} of exhaust needs makeup air (${where(asked)})`,
    effect:
      "Such a fan can draw flue gas back into the dwelling. The local authority and a licensed person decide.",
    mend: "Show the makeup air in the note, or have it provided.",
  });
};

const flowUnit = (job: Job) => unitOf("flow", job.settings.system);

export const where = ({ source }: Pick<Ruling<unknown>, "source">) =>
  `${source.work}, ${source.clause}${source.mark === "from memory" ? " (from memory, verify)" : ""}`;

/** A rule that does not apply, or lacks what it needs, says nothing here. */
function ruled<T>(make: () => T): T | undefined {
  return valueIn(attempt(make));
}
