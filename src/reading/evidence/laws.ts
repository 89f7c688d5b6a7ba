import type { Book } from "../formulas/book";
import { type Atom, keyOf, type Power, type Product, raised, times } from "../formulas/law";
import { type FormulaTests, testsOf } from "../formulas/tests";
import type { Sample, Section } from "../tables/section";

/** Lines that belong together by flow = constant × area × √|pressure|. */
export interface Core {
  readonly flow: number;
  readonly pressure: number;
  readonly area: number | undefined;
  readonly diameter: number | undefined;
  readonly opening: number | undefined;
  readonly constant: number | undefined;
  /** Lines of repeated readings whose mean is the pressure. */
  readonly repeats: readonly number[];
  readonly by: "formulas" | "physics" | "chart";
  /** Share of the rows that follow it. */
  readonly share: number;
}

/** The most frequent copied formula of each line, with how often it stands there. */
export interface LineFormula {
  readonly section: Section;
  readonly tests: FormulaTests;
  readonly count: number;
  readonly product: Product | undefined;
}

export function lineFormulas(
  sample: readonly Sample[],
  lines: readonly number[],
  book: Book,
): Map<number, LineFormula> {
  const found = new Map<number, LineFormula>();
  for (const line of lines) {
    const counts = new Map<string, { tests: FormulaTests; section: Section; count: number }>();
    for (const { section, row } of sample) {
      const col = line + section.shift;
      const shape = section.cells.has(row, col) ? section.cells.shape(row, col) : undefined;
      if (!shape) continue;
      const tests = testsOf(shape, section.cells, row, col, book);
      const key = tests.product
        ? [...tests.product.powers]
            .map(([name, { exponent }]) => `${shiftKey(name, section.shift)}^${exponent}`)
            .sort()
            .join()
        : `#${section.cells.grid.name}${shape.id}`;
      const known = counts.get(key);
      if (known) known.count++;
      else counts.set(key, { tests, section, count: 1 });
    }
    let best: { tests: FormulaTests; section: Section; count: number } | undefined;
    for (const entry of counts.values()) if (!best || entry.count > best.count) best = entry;
    if (!best) continue;
    const { product } = best.tests;
    found.set(line, { ...best, product: product && shifted(product, best.section.shift) });
  }
  return found;
}

function shiftKey(key: string, shift: number): string {
  return shift === 0 ? key : key.replace(/\d+/g, (digits) => String(Number(digits) - shift));
}

function shifted(product: Product, shift: number): Product {
  if (shift === 0) return product;
  const move = (atom: Atom): Atom =>
    atom.kind === "line"
      ? { kind: "line", line: atom.line - shift }
      : atom.kind === "look-up"
        ? { kind: "look-up", keys: atom.keys.map((key) => key - shift) }
        : { kind: atom.kind, lines: atom.lines.map((line) => line - shift) };
  const powers = [...product.powers.values()].map(({ atom, exponent }) => ({
    atom: move(atom),
    exponent,
  }));
  return { ...product, powers: new Map(powers.map((power) => [keyOf(power.atom), power])) };
}

/** Puts the formulas of helper lines in their place, down to what is typed. */
export function expand(
  product: Product,
  formulas: ReadonlyMap<number, LineFormula>,
  seen: readonly number[] = [],
): Product {
  if (seen.length > 5) return product;
  let full: Product = { ...product, powers: new Map() };
  for (const power of product.powers.values()) {
    const { atom, exponent } = power;
    const inner =
      atom.kind === "line" && !seen.includes(atom.line)
        ? formulas.get(atom.line)?.product
        : undefined;
    const part = inner?.powers.size
      ? raised(expand(inner, formulas, [...seen, (atom as { line: number }).line]), exponent)
      : { constant: 1, powers: new Map([[keyOf(atom), power]]), fixed: [], rounding: undefined };
    full = times(full, part);
  }
  return full;
}

const isHalf = ({ exponent }: Power) => Math.abs(exponent - 0.5) < 1e-9;
const isOne = ({ exponent }: Power) => Math.abs(exponent - 1) < 1e-9;
const isTwo = ({ exponent }: Power) => Math.abs(exponent - 2) < 1e-9;

/** What the values of a line say of it. */
interface LineLooks {
  readonly isText: (line: number) => boolean;
  /** Nearly the same small number throughout, as a constant is that has a line of its own. */
  readonly isConstant: (line: number) => boolean;
}

/** The laws that formulas state. */
export function coresByFormula(
  formulas: ReadonlyMap<number, LineFormula>,
  looks: LineLooks,
  looked: number,
): Core[] {
  const cores: Core[] = [];
  for (const [flow, { product, count }] of formulas) {
    if (!product || count < Math.min(2, looked) || count < looked * 0.05) continue;
    const chart = chartOf(flow, product, looks, count / looked);
    if (chart) cores.push(chart);
    const full = expand(product, formulas, [flow]);
    const root = [...full.powers.values()].find(
      (power) => isHalf(power) && power.atom.kind !== "look-up",
    );
    if (!root) continue;
    const direct = [...product.powers.values()];
    if (
      direct.length === 1 &&
      isOne(direct[0]!) &&
      direct[0]!.atom.kind === "line" &&
      formulas.has(direct[0]!.atom.line)
    )
      continue;
    // The root alone, without an area, is a helper on the way to a flow.
    if (full.powers.size < 2) continue;
    cores.push(coreOf(flow, product, root, formulas, count / looked, looks));
  }
  return cores;
}

function coreOf(
  flow: number,
  product: Product,
  root: Power,
  formulas: ReadonlyMap<number, LineFormula>,
  share: number,
  { isText, isConstant }: LineLooks,
): Core {
  const own = [...product.powers.values()].find(isHalf);
  const rootLines =
    root.atom.kind === "line"
      ? [root.atom.line]
      : root.atom.kind === "look-up"
        ? []
        : root.atom.lines;
  let pressure = rootLines[0]!;
  const repeats: readonly number[] = rootLines.length > 1 ? rootLines : [];
  // The mean of several readings is the pressure where it has a line of its own.
  const means = repeats.length
    ? [...formulas].find(
        ([, { product: inner }]) =>
          inner &&
          [...inner.powers.values()].some(({ atom }) => keyOf(atom) === keyOf(root.atom)) &&
          inner.powers.size === 1 &&
          isOne([...inner.powers.values()][0]!),
      )
    : undefined;
  if (means) pressure = means[0];
  else if (own?.atom.kind === "line" && repeats.length) pressure = own.atom.line;
  const holdsRoot = (line: number): boolean => {
    const inner = formulas.get(line)?.product;
    return (
      line === pressure ||
      rootLines.includes(line) ||
      (inner
        ? [...expand(inner, formulas, [line]).powers.keys()].includes(keyOf(root.atom))
        : false)
    );
  };
  let [area, diameter, opening, constantLine]: (number | undefined)[] = [];
  const look = (power: Power, depth: number): void => {
    const { atom } = power;
    if (atom.kind === "look-up")
      opening ??= atom.keys.find(isText) ?? atom.keys.find((key) => !holdsRoot(key));
    else if (atom.kind === "sum" && isOne(power)) area ??= atom.lines[0];
    else if (atom.kind !== "line") return;
    else if (isTwo(power)) diameter ??= atom.line;
    else if (isOne(power) && holdsRoot(atom.line) && depth < 4)
      for (const inner of formulas.get(atom.line)?.product?.powers.values() ?? [])
        look(inner, depth + 1);
    else if (isOne(power) && isConstant(atom.line)) constantLine ??= atom.line;
    else if (isOne(power)) area ??= atom.line;
  };
  for (const power of product.powers.values()) look(power, 0);
  if (area !== undefined) {
    const inner = formulas.get(area)?.product;
    const parts = inner ? [...inner.powers.values()] : [];
    for (const power of parts) {
      if (power.atom.kind === "look-up")
        opening ??= power.atom.keys.find(isText) ?? power.atom.keys[0];
      else if (power.atom.kind === "line" && isTwo(power)) diameter ??= power.atom.line;
      // Typed in another unit and converted: the typed line is the one that a person keeps.
      else if (power.atom.kind === "line" && isOne(power) && parts.length === 1)
        area = power.atom.line;
    }
  }
  return {
    flow,
    pressure,
    area,
    diameter,
    opening,
    constant: constantLine,
    repeats,
    by: "formulas",
    share,
  };
}

/** A flow looked up by an opening's name and a pressure. */
function chartOf(
  flow: number,
  product: Product,
  { isText }: LineLooks,
  share: number,
): Core | undefined {
  const [power] = [...product.powers.values()];
  if (product.powers.size !== 1 || power?.atom.kind !== "look-up" || power.atom.keys.length !== 2)
    return undefined;
  const opening = power.atom.keys.find(isText);
  const pressure = power.atom.keys.find((key) => !isText(key));
  if (opening === undefined || pressure === undefined) return undefined;
  return {
    flow,
    pressure,
    area: undefined,
    diameter: undefined,
    opening,
    constant: undefined,
    repeats: [],
    by: "chart",
    share,
  };
}
