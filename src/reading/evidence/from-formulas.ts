import type { FormulaTests } from "../formulas/tests";
import { cellWord } from "../text/vocabulary";
import { type Core, expand, type LineFormula } from "./laws";
import type { Ledger } from "./ledger";
import type { LineStats } from "./stats";

/** What compares a flow with what is required, found in the formulas of a line. */
export interface Judgement {
  readonly line: number;
  readonly flow: number | undefined;
  readonly required: number | undefined;
  readonly number: number | undefined;
  readonly pass: string | undefined;
  readonly fail: string | undefined;
  /** Passing is being less: no test of an exhaust fan. */
  readonly lessIsPass: boolean;
}

/** What a law says of its lines. */
export function addCores(cores: readonly Core[], ledger: Ledger): void {
  for (const core of cores) {
    const kind = core.by === "physics" ? "physics" : "formulas";
    const weight = (core.by === "physics" ? 6 : 7) * Math.max(0.6, Math.min(1, core.share * 1.2));
    const how =
      core.by === "physics"
        ? "the values follow flow = constant × area × √pressure"
        : core.by === "chart"
          ? "the flow is looked up by opening and pressure"
          : "the formula is constant × area × √pressure";
    ledger.add(core.flow, "flow", kind, weight, how);
    ledger.add(core.pressure, "pressure", kind, weight, `${how}: under the root`);
    if (core.area !== undefined)
      ledger.add(core.area, "area", kind, weight - 0.5, `${how}: the area`);
    if (core.diameter !== undefined)
      ledger.add(core.diameter, "diameter", kind, weight - 0.5, `${how}: squared`);
    if (core.opening !== undefined)
      ledger.add(core.opening, "opening", kind, weight - 1, `${how}: names the opening`);
    if (core.constant !== undefined)
      ledger.add(core.constant, "constant", kind, weight - 1, `${how}: the constant`);
    for (const line of core.repeats)
      if (line !== core.pressure) ledger.add(line, "other", kind, 4, "its mean is the pressure");
  }
}

/** What comparisons, look-ups and words compared say of the lines that they name. */
export function addFormulas(
  formulas: ReadonlyMap<number, LineFormula>,
  stats: ReadonlyMap<number, LineStats>,
  cores: readonly Core[],
  ledger: Ledger,
): Judgement[] {
  const flows = new Set(cores.map(({ flow }) => flow));
  const judged: Judgement[] = [];
  for (const [line, { tests, section, product }] of formulas) {
    const at = (other: number) => other - section.shift;
    const judgement = judgementOf(line, tests, at, flows, formulas);
    if (judgement) {
      judged.push(judgement);
      if (judgement.pass ?? judgement.fail)
        ledger.add(
          line,
          "verdict",
          "formulas",
          5,
          "its formula compares two amounts and gives a word",
        );
      if (judgement.flow !== undefined)
        ledger.add(
          judgement.flow,
          "flow",
          "formulas",
          flows.has(judgement.flow) ? 1.5 : 2,
          "it is compared with what is required",
        );
      if (judgement.required !== undefined)
        ledger.add(judgement.required, "required", "formulas", 4.5, "the flow is compared with it");
    } else if (tests.texts.length >= 2 && (stats.get(line)?.verdicts ?? 0) > 0.5)
      ledger.add(line, "verdict", "formulas", 1.5, "its formula gives words");
    addCompared(line, tests, at, ledger, stats);
    if (product && !flows.has(line)) addAliases(line, product.powers.size, formulas, flows, ledger);
  }
  return judged;
}

function judgementOf(
  line: number,
  tests: FormulaTests,
  at: (line: number) => number,
  flows: ReadonlySet<number>,
  formulas: ReadonlyMap<number, LineFormula>,
): Judgement | undefined {
  for (const { operator, left, right, number, yes, no } of tests.comparisons) {
    if (yes === undefined && no === undefined && tests.comparisons.length > 1) continue;
    let [a, b] = [left.map(at), right.map(at)];
    if (a.length > 1 || b.length > 1) [a, b] = [a.slice(0, 1), b.slice(0, 1)];
    // A ratio compared with one is its parts compared.
    const ratio = a.length === 1 && b.length === 0 ? ratioOf(a[0]!, formulas) : undefined;
    if (ratio) [a, b] = [[ratio.over], [ratio.under]];
    if (a.length === 0 && b.length === 0) continue;
    const first = flowFirst(a[0], b[0], flows, operator);
    const [flow, required] = first ? [a[0], b[0]] : [b[0], a[0]];
    const more = operator.startsWith(">") === first;
    const [pass, fail] = more ? [yes, no] : [no, yes];
    const passIsFail =
      pass !== undefined &&
      cellWord(pass).verdict === "fail" &&
      (fail === undefined || cellWord(fail).verdict !== "fail");
    if (yes === undefined && no === undefined)
      return { line, flow, required, number, pass, fail, lessIsPass: false };
    return {
      line,
      flow,
      required,
      number: b.length && a.length ? undefined : number,
      pass: passIsFail ? fail : pass,
      fail: passIsFail ? pass : fail,
      lessIsPass: passIsFail,
    };
  }
  return undefined;
}

/** Whether the left side is the flow: known from a law, or else the first named in "flow >= required". */
function flowFirst(
  a: number | undefined,
  b: number | undefined,
  flows: ReadonlySet<number>,
  _operator: string,
): boolean {
  if (a !== undefined && flows.has(a)) return true;
  if (b !== undefined && flows.has(b)) return false;
  return a !== undefined;
}

function ratioOf(
  line: number,
  formulas: ReadonlyMap<number, LineFormula>,
): { over: number; under: number } | undefined {
  const product = formulas.get(line)?.product;
  if (product?.powers.size !== 2) return undefined;
  const parts = [...product.powers.values()];
  const over = parts.find(({ atom, exponent }) => exponent === 1 && atom.kind === "line");
  const under = parts.find(({ atom, exponent }) => exponent === -1 && atom.kind === "line");
  return over?.atom.kind === "line" && under?.atom.kind === "line"
    ? { over: over.atom.line, under: under.atom.line }
    : undefined;
}

/** Words compared, and lines looked up: rooms and duties of a rule for the required rate. */
function addCompared(
  line: number,
  tests: FormulaTests,
  at: (line: number) => number,
  ledger: Ledger,
  stats: ReadonlyMap<number, LineStats>,
): void {
  if (tests.numbers.length > 0 && tests.words.size > 0) {
    ledger.add(line, "required", "formulas", 3.5, "its formula gives a rate by words");
    for (const [other, words] of tests.words) {
      const known = [...words].map(cellWord);
      const rooms = known.filter(({ room }) => room).length;
      const duties = known.filter(({ duty }) => duty).length;
      if (rooms + duties === 0)
        for (const role of ["room", "duty"] as const)
          ledger.add(at(other), role, "formulas", 1.5, "a rate is chosen by its words");
      else
        ledger.add(
          at(other),
          rooms >= duties ? "room" : "duty",
          "formulas",
          2.5,
          "a rate is chosen by its words",
        );
    }
  }
  for (const [other, words] of tests.words)
    if (
      tests.numbers.length === 0 &&
      [...words].some((word) => cellWord(word).verdict) &&
      (stats.get(at(other))?.verdicts ?? 0) > 0.5
    )
      ledger.add(at(other), "verdict", "formulas", 1, "its words are counted");
  if (
    tests.keys.length &&
    tests.product &&
    [...tests.product.powers.values()].every(({ atom }) => atom.kind === "look-up")
  )
    ledger.add(line, "required", "formulas", 0.5, "it is looked up in a list");
}

/** A line made from others that is no law: a ratio, a difference, a copy of a flow. */
function addAliases(
  line: number,
  size: number,
  formulas: ReadonlyMap<number, LineFormula>,
  flows: ReadonlySet<number>,
  ledger: Ledger,
): void {
  const parts = [...(formulas.get(line)?.product?.powers.values() ?? [])];
  if (
    size === 1 &&
    parts[0]!.exponent === 1 &&
    parts[0]!.atom.kind === "line" &&
    flows.has(parts[0]!.atom.line)
  ) {
    ledger.add(line, "flow", "formulas", 2, "it is made from the flow");
    ledger.add(line, "other", "formulas", 3, "it is made from the flow");
  } else if (parts.some(({ exponent }) => exponent === -1))
    ledger.add(line, "other", "formulas", 4, "it is a ratio");
  else if (
    parts.some(({ exponent }) => exponent === 0.5) &&
    expand(formulas.get(line)!.product!, formulas, [line]).powers.size === 1
  )
    ledger.add(line, "other", "formulas", 4, "it is a root on the way to the flow");
}
