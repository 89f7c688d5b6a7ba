import { cellName, isoDay, significant } from "../../cells";
import { findEdition } from "../../editions";
import { usualConstant, usualInterval, usualRequirement, usualWindow } from "../../rules";
import { underEdition } from "../comparing/under-edition";
import type { FanRows, Job } from "../read";
import { count } from "../words";
import { rowsOfOpenings } from "./box-checks";
import type { Check, CheckContext } from "./check";
import { latestOf, yearOf } from "./edition-day";

/** A setting that lets more pass than the usual one does. */
interface Loose {
  readonly key: string;
  /** "the highest pressure is set to 20 Pa; 8 Pa is usual" */
  readonly what: string;
  /** What it does to so many fans. */
  readonly effect: (fans: string) => string;
  readonly isFan: (fans: FanRows, i: number) => boolean;
}

/** An edition is seldom in force for longer: common practice. */
const mostYears = 10;

/** Settings that let more pass than the usual ones, with the fans that only they let pass. */
export const checkUnusualSettings: Check = (job, report, { byRow }) => {
  const { fans } = job;
  for (const { key, what, effect, isFan } of looseIn(job, byRow)) {
    const passed = rowsOf(fans).filter((i) => fans && isFan(fans, i)).length;
    tell(key, {
      what,
      effect:
        passed === 0 ? "No fan is judged otherwise for it." : `${effect(count(passed, "fan"))}.`,
      mend: "Say on the sheet why this is right for the job, or set the usual value.",
    });
  }
  const old = oldEdition(job);
  if (old) tell("edition", old);

  function tell(key: string, words: { what: string; effect: string; mend: string }): void {
    const at = job.fit.settings.get(key);
    if (at) report.add("setting-unusual", at.sheet, cellName(at.row, at.col), at.row, "", words);
  }
};

const rowsOf = (fans: FanRows | undefined) =>
  Array.from({ length: fans?.length ?? 0 }, (_, i) => i);

function looseIn({ settings, boxes }: Job, byRow: CheckContext["byRow"]): Loose[] {
  const { low, high, interval, constant, proofLimit, system } = settings;
  const set = (name: string, own: number, unit: string, usual: number) =>
    `the ${name} is set to ${significant(own)}${unit}; ${significant(usual)}${unit} is usual`;
  const window = (n: string) =>
    `It lets ${n} pass whose reading the usual one would have taken again`;
  const between = (a: number, b: number) => (fans: FanRows, i: number) => {
    const pressure = Math.abs(fans.pressure[i] ?? Number.NaN);
    return pressure >= Math.min(a, b) && pressure <= Math.max(a, b) && pressure !== b;
  };
  const usual = usualConstant[system];
  const found: (Loose | false)[] = [
    high > usualWindow.high && {
      key: "high",
      what: set("highest pressure", high, " Pa", usualWindow.high),
      effect: window,
      isFan: between(high, usualWindow.high),
    },
    low < usualWindow.low && {
      key: "low",
      what: set("lowest pressure", low, " Pa", usualWindow.low),
      effect: window,
      isFan: between(low, usualWindow.low),
    },
    interval > usualInterval && {
      key: "interval",
      what: set("time between box checks", interval, " days", usualInterval),
      effect: (n) =>
        `It lets ${n} pass that the usual one calls read too long after the check of the box`,
      isFan: (fans, i) => {
        const days = rowsOfOpenings(byRow)[i]?.map(
          (r) => fans.table.number("date", i) - (boxes?.table.number("checked", r) ?? 0),
        );
        return days?.some((each) => each > usualInterval && each <= interval) === true;
      },
    },
    proofLimit > usualRequirement && {
      key: "proofLimit",
      what: set("proof required of a box", proofLimit, " %", usualRequirement),
      effect: (n) => `What ${n} rest on need not be as good as is usual`,
      isFan: (fans, i) => fans.isMeasured(i) && fans.table.text("box", i) !== "",
    },
    Math.abs(constant / usual - 1) > 0.005 && {
      key: "constant",
      what: set("flow constant", constant, "", usual),
      effect: (n) => `By it alone the verdict of ${n} is another`,
      isFan: (fans, i) => {
        if (fans.constant[i] !== constant) return false;
        const [flow, required] = [fans.flow[i] ?? Number.NaN, fans.requiredNumber(i)];
        return flow >= required !== (flow * usual) / constant >= required;
      },
    },
  ];
  return found.filter((each) => each !== false);
}

/** An edition much older, or younger, than the day from which it is in force, or than the readings. */
function oldEdition(job: Job) {
  const { edition, adopted } = job.settings;
  const days = (job.fans?.table.numbers("date") ?? [])
    .filter((day) => day > 0)
    .sort((a, b) => a - b);
  const day = adopted ?? days[Math.floor(days.length / 2)];
  if (!edition || day === undefined) return undefined;
  const year = Number(isoDay(day, job.file.dateOffset ?? 0).slice(0, 4));
  const own = yearOf(edition.id);
  const latest = latestOf(edition.id, year);
  const isOld = own > 0 && year - own > mostYears && latest !== undefined && latest !== edition.id;
  // That a day is before its edition is told at the day.
  if (!isOld && (adopted !== undefined || own <= year + 1)) return undefined;
  const rows = latest ? underEdition(job, findEdition(latest)) : [];
  const turned = rows.reduce((sum, row) => sum + row.turnsShort.length + row.turnsMet.length, 0);
  const unlike = rows
    .filter(({ change }) => change === "unlike")
    .reduce((sum, row) => sum + row.count, 0);
  const both = [
    `${turned === 0 ? "no verdict" : count(turned, "verdict")} would turn`,
    ...(unlike > 0 ? [`${unlike} fans or dwellings have a rate in only one of the two`] : []),
  ];
  return {
    what: isOld
      ? `the edition is ${edition.id}, ${year - own} years older than ${adopted === undefined ? "the readings" : "the day from which it is in force"}; ${latest} had been printed by then`
      : `the edition is ${edition.id}, which was not printed yet when the fans were read in ${year}`,
    effect: latest
      ? `Under ${latest} ${both.join(" and ")}.`
      : "The rates may not be those that applied.",
    mend: "Compare it with the day of the permit: say on the Job sheet from which day it is in force, or name the one that applies.",
  };
}
