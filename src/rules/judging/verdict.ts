import { type Column, columns, plain } from "../../algebra";
import { InputError } from "../../cells";
import { acceptanceLimit, margin, meetsCode, type Source } from "../../formulas";
import { chanceMet } from "../../spread";
import { usualGuardChance } from "../constants";
import { ifGiven, namedIfGiven, needed, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { sixDigits } from "../contract/say";
import type { NativeForm } from "../native/native";
import { digits, wrong } from "../native/text";
import { type RangeStatus, rangeStatuses, type Verdict } from "../outcomes";
import { chanceNeed, freedomGiven, nativeChance, spreadNeed } from "./chance";

/** Guarded acceptance (JCGM 106:2012, 8.3.2): what a flow may be off by, and how sure to be. */
export interface Guard {
  /** Standard spread of each flow, in its unit, 0 or more; NaN leaves that row to simple acceptance. */
  readonly spread: Column;
  /** The chance that has to be reached, from 0.5 to below 1; the usual one where NaN. */
  readonly chance: Column;
  /** Degrees of freedom behind each spread; infinite where NaN or left out. */
  readonly freedom?: Column;
}

/** The required rate where the edition asks nothing of such a room: "none", as ROOM_RATE gives it. */
const noRate = Number.NEGATIVE_INFINITY;

/** Rounding may put a flow at the very acceptance limit a last digit below its chance. */
const roundOff = 1e-12;

/**
 * Whether each flow meets its required rate.
 *
 * Without a guard by simple acceptance: no tolerance below the rate. With one, a flow "meets" when
 * the chance that it truly meets the rate reaches the guard's, is "short" when the chance that it
 * does not reaches it, and else is "too close to call".
 *
 * Where the rate is "none", any reading or none is "none required". A NaN flow is "not measured"; a
 * range status other than "in range" is "out of range"; undefined where only the required rate is unknown.
 */
export function verdictColumn(
  flow: Column,
  required: Column,
  length: number,
  status?: readonly (RangeStatus | undefined)[],
  guard?: Guard,
): (Verdict | undefined)[] {
  const meets = columns(meetsCode, { Q: flow, R: required }, length);
  const out = new Array<Verdict | undefined>(length);
  for (let i = 0; i < length; i++) {
    const q = at(flow, i);
    const r = at(required, i);
    const u = guard ? at(guard.spread, i) : Number.NaN;
    if (r === noRate) out[i] = "none required";
    else if (Number.isNaN(q)) out[i] = "not measured";
    else if (isOutside(status?.[i])) out[i] = "out of range";
    else if (Number.isNaN(r)) continue;
    else if (guard && !Number.isNaN(u)) {
      const freedom = at(guard.freedom ?? Number.NaN, i);
      const chance = chanceMet(q, u, r, Number.isNaN(freedom) ? Number.POSITIVE_INFINITY : freedom);
      out[i] = guarded(chance, at(guard.chance, i));
    } else out[i] = meets[i] ? "meets" : "short";
  }
  return out;
}

const isOutside = (status: RangeStatus | undefined) =>
  status !== undefined && status !== "in range";

function guarded(chance: number, given: number): Verdict {
  const asked = Number.isNaN(given) ? usualGuardChance : given;
  if (chance >= asked - roundOff) return "meets";
  return chance <= 1 - asked + roundOff ? "short" : "too close to call";
}

function at(column: Column, i: number): number {
  return typeof column === "number" ? column : (column[i] as number);
}

/** The range status of this name; undefined for blank. Throws with the known ones. */
export function readStatus(text: string): RangeStatus | undefined {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return undefined;
  const found = rangeStatuses.find((status) => status === wanted);
  if (!found)
    throw new InputError(`unknown range status "${text}": use one of ${rangeStatuses.join(", ")}`);
  return found;
}

export const rule = ruleOf({
  id: "VERDICT",
  title: "Whether a flow meets its required rate",
  arguments: {
    flow: ifGiven(),
    required: { ...needed(), words: { none: noRate } },
    status: optional(namedIfGiven(readStatus)),
    spread: optional(ifGiven(spreadNeed)),
    chance: optional(ifGiven(chanceNeed)),
    freedom: freedomGiven,
  },
  together: [["flow", "required"]],
  formulas: [margin],
  work(given) {
    const { flow, required, status, spread = Number.NaN, chance = usualGuardChance } = given;
    const { freedom = Number.POSITIVE_INFINITY } = given;
    const plainly = (gives: Verdict, words: string) => ({
      gives,
      why: () => ({ words: [words], sources: [meetsCode.source] }),
    });
    if (required === noRate)
      return plainly("none required", "the edition asks no rate of such a room");
    if (flow === undefined) return plainly("not measured", "there is no flow to judge");
    const [verdict = ""] = verdictColumn(flow, required, 1, [status], { spread, chance, freedom });
    if (verdict === "out of range")
      return plainly(verdict, `a reading that is ${status} carries no verdict`);
    const judged = (words: string, source: Source) => ({
      sums: [{ formula: margin, given: { Q: flow, R: required } }],
      words: [words],
      sources: [source],
    });
    return {
      gives: verdict,
      why: () =>
        Number.isNaN(spread)
          ? judged("simple acceptance: no tolerance below the rate", meetsCode.source)
          : judged(
              `guarded acceptance: with a spread of ${sixDigits(spread)} the chance that the rate is met is ${sixDigits(chanceMet(flow, spread, required, freedom))}, where ${chance} is asked for either way`,
              acceptanceLimit.source,
            ),
    };
  },
  atOnce(call) {
    const of = (name: string) => call.column(name);
    const guard = { spread: of("spread"), chance: of("chance"), freedom: of("freedom") };
    const known = verdictColumn(of("flow"), of("required"), call.length, undefined, guard);
    if (!call.has("status")) return (i) => known[i];
    return (i) => {
      const isSeen = known[i] !== "not measured" && known[i] !== "none required";
      return isOutside(readStatus(call.text("status", i))) && isSeen ? "out of range" : known[i];
    };
  },
});

export const native: NativeForm = (native) => {
  const [Q, R] = [native.near("flow"), native.near("required")];
  const status = native.text("status");
  if (native.has("status")) {
    const known = ["", ...rangeStatuses].map((word) => `${status}="${word}"`).join(",");
    native.check(`IF(OR(${known}),0,${wrong("status: not a range status")})`);
  }
  const asked = native.or("chance", digits(usualGuardChance));
  const met = nativeChance(native);
  const guarded = `IF(${met}>=${asked}-${roundOff},"meets",IF(${met}<=1-${asked}+${roundOff},"short","too close to call"))`;
  const simple = `IF(${plain(meetsCode, { Q, R })}=1,"meets","short")`;
  const judged = native.has("spread")
    ? `IF(${native.given("spread")},${guarded},${simple})`
    : simple;
  const ranged = native.has("status")
    ? `IF(AND(${status}<>"",${status}<>"in range"),"out of range",${judged})`
    : judged;
  return `IF(TRIM(${R})="none","none required",IF(ISNUMBER(${Q}),${ranged},"not measured"))`;
};

export const help: Help = {
  computes: [
    "A flow equal to the rate meets it; one below it is short, however little.",
    'With a spread the flow has to be sure enough. It meets the rate where the chance that it truly does reaches the one asked for, is short where the chance that it does not reaches it, and is "too close to call" between the two: the guarded acceptance of JCGM 106. Without a spread, or where it is blank, a flow is taken as it reads.',
    'Without a flow the answer is "not measured". With a range status other than "in range" it is "out of range": the reading cannot carry a verdict. A required rate of "none", as ROOM_RATE gives it where nothing is asked, is "none required" whatever was read.',
  ],
  result:
    '"meets", "short", "too close to call", "out of range", "not measured" or "none required".',
  formulas: [meetsCode, margin, acceptanceLimit],
  examples: [
    {
      words: "49.6 cfm in range, where 50 cfm are asked for. There is no tolerance below the rate.",
      args: [49.6, 50, "in range"],
      gives: "short",
    },
    {
      words:
        "51.36 cfm with a standard spread of 1.47 cfm, where 50 cfm are asked for: more likely met than not, but not by 95 %.",
      args: [51.36, 50, "in range", 1.47],
      gives: "too close to call",
    },
  ],
  troubles: [
    { when: "There is a flow but no required rate.", args: [49.6, ""] },
    { when: "The range status is none of the known ones.", args: [49.6, 50, "good"] },
    { when: "The chance was given in percent.", args: [51.36, 50, "in range", 1.47, 95] },
  ],
  related: ["RANGE_STATUS", "ROOM_RATE", "FLOW_SPREAD", "CHANCE_MET"],
};
