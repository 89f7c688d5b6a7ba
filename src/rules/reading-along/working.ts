import { InputError } from "../../cells";
import type { OtherArgument } from "../contract/argument";
import { CellFault, plainCell, toMatrix } from "../contract/cell";
import { callText, explainRule } from "../contract/explain";
import { CallArguments } from "../contract/given";
import type { Help } from "../contract/help";
import { problem } from "../contract/problem";
import { type Rule, type Rules, rule as ruleOf } from "../contract/rule";

const word: OtherArgument = { kind: "word" };
const rest: OtherArgument = { kind: "rest" };

export const rule = ruleOf({
  id: "WORKING",
  title: "How another call comes to its result",
  arguments: { name: word, values: rest },
  work: ({ name }) => ({
    gives: [],
    why: () => ({ words: [`the sum of ${String(name)}, as text`], sources: [] }),
  }),
  table([name, values], rules) {
    const plain = plainCell(toMatrix(name)[0]?.[0]);
    if (plain instanceof CellFault) throw plain;
    if (plain === null || plain === 0) return [[""]];
    const args = (values ?? []) as readonly unknown[];
    const own = named(String(plain), rules);
    const takes = Object.keys(own.arguments);
    if (args.length > takes.length)
      throw new InputError(`${args.length} values for ${own.id}: it takes ${takes.join(", ")}`);
    const { height, width } = new CallArguments(own.arguments, args, own.together);
    return Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (_, col) => textOf(own, args, { row, col })),
    );
  },
});

function named(name: string, rules: Rules): Rule {
  const id = name
    .trim()
    .toUpperCase()
    .replace(/^FANROW\./, "");
  const found = Object.hasOwn(rules, id) ? rules[id] : undefined;
  if (found) return found;
  throw new InputError(`unknown function "${id}": use one of ${Object.keys(rules).join(", ")}`);
}

/** What is not there yet leaves the cell blank; what will not do says why. */
function textOf(own: Rule, args: readonly unknown[], at: { row: number; col: number }) {
  const call = explainRule(own, args, at);
  if (!call.problem) return callText(call);
  return call.problem.reason === "blank"
    ? ""
    : problem(call.code ?? "#VALUE!", call.problem.message);
}

export const help: Help = {
  computes: [
    "Write it beside a result that a reader will ask about: give the name of the function and the same arguments, and the cell holds the sum as text: the formula in symbols, the same with the numbers, the result with its unit, and the source with how far it has been traced.",
    "Ranges give a text a row, as the function itself gives a result a row. What is not yet typed leaves the text blank.",
  ],
  result: "One text for each result of the function.",
  source: {
    work: "the formulas and rules of the function named",
    clause: "",
    mark: "by definition",
  },
  examples: [
    {
      words: "The sum behind =FANROW.FLOW(24, 4), as text.",
      args: ["FLOW", 24, 4],
      gives:
        "Q = K · A · √ΔP = 1.07 · 24 · √4 = 51.36 cfm — orifice equation Q = C·A·√(2·ΔP/ρ), ISO 5167-2:2003, 4 (incompressible, no approach velocity) (two sources)",
    },
  ],
  troubles: [
    { when: "The name is no function of ours.", args: ["AIRFLOW", 24, 4] },
    { when: "There are more values than the function takes.", args: ["ROUND_AREA", 4, 2] },
    { when: "A number was typed as text.", args: ["FLOW", 24, "4 Pa"] },
  ],
  related: ["FLOW", "ROOM_RATE", "VERDICT"],
};
