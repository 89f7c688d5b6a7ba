import { kept, shown } from "../../../cells";
import { plainName } from "../../fit";
import type { FanRows } from "../../read";
import { eachFan } from "../each";
import { inSheetUnit } from "./sheet-unit";

/** So many rows, and this share of them, make a rule of the firm's. */
const leastRows = 4;
const leastShare = 0.8;

interface Rule {
  readonly rate: number;
  readonly words: string;
}

/** Required rates that depart from what the firm asks for the same room and duty elsewhere. */
export const checkFirmRates = eachFan((fans, { firm }) => {
  if (!firm || !fans.table.has("required")) return undefined;
  const { table } = fans;
  const required = table.numbers("required");
  const byRating = ruleByRating(fans, required);
  // A firm that keeps no duty asks by the room alone.
  const duty = table.has("duty") ? ["duty"] : [];
  const rulesOf = (room: string) =>
    rulesBy(
      required,
      (i) => keyOf([room, ...duty].map((key) => table.text(key, i))),
      ["room", ...duty].join(" and "),
    );
  const [byWords, byKinds] = [rulesOf("room"), rulesOf("roomKind")];
  return (i, say) => {
    const own = required[i] as number;
    if (!(own > 0) || !table.has("required", i)) return;
    const rule = byRating ? byRating(i) : (byWords(i) ?? byKinds(i));
    if (!rule || Math.abs(rule.rate - own) <= 1e-6 * own) return;
    const asked = inSheetUnit(table, "required", i, rule.rate);
    say("required-differs", "required", {
      what: `${inSheetUnit(table, "required", i, own)} is required here where ${rule.words} ${asked}`,
      effect: "The fan is judged by another rate than its like.",
      mend: `Use ${asked}, or say in the row why another rate holds.`,
    });
  };
});

function keyOf(texts: readonly string[]): string {
  return texts.some((text) => text === "") ? "" : texts.map(plainName).join("\u0000");
}

/** What most rows of the same key ask; undefined where there are too few, or no one rate. */
function rulesBy(
  required: Float64Array,
  key: (i: number) => string,
  like: string,
): (i: number) => Rule | undefined {
  const groups = new Map<string, Map<number, number>>();
  required.forEach((rate, i) => {
    if (!(rate > 0) || key(i) === "") return;
    const rates = kept(groups, key(i), () => new Map());
    rates.set(rate, (rates.get(rate) ?? 0) + 1);
  });
  return (i) => {
    const rates = [...(groups.get(key(i)) ?? [])];
    const rows = rates.reduce((sum, [, count]) => sum + count, 0);
    const [rate, count] = rates.sort((a, b) => b[1] - a[1])[0] ?? [0, 0];
    return count >= Math.max(leastRows, leastShare * rows)
      ? { rate, words: `${count} other rows of this ${like} ask` }
      : undefined;
  };
}

/** A share of the rating, to a step, where nearly all rows follow it. */
function ruleByRating(fans: FanRows, required: Float64Array) {
  const { table } = fans;
  if (!table.has("rated")) return undefined;
  const rated = table.numbers("rated");
  const rows = [...required.keys()].filter((i) => (required[i] ?? 0) > 0 && (rated[i] ?? 0) > 0);
  if (rows.length < 2 * leastRows) return undefined;
  for (let percent = 50; percent <= 100; percent += 5)
    for (const step of [5, 1, 10]) {
      const rate = (i: number) =>
        Math.round((percent * (rated[i] as number)) / 100 / step + 1e-9) * step;
      const follow = rows.filter((i) => Math.abs(rate(i) - (required[i] as number)) < 1e-6).length;
      if (follow < 0.9 * rows.length) continue;
      return (i: number): Rule | undefined =>
        (rated[i] as number) > 0
          ? {
              rate: rate(i),
              words: `${shown(percent)} % of the rating, to the nearest ${step}, is`,
            }
          : undefined;
    }
  return undefined;
}
