import * as library from "@formulajs/formulajs";
import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import { Area, type Value } from "../area";
import { numberText } from "../coerce";
import { Matrix, Unsupported } from "../values";
import { spend } from "../work";
import type { Natives } from "./natives";
import { matrixOf } from "./read";

const known = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!", "#REF!", "#NAME?"]);

/**
 * The functions taken from the formula library as they are, by signature; those it has wrong stand in
 * the other files of this folder. A name before"="is one that the library knows as the name after it.
 */
const taken: Readonly<Record<string, string>> = {
  n: "FISHER FISHERINV GAMMA GAMMALN GAMMALN.PRECISE GAUSS PHI",
  "n i": "CHISQ.INV.RT CHIINV=CHISQ.INV.RT",
  "n n": "BITAND BITOR BITXOR BITLSHIFT BITRSHIFT",
  "n n n": "STANDARDIZE SLN RRI GAMMA.INV GAMMAINV=GAMMA.INV LOGNORM.INV LOGINV=LOGNORM.INV",
  "n n n n": "SYD ISPMT",
  "n n b": "EXPON.DIST EXPONDIST=EXPON.DIST",
  "i n b": "POISSON.DIST POISSON=POISSON.DIST",
  "n n n b": "WEIBULL.DIST WEIBULL=WEIBULL.DIST GAMMA.DIST GAMMADIST=GAMMA.DIST LOGNORM.DIST",
  "n n n n? n?": "PV FV PMT NPER DB DDB",
  "n n n n n? n?": "IPMT PPMT",
  "n n n n? n? n?": "RATE",
  "i i i i b": "HYPGEOM.DIST",
  "n r": "FVSCHEDULE",
  "r n n": "MIRR",
  "e r r": "XNPV",
  e: "FACTDOUBLE SQRTPI ERF.PRECISE=ERF ERFC ERFC.PRECISE=ERFC",
  "e e?": "DELTA GESTEP DEC2BIN DEC2HEX DEC2OCT",
  "e e": "BESSELI BESSELJ BESSELK BESSELY DOLLARDE DOLLARFR EFFECT NOMINAL",
  "e e t?": "COMPLEX",
  "e e e e e e": "CUMIPMT CUMPRINC",
  x: "BIN2DEC HEX2DEC OCT2DEC IMAGINARY IMABS IMARGUMENT IMCONJUGATE IMCOS IMCOSH IMCSC IMCSCH IMEXP IMREAL IMSEC IMSECH IMSIN IMSINH IMSQRT",
  "x e?": "BIN2HEX BIN2OCT HEX2BIN HEX2OCT OCT2BIN OCT2HEX",
  "x x": "IMSUB",
  "x n": "IMPOWER",
  "t n": "DECIMAL",
  i: "ROMAN",
  "e e e e?": "COUPDAYS",
  "e e e e e?": "DISC PRICEDISC",
};

/** The same for functions whose result is an array. */
const takenArrays: Readonly<Record<string, string>> = {
  "a a": "MMULT",
  "a+": "HSTACK",
  n: "MUNIT",
  "a n? n?": "TAKE DROP",
  "a n? n? s?": "EXPAND",
};

export function addLibrary(to: Natives): void {
  for (const [signature, names] of Object.entries(taken))
    for (const [name, call] of calls(names)) to.add(name, signature, call as () => CellValue);
  for (const [signature, names] of Object.entries(takenArrays))
    for (const [name, call] of calls(names)) to.addSpreading(name, signature, call as () => Value);
  to.add("IMTAN", "x", (z) => tangent(z, 1)).add("IMCOT", "x", (z) => tangent(z, -1));
}

/** Where the distributions have values; the library answers beyond it too. */
const domains: Readonly<Record<string, (...given: number[]) => boolean>> = {
  "CHISQ.INV.RT": (p, dof) => p! > 0 && p! <= 1 && dof! >= 1,
  "EXPON.DIST": (x, rate) => x! >= 0 && rate! > 0,
  "GAMMA.DIST": (x, a, b) => x! >= 0 && a! > 0 && b! > 0,
  "LOGNORM.DIST": (x, _, sd) => x! > 0 && sd! > 0,
  "LOGNORM.INV": (p, _, sd) => p! > 0 && p! < 1 && sd! > 0,
  "WEIBULL.DIST": (x, a, b) => x! >= 0 && a! > 0 && b! > 0,
  "POISSON.DIST": (k, mean) => k! >= 0 && mean! >= 0,
  DECIMAL: (text, radix) => [...String(text)].every((digit) => Number.parseInt(digit, radix) >= 0),
  IPMT: (_, period, periods) => period! >= 1 && period! <= periods!,
  PPMT: (_, period, periods) => period! >= 1 && period! <= periods!,
  BESSELJ: (_, order) => order! >= 0,
  FACTDOUBLE: (x) => x! >= -1,
  STANDARDIZE: (_, __, sd) => sd! > 0,
  XNPV: (rate) => rate! > 0,
  RATE: (periods) => periods! > 0,
  RRI: (periods, from) => periods! > 0 && from! > 0,
};

const complex = /^IM(?!ABS|AGINARY|ARGUMENT|REAL)/;

/** What the library works out in as many steps as an argument says, or one within another. */
const stepping =
  /^(BESSEL|CHI|COMBIN|CUM|DB$|DDB|FACT|GAMMA(\.|DIST|INV)|HYPGEOM|PERMUT|POISSON|VDB)/;
const mostSteps = 5_000;

type Call = (...args: Value[]) => Value;

function* calls(names: string): Iterable<[string, Call]> {
  for (const each of names.split(" ")) {
    const [name = "", source = name] = each.split("=");
    let found: unknown = library;
    for (const key of source.split(".")) found = (found as Record<string, unknown>)[key];
    const apply = found as (...args: unknown[]) => unknown;
    const isWhole = name.startsWith("DEC2");
    const isText = /^(IM|COMPLEX|[A-Z]{3}2)/.test(name);
    const call: Call = (...args) => {
      const given = args.map((arg, i) =>
        libraryForm(isWhole && i === 0 ? Math.trunc(arg as number) : arg),
      );
      const error = given.find(isCellError);
      if (error) return error;
      // A power or root of 0 has no direction to turn.
      if (/^IM(POWER|SQRT)$/.test(name) && Number(given[0]) === 0) return "0";
      // Products of matrices go over each row for each column.
      if (/^M(MULT|INVERSE|DETERM)/.test(name)) spend(given.flat(2).length ** 1.5);
      if (stepping.test(name) && given.some((arg) => Math.abs(arg as number) >= mostSteps))
        throw new Unsupported(`${name} of so large a number`);
      if (domains[source]?.(...(given as number[])) === false) return errors.num;
      const sides = given.map((arg) => /[ij]$/.exec(String(arg))?.[0]).filter((side) => side);
      if (name === "IMSUB" && new Set(sides).size > 1) return errors.num;
      const result = apply(...given);
      // What is no complex number is #NUM!; a complex number is a text, whole or not.
      if (name.startsWith("IM") && result instanceof Error && result.message !== "#DIV/0!")
        return errors.num;
      if (/^(TAKE|DROP)$/.test(name) && result instanceof Error) return errors.calc;
      if (typeof result === "number" && complex.test(name)) return numberText(result);
      return isText && typeof result === "string" ? shown(result) : resultOf(result);
    };
    yield [name, call];
  }
}

/** The tangent of a complex number, or with `sign` -1 its cotangent. */
function tangent(z: string, sign: number): CellValue {
  const [x, y] = [library.IMREAL(z), library.IMAGINARY(z)].map((part) => 2 * Number(part)) as [
    number,
    number,
  ];
  const below = Math.cosh(y) + sign * Math.cos(x);
  if (below === 0 || Number.isNaN(below)) return errors.num;
  return shown(
    library.COMPLEX(
      Math.sin(x) / below,
      (sign * Math.sinh(y)) / below,
      z.endsWith("j") ? "j" : "i",
    ) as string,
  );
}

/** Complex numbers and digits of other bases as a cell shows them: 15 digits, capitals, no 1 before i. */
function shown(text: string): string {
  if (!/[ij]$/.test(text)) return text.toUpperCase();
  return text
    .replace(/\d[\d.]*(e[+-]?\d+)?/g, (digits) => numberText(Number(digits)))
    .replace(/(^|[+-])1(?=[ij]$)/, "$1");
}

/** An argument as the library takes it: ranges as rows of cells; or the first error in it. */
function libraryForm(value: Value): unknown {
  if (!(value instanceof Area || value instanceof Matrix)) return value ?? undefined;
  const { rows, cols, data } = matrixOf(value) as Matrix;
  return (
    data.find(isCellError) ??
    Array.from({ length: rows }, (_, r) => data.slice(r * cols, (r + 1) * cols))
  );
}

function resultOf(result: unknown): Value {
  if (!Array.isArray(result)) return fromLibrary(result);
  const rows = (Array.isArray(result[0]) ? result : [result]) as unknown[][];
  return Matrix.of(rows.length, rows[0]?.length ?? 0, (r, c) => fromLibrary(rows[r]![c]));
}

/** A result of the formula library as a value: its errors are Error objects with the code as text. */
export function fromLibrary(result: unknown): CellValue {
  if (typeof result === "number") return Number.isFinite(result) ? result : errors.num;
  if (typeof result === "string" || typeof result === "boolean") return result;
  const code = result instanceof Error ? result.message : "";
  return known.has(code) ? ({ error: code } satisfies CellError) : errors.value;
}
