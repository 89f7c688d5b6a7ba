import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Formula, formulas } from "../../formulas";
import { symbolsOf } from "../expression";
import { toPostfix } from "../postfix";
import { wholeText } from "../whole-text";
import { parse } from "./parser";
import { differentiate } from "./slope";

/** The generated files, in `src/algebra/made`. */
export const madeFiles = ["trees.json", "slopes.json"] as const;
export type MadeFile = (typeof madeFiles)[number];

export const madePath = (file: MadeFile): string => join(import.meta.dirname, "../made", file);

/** The texts of the generated files, from the texts of the formulas. */
export function generateMade(of: readonly Formula[] = formulas): Record<MadeFile, string> {
  const trees: Record<string, string> = {};
  const slopes: Record<string, Record<string, string>> = {};
  for (const formula of of) {
    const texts = [...(formula.steps ?? []).map((step) => step.text), formula.text];
    for (const text of texts) trees[text] ??= toPostfix(parse(text));
    slopes[wholeText(formula)] ??= slopesOf(formula, texts);
  }
  return { "trees.json": written(trees), "slopes.json": written(slopes) };
}

function slopesOf(formula: Formula, texts: readonly string[]): Record<string, string> {
  const used = new Set(texts.flatMap((text) => [...symbolsOf(parse(text))]));
  const names = formula.symbols.map(({ name }) => name).filter((name) => used.has(name));
  return Object.fromEntries(
    names.map((name) => [name, toPostfix(differentiate(formula, name))] as const),
  );
}

/** By text: the order of the registry is that of a module's exports, which loaders see differently. */
function written(content: Readonly<Record<string, unknown>>): string {
  const sorted = Object.entries(content).sort(([a], [b]) => (a < b ? -1 : 1));
  return `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`;
}

/** A generated file as it is committed. */
export const committedMade = (file: MadeFile): string => readFileSync(madePath(file), "utf8");

/** Throws where a committed file is not what the formula texts give today. */
export function requireFreshTrees(
  committed: (file: MadeFile) => string = committedMade,
  generated: Readonly<Record<MadeFile, string>> = generateMade(),
): void {
  for (const file of madeFiles)
    if (committed(file) !== generated[file])
      throw new Error(
        `src/algebra/made/${file} is stale: it is not what the texts in src/formulas give; run npm run formulas`,
      );
}
