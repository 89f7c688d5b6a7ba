import { InputError, shown } from "../../cells";
import {
  attempt,
  type DwellingFacts,
  factsOf,
  flowUnit,
  type Job,
  rateWhileOn,
  readYesNo,
  unitOf,
  valueIn,
} from "../../job";
import { percentOf } from "./in-words";
import { fanName } from "./rows-at";
import { type Outcome, outcomeOf, statedIn } from "./said";

/** One step of a dwelling's account. */
export interface AccountStep {
  readonly title: string;
  /** A word on it where it needs one; else "". */
  readonly note: string;
  readonly outcome: Outcome;
}

/** What one room lacks. */
export interface RoomDeficit {
  readonly fan: string;
  readonly outcome: Outcome;
}

export interface AccountView {
  readonly title: string;
  readonly given: readonly { readonly name: string; readonly value: string }[];
  readonly required: AccountStep;
  /** Each fan's deficit and their sum; undefined where the sheets do not ask for deficits. */
  readonly deficits: { readonly rooms: readonly RoomDeficit[]; readonly sum: string } | undefined;
  /** Raised rate, infiltration, what fans must move: those that apply. */
  readonly further: readonly AccountStep[];
  /** "Continuous fans move 52.2 cfm together." */
  readonly continuous: string;
  /** What it comes to, or why that cannot be said. */
  readonly result: { readonly words: string; readonly isShort: boolean | undefined };
}

/** How the flow that a dwelling's fans must move comes about, and what is still missing of it. */
export function accountView(job: Job, i: number): AccountView {
  const table = job.tables.dwellings as NonNullable<Job["tables"]["dwellings"]>;
  const { system } = job.settings;
  const account = factsOf(job).dwellings.at(i);
  const number = (key: string) => (table.has(key) ? table.number(key, i) : Number.NaN);
  const ofSystem = account.ofSystem && {
    title: "Rate of the system",
    note: "By whether it is balanced and ducted.",
    outcome: outcomeOf(account.ofSystem, job),
  };
  const raised = account.raised && {
    title: "Rate with deficits",
    note: "",
    outcome: outcomeOf(account.raised, job),
  };
  const infiltration = account.infiltration && {
    title: "Infiltration",
    note: infiltrationNote(job, i),
    outcome: outcomeOf(account.infiltration, job),
  };
  const needed = account.infiltration && {
    title: "Fans must move",
    note: "",
    outcome: outcomeOf(account.needed, job),
  };
  return {
    title: `Dwelling ${table.text("dwelling", i)}`,
    given: [
      { name: "Floor area", value: numberOr(number("floor"), unitOf("floor", system)) },
      { name: "Bedrooms", value: numberOr(number("bedrooms"), "") },
      ...statedIn(table, i, ["windows", "others", "wind", "baseline"]),
    ],
    required: { title: "Required", note: "", outcome: outcomeOf(account.required, job) },
    deficits: account.deficits && deficitsOf(job, account, account.deficits),
    further: [ofSystem, raised, infiltration, needed].filter((step) => step !== undefined),
    ...comesTo(job, account),
  };
}

/** What a fan that runs only a part of the time must move in place of a continuous one. */
export function whileOn(job: Job, i: number, share: string, hours: string): Outcome {
  const { needed } = factsOf(job).dwellings.at(i);
  if ("problem" in needed) return outcomeOf(needed, job);
  const part = typed(share);
  const cycle = hours.trim() === "" ? undefined : typed(hours);
  if (!(part > 0 && part <= 100))
    return { problem: "Type a share of the time above 0 and up to 100 %, such as 50." };
  if (cycle !== undefined && !(cycle > 0))
    return { problem: "Type the hours from one start to the next, or leave them blank." };
  const outcome = outcomeOf(
    attempt(() => {
      const { edition } = job.settings;
      if (!edition) throw new InputError("no edition");
      if (needed.value.rate === 0)
        throw new InputError("nothing is left for a fan to move: it need not run");
      return rateWhileOn(edition, needed.value.rate, part / 100, cycle);
    }),
    job,
  );
  return "problem" in outcome ? { problem: inPlainWords(outcome.problem) } : outcome;
}

/** The rule names its arguments as the worksheet function does; the screen has words for them. */
function inPlainWords(problem: string): string {
  return problem
    .replace(/^RunShare (\S+):/, (_, share) => `${percentOf(Number(share))} of the time:`)
    .replace(/^CycleHours (\S+):/, "A cycle of $1 h:");
}

function deficitsOf(
  job: Job,
  dwelling: DwellingFacts,
  { sum, unsure }: NonNullable<DwellingFacts["deficits"]>,
): NonNullable<AccountView["deficits"]> {
  const { fans, settings } = job;
  const rooms: RoomDeficit[] = dwelling.fans.flatMap((row) => {
    const deficit = factsOf(job).fans?.deficit(row);
    const fan = fans?.isAbsent(row) ? `${fanName(job, row)} (no fan)` : fanName(job, row);
    return deficit ? [{ fan, outcome: outcomeOf(deficit, job) }] : [];
  });
  const total = `${shown(sum)} ${flowUnit(settings.system)}`;
  return { rooms, sum: unsure ? `${total} so far: not every room's can be told` : total };
}

function infiltrationNote(job: Job, i: number): string {
  const { dwellings } = job.tables;
  const exposed = dwellings?.has("exposed") ? dwellings.number("exposed", i) : Number.NaN;
  const balanced = valueIn(
    attempt(() => readYesNo("balanced", dwellings?.text("balanced", i) ?? "")),
  );
  return [
    Number.isNaN(exposed) ? "" : `Share of the envelope that faces outside: ${shown(exposed)}.`,
    balanced ? "The system is balanced." : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

function comesTo(job: Job, dwelling: DwellingFacts): Pick<AccountView, "continuous" | "result"> {
  const { needed, neededFlow, deficits, provided, continuousFans, isUnsure, missing } = dwelling;
  const unit = flowUnit(job.settings.system);
  if (continuousFans === 0)
    return {
      continuous: "No continuous fan of this dwelling is on the sheet.",
      result: {
        words: "What ventilates the dwelling stands elsewhere, or nothing does.",
        isShort: undefined,
      },
    };
  const asFar = isUnsure ? " as far as it was measured" : "";
  const balance = factsOf(job).dwellings.balance(dwelling);
  const continuous =
    dwelling.supplied > 0
      ? `Supply moves ${shown(dwelling.supplied)} and exhaust ${shown(dwelling.exhausted)} ${unit}${asFar}: the larger counts (common practice)${balance ? `; ${balance.value}: ${balance.working}` : ""}.`
      : `${continuousFans === 1 ? "Its continuous fan moves" : `Its ${continuousFans} continuous fans together move`} ${shown(provided)} ${unit}${asFar}.`;
  const result = (words: string, isShort?: boolean) => ({ continuous, result: { words, isShort } });
  if ("problem" in needed)
    return result("What is missing cannot be said before what fans must move is known.");
  if (isUnsure)
    return result("What is missing cannot be said: a fan's flow or duty is not usable yet.");
  if (deficits?.unsure)
    return result("What is missing cannot be said: a room's deficit is not known yet.");
  return missing > 0
    ? result(`Still missing: ${shown(missing)} ${unit}.`, true)
    : result(`Nothing is missing: ${shown(provided - neededFlow)} ${unit} to spare.`, false);
}

function numberOr(value: number, unit: string): string {
  return Number.isNaN(value) ? "blank" : `${shown(value)} ${unit}`.trim();
}

/** A number with a point or a comma for the decimals; NaN for anything else. */
function typed(text: string): number {
  const trimmed = text.trim().replace(",", ".");
  return trimmed === "" ? Number.NaN : Number(trimmed);
}
