import { parseR1C1Range, type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { worksheetFunctions } from "../../functions";
import { kept } from "../cells";

/** One end of a line reference: an offset from the formula's own cell, or a fixed index from 0. */
export interface End {
  readonly at: number;
  readonly fixed: boolean;
}

/** A reference to cells as a formula makes it. Whole columns have no rows, whole rows no columns. */
export interface Reach {
  /** "" for the formula's own sheet. */
  readonly sheet: string;
  readonly rows: readonly [first: End, last: End] | undefined;
  readonly cols: readonly [first: End, last: End] | undefined;
}

export type PartKind = "function" | "reference" | "literal" | "name" | "sign";

/** One word of a formula, spelled the same whatever program wrote it. */
export interface Part {
  readonly kind: PartKind;
  readonly text: string;
  readonly reach?: Reach;
}

/** A formula in relative form, taken apart. Formulas copied down share one. */
export interface Shape {
  readonly id: number;
  readonly parts: readonly Part[];
  /** Names spelled like a function of ours that is none. */
  readonly unknown: readonly string[];
  /** The other workbooks that it reads. */
  readonly foreign: readonly string[];
  /** Some range lies in the formula's own column, as a total's does. */
  readonly sumsOwnColumn: boolean;
}

const ids = new Set(worksheetFunctions.map(({ id }) => id.toUpperCase()));
const ownPrefix = /^(?:_xldudf_FANROW_|FANROW\.)/i;
const newerPrefix = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/** Characters of formulas that are taken apart, each of which fills some hundred bytes. */
const mostRead = 1_000_000;

/** What stands for the formulas beyond them. */
export const unread: Shape = { id: 0, parts: [], unknown: [], foreign: [], sumsOwnColumn: false };

/** Every shape met, by its text in relative form and by what it says. */
export class Shapes {
  private readonly byPattern = new Map<string, Shape>();
  private readonly byKey = new Map<string, Shape>();
  readonly all: Shape[] = [];
  private left = mostRead;

  /** Whether formulas were met that are not taken apart; then none can be compared. */
  get isSpent(): boolean {
    return this.left < 0;
  }

  /** The shape of a pattern such as "RC[-1]*R2C5", and the length of its formula. */
  of(pattern: string, length: number): Shape {
    return kept(this.byPattern, pattern, () => this.make(pattern, length));
  }

  private make(pattern: string, length: number): Shape {
    this.left -= length;
    if (this.isSpent) return unread;
    const { parts, unknown, foreign } = takeApart(pattern);
    const key = parts.map(({ kind, text }) => `${kind[0]}${text}`).join("\u0001");
    const known = this.byKey.get(key);
    if (known) return known;
    const sumsOwnColumn = parts.some(({ reach }) => reach !== undefined && isOwnColumn(reach));
    const shape = { id: this.all.length, parts, unknown, foreign, sumsOwnColumn };
    this.all.push(shape);
    this.byKey.set(key, shape);
    return shape;
  }
}

function isOwnColumn({ sheet, rows, cols }: Reach): boolean {
  if (sheet !== "" || !rows || !cols) return false;
  const [left, right] = cols;
  const here = !left.fixed && left.at === 0 && !right.fixed && right.at === 0;
  const [first, last] = rows;
  return here && (first.fixed !== last.fixed || first.at !== last.at);
}

function takeApart(pattern: string): Pick<Shape, "parts" | "unknown" | "foreign"> {
  const tokens = tokenize(pattern, { r1c1: true, mergeRefs: true, withLocation: false }).filter(
    ({ type }) => type !== tokenTypes.WHITESPACE,
  );
  const parts: Part[] = [];
  const unknown: string[] = [];
  const foreign: string[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i] as Token;
    if (/^context/.test(token.type) && tokens[i + 1]?.value === "!") {
      // An index before one of our functions names the file it was once loaded from.
      if (!ownPrefix.test(tokens[i + 2]?.value ?? "")) {
        foreign.push(token.value);
        parts.push({ kind: "name", text: token.value.toLowerCase() });
      }
      i++;
      continue;
    }
    const part = partOf(token);
    parts.push(part);
    if (part.kind === "function" && ownPrefix.test(token.value)) {
      const id = token.value.replace(ownPrefix, "");
      if (!ids.has(id.toUpperCase())) unknown.push(`FANROW.${id}`);
    } else if (part.kind === "reference" || part.kind === "name") {
      if (part.text.includes("[") && isForeign(token.value)) foreign.push(bookOf(token.value));
    }
  }
  return { parts, unknown, foreign };
}

/** Whether a reference carries a workbook before its sheet, such as '[Old.xlsx]Fans'!A1. */
function isForeign(text: string): boolean {
  const mark = text.lastIndexOf("!");
  return mark > 0 && /\[[^\]]+\]/.test(text.slice(0, mark));
}

/** "[Old.xlsx]Fans" in '[Old.xlsx]Fans'!A1. */
function bookOf(text: string): string {
  return text.slice(0, text.lastIndexOf("!")).replace(/^'|'$/g, "").replaceAll("''", "'");
}

function partOf({ type, value }: Token): Part {
  switch (type) {
    case tokenTypes.FUNCTION: {
      const bare = value.replace(newerPrefix, "");
      const own = ownPrefix.test(bare) ? `FANROW.${bare.replace(ownPrefix, "")}` : bare;
      return { kind: "function", text: own.toUpperCase() };
    }
    case tokenTypes.REF_RANGE:
    case tokenTypes.REF_BEAM:
    case tokenTypes.REF_TERNARY: {
      const reach = reachOf(value);
      if (!reach) return { kind: "reference", text: value.toUpperCase() };
      const cells = value.slice(value.lastIndexOf("!") + 1);
      return { kind: "reference", text: `${reach.sheet}!${cells}`.toUpperCase(), reach };
    }
    case tokenTypes.NUMBER:
    case tokenTypes.STRING:
    case tokenTypes.BOOLEAN:
      return { kind: "literal", text: value };
    case tokenTypes.ERROR:
    case tokenTypes.REF_NAMED:
    case tokenTypes.REF_STRUCT:
      return { kind: "name", text: value.replace(newerPrefix, "").toLowerCase() };
    default:
      return { kind: "sign", text: value };
  }
}

function reachOf(text: string): Reach | undefined {
  const mark = text.lastIndexOf("!");
  const sheet = text.slice(0, Math.max(0, mark)).replace(/^'|'$/g, "").replaceAll("''", "'");
  const range = parseR1C1Range(text.slice(mark + 1));
  if (!range) return undefined;
  const { r0, c0, r1, c1, $r0, $c0, $r1, $c1 } = range;
  const rows: Reach["rows"] =
    typeof r0 === "number"
      ? [
          { at: r0, fixed: $r0 === true },
          { at: r1 ?? r0, fixed: ($r1 ?? $r0) === true },
        ]
      : undefined;
  const cols: Reach["cols"] =
    typeof c0 === "number"
      ? [
          { at: c0, fixed: $c0 === true },
          { at: c1 ?? c0, fixed: ($c1 ?? $c0) === true },
        ]
      : undefined;
  return { sheet, rows, cols };
}
