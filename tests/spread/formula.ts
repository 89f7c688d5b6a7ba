import type { Formula, Step } from "../../src/formulas";

/** A formula of a published example, which is no part of the trade and so not in the registry. */
export function formulaOf(
  id: string,
  text: string,
  symbols: readonly string[],
  steps: readonly (readonly [name: string, text: string])[] = [],
): Formula {
  return {
    id,
    title: id,
    result: { name: "y", shown: "y", meaning: "result", unit: "1" },
    symbols: symbols.map((name) => ({
      name,
      shown: name,
      meaning: name,
      unit: "1",
      valid: [0, 1],
    })),
    steps: steps.map(
      ([name, step]): Step => ({ name, shown: name, meaning: name, unit: "1", text: step }),
    ),
    text,
    validity: "",
    source: { work: "the test that uses it", clause: "", mark: "by definition" },
  };
}
