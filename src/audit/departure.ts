import { translateFormulaToA1 } from "@borgar/fx/xlsx";
import { cellName, sheetPrefix } from "../cells";
import { type FindingKind, listed } from "../job";
import type { End, Part, Reach, Shape } from "./formula-shape";

/** How a formula departs from those of the rows beside it. */
interface Departure {
  readonly kind: FindingKind;
  readonly what: string;
}

/** Tells what one formula does that the others of its column do not; both as at the same cell. */
export function departureOf(odd: Shape, sound: Shape, row: number, col: number): Departure {
  const [unknown] = odd.unknown.filter((name) => !sound.unknown.includes(name));
  if (unknown) return { kind: "formula-unknown-function", what: `there is no function ${unknown}` };
  const [foreign] = odd.foreign.filter((name) => !sound.foreign.includes(name));
  if (foreign)
    return {
      kind: "formula-other-workbook",
      what: `the formula reads ${foreign}, another workbook`,
    };
  const shown = (part: Part) => shownPart(part, row, col);
  if (isSameForm(odd.parts, sound.parts)) {
    const pairs = odd.parts.flatMap((part, i): [Part, Part][] => {
      const other = sound.parts[i] as Part;
      return part.text === other.text ? [] : [[part, other]];
    });
    const kinds = new Set(pairs.map(([a, b]) => kindOfPair(a, b)));
    const [first] = pairs;
    const [kind = "formula-differs"] = kinds;
    if (first && kinds.size === 1)
      return { kind, what: wordsOf(kind, shown(first[0]), shown(first[1])) };
    if (first)
      return {
        kind: "formula-differs",
        what: `${listed(pairs.map(([a]) => shown(a)))} stand where the rows beside it have ${listed(pairs.map(([, b]) => shown(b)))}`,
      };
  }
  const added = minus(odd.parts, sound.parts);
  const lost = minus(sound.parts, odd.parts);
  const functions = [...added, ...lost].filter(({ kind }) => kind === "function");
  if (functions.length > 0) {
    const named = (parts: readonly Part[]) =>
      listed(parts.filter(({ kind }) => kind === "function").map(({ text }) => text));
    return { kind: "formula-other-function", what: functionWords(named(added), named(lost)) };
  }
  const literals = added.filter(({ kind }) => kind === "literal");
  const onlyConstants = added.every(({ kind }) => kind === "literal" || kind === "sign");
  if (literals.length > 0 && onlyConstants)
    return {
      kind: "formula-other-constant",
      what: `the formula has ${listed(literals.map(({ text }) => text))}, which the rows beside it have not`,
    };
  return {
    kind: "formula-differs",
    what: "the formula is built otherwise than in the rows beside it",
  };
}

/** The same words in the same order, but for what references, constants and names say. */
function isSameForm(a: readonly Part[], b: readonly Part[]): boolean {
  return (
    a.length === b.length &&
    a.every((part, i) => {
      const other = b[i] as Part;
      if (part.kind === "sign" || other.kind === "sign") return part.text === other.text;
      return (part.kind === "function") === (other.kind === "function");
    })
  );
}

function kindOfPair(odd: Part, sound: Part): FindingKind {
  if (odd.kind === "function") return "formula-other-function";
  if (odd.kind === "literal") return "formula-other-constant";
  if (!odd.reach || !sound.reach) return "formula-differs";
  return kindOfReach(odd.reach, sound.reach);
}

function kindOfReach(odd: Reach, sound: Reach): FindingKind {
  if (odd.sheet.toLowerCase() !== sound.sheet.toLowerCase()) return "formula-differs";
  if (!odd.rows !== !sound.rows || !odd.cols !== !sound.cols) return "formula-differs";
  const ends = (reach: Reach): End[] => [...(reach.rows ?? []), ...(reach.cols ?? [])];
  const theirs = ends(sound);
  if (ends(odd).some(({ fixed }, i) => fixed !== theirs[i]?.fixed))
    return "formula-fixed-reference";
  const [rows, cols] = [change(odd.rows, sound.rows), change(odd.cols, sound.cols)];
  if (rows === "shorter" && (cols === "same" || cols === "shorter")) return "formula-short-range";
  if (rows === "same" && cols === "shorter") return "formula-short-range";
  return rows === "moved" && cols === "same" ? "formula-other-row" : "formula-differs";
}

type Ends = readonly [End, End] | undefined;

function change(odd: Ends, sound: Ends): "same" | "moved" | "shorter" | "other" {
  if (!odd || !sound) return "same";
  const [first, last] = [odd[0].at - sound[0].at, odd[1].at - sound[1].at];
  if (first === 0 && last === 0) return "same";
  if (first === last) return "moved";
  return first >= 0 && last <= 0 ? "shorter" : "other";
}

function wordsOf(kind: FindingKind, own: string, others: string): string {
  return kind === "formula-fixed-reference"
    ? `${own} stands where the rows beside it would have ${others}`
    : `the formula uses ${own} where the rows beside it would use ${others}`;
}

function functionWords(own: string, others: string): string {
  if (own === "") return `the formula lacks ${others}, which the rows beside it use`;
  return others === ""
    ? `the formula uses ${own}, which the rows beside it do not`
    : `the formula uses ${own} where the rows beside it use ${others}`;
}

/** A part as it reads in this cell's formula. */
function shownPart({ kind, text, reach }: Part, row: number, col: number): string {
  if (kind !== "reference") return text;
  const cells = text.slice(text.lastIndexOf("!") + 1);
  const here = translateFormulaToA1(cells, cellName(row, col), { wrapEdges: false });
  if (!reach || reach.sheet === "") return here;
  return sheetPrefix(reach.sheet) + here;
}

/** The parts of one formula that another lacks, each as often as it does. */
function minus(a: readonly Part[], b: readonly Part[]): Part[] {
  const left = new Map<string, number>();
  const key = ({ kind, text }: Part) => `${kind} ${text}`;
  for (const part of b) left.set(key(part), (left.get(key(part)) ?? 0) + 1);
  return a.filter((part) => {
    const count = left.get(key(part)) ?? 0;
    left.set(key(part), count - 1);
    return count <= 0;
  });
}
