import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { committedMade, generateMade, requireFreshTrees } from "../../src/algebra/make/generate";
import { parse } from "../../src/algebra/make/parser";
import { differentiate } from "../../src/algebra/make/slope";
import { fromPostfix, toPostfix } from "../../src/algebra/postfix";
import { formulas } from "../../src/formulas";

const root = `${import.meta.dirname}/../..`;

describe("the trees that stand ready", () => {
  it("are what the formula texts give (npm run formulas makes them anew)", () => {
    expect(() => requireFreshTrees()).not.toThrow();
  });

  it("are called stale, with the command that renews them, where a text has changed", () => {
    const [first, ...others] = formulas;
    const changed = { ...first!, text: `${first!.text} + 1` };
    const generated = generateMade([changed, ...others]);
    expect(() => requireFreshTrees(committedMade, generated)).toThrow("npm run formulas");
  });

  it.each(formulas.map((formula) => [formula.id, formula] as const))(
    "give the same trees for %s as its texts parsed and differentiated",
    (_, formula) => {
      for (const { text } of [...(formula.steps ?? []), formula]) {
        const tree = parse(text);
        expect(fromPostfix(toPostfix(tree))).toEqual(tree);
      }
      for (const { name } of formula.symbols) {
        const slope = differentiate(formula, name);
        expect(fromPostfix(toPostfix(slope))).toEqual(slope);
      }
    },
  );
});

describe("a tree on one line", () => {
  it.each([
    ["-x ^ 2", "x 2 ^ neg"],
    ["a >= b ? sqrt(a) : 0.5 * pi", "a b >= a sqrt 0.5 pi * ?:"],
    ["a - (b - c)", "a b c - -"],
    ["1e-7 * a", "1e-7 a *"],
  ])("writes %s as %s and reads it back", (text, line) => {
    expect(toPostfix(parse(text))).toBe(line);
    expect(fromPostfix(line)).toEqual(parse(text));
  });

  it.each(["", "a b", "a +", "neg", "a b ?:"])("refuses %j, which is no tree", (line) => {
    expect(() => fromPostfix(line)).toThrow("not a formula's tree");
  });

  it("refuses a symbol whose name means something else there", () => {
    expect(() => toPostfix({ kind: "symbol", name: "neg" })).toThrow("neg");
    expect(() => toPostfix({ kind: "symbol", name: "sqrt" })).toThrow("sqrt");
  });
});

/** Runs code of ours in a bundle as it ships, without what the tests set up. */
async function shipped(code: string): Promise<{ inputs: string[]; run(): Promise<unknown> }> {
  const { outputFiles, metafile } = await build({
    stdin: { contents: code, resolveDir: `${root}/src/algebra`, loader: "ts" },
    bundle: true,
    write: false,
    metafile: true,
    format: "esm",
  });
  const source = Buffer.from(outputFiles[0]!.contents).toString("base64");
  return {
    inputs: Object.keys(metafile.inputs),
    run: async () => (await import(`data:text/javascript;base64,${source}`)).result,
  };
}

describe("a bundle with the four readers", () => {
  it("holds no mathjs, and reads every formula and its slopes", async () => {
    const bundle = await shipped(`
      import { columns, plain, requireTrees, slopes, typeset } from ".";
      import { formulas } from "../formulas";
      requireTrees(formulas);
      export const result = formulas.map((formula) => {
        typeset(formula);
        return formula.symbols.map(({ name }) => slopes(formula, name, formula.example.given, 1)[0]);
      });
      columns; plain;
    `);
    expect(bundle.inputs.filter((file) => file.includes("mathjs"))).toEqual([]);
    const values = (await bundle.run()) as number[][];
    expect(values.length).toBe(formulas.length);
    expect(values.flat().every(Number.isFinite)).toBe(true);
  });

  it.each(["requireTrees([formula])", 'slopes(formula, "P", formula.example.given, 1)'])(
    "refuses a formula without a tree in %s, and names the command that makes one",
    async (call) => {
      const bundle = await shipped(`
        import { requireTrees, slopes } from ".";
        import { flowFromPressure } from "../formulas";
        const formula = { ...flowFromPressure, text: "K * A * P" };
        export const result = ${call};
      `);
      await expect(bundle.run()).rejects.toThrow(
        'the formula text "K * A * P" has no tree in src/algebra/made: run npm run formulas',
      );
    },
  );
});
