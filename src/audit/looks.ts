import { format, isDateFormat } from "numfmt";
import { cellName, onceForText, shown } from "../cells";
import type { Audit } from "./audit";
import { held, ofColumn, type SheetScan } from "./sheet-scan";

/** Numbers of the job that a reader sees as another number, or does not see: each told once a sheet. */
export function auditLooks(audit: Audit, scan: SheetScan): void {
  const { name } = scan.grid;
  if (!audit.places.isOfJob(name)) return;
  const all = scan.columns.flatMap((column) => odd(scan, column));
  const unseen = all.filter(({ text }) => text === undefined);
  tell(
    all.filter(({ text }) => text !== undefined),
    "number-shown-other",
    ({ text }) => (text === "" ? "shows nothing" : `shows ${text}`),
    {
      effect: "Who reads or prints the sheet sees another number than the one that is worked with.",
      mend: "Give the cells a plain number format, such as 0.0.",
    },
  );
  tell(unseen, "number-unseen", () => "has the colour of its ground", {
    effect: "Who reads or prints the sheet does not see it.",
    mend: "Give the text a colour that shows, or say in the job's notes what the cells are for.",
  });

  function tell(
    cells: LookedAt[],
    kind: "number-shown-other" | "number-unseen",
    does: (cell: LookedAt) => string,
    words: { readonly effect: string; readonly mend: string },
  ): void {
    const [first, ...rest] = cells.sort((a, b) => a.row - b.row || a.col - b.col);
    if (!first) return;
    const more = rest.length === 0 ? "" : `, and so with ${rest.length} more`;
    audit.add(kind, name, first.row, first.col, {
      what: `the cell holds ${shown(first.value)} but ${does(first)}${more}`,
      ...words,
      also: rest.map(({ row, col }) => cellName(row, col)),
    });
  }
}

interface LookedAt {
  readonly row: number;
  readonly col: number;
  readonly value: number;
  /** What it shows; undefined where that is the number, in the colour of its ground. */
  readonly text: string | undefined;
}

const odd = ofColumn(({ grid }, { col, codes }) => {
  const found: LookedAt[] = [];
  for (let row = 0; row < codes.length; row++) {
    if ((codes[row] as number) < 0 && codes[row] !== held.number) continue;
    const value = grid.value(row, col);
    if (typeof value !== "number") continue;
    const text = otherText(grid.numberFormat?.(row, col), value);
    if (text !== undefined || grid.isUnseen?.(row, col)) found.push({ row, col, value, text });
  }
  return found;
});

/** Whether a format can only show the number itself: no digits of its own, nothing hidden, no thousands cut off. */
const isPlain = onceForText(10_000, (code) => {
  const bare = code.replace(/"[^"]*"|\\./g, "");
  const literals = code.match(/"[^"]*"|\\./g) ?? [];
  return (
    isDateFormat(code) ||
    !(
      literals.some((literal) => /\d/.test(literal)) ||
      bare.split(";").some((section) => !/[0#?@]|general/i.test(section)) ||
      /[0#?],+(?![0#?])/.test(bare)
    )
  );
});

/** What a format shows where it is not the number, within what it rounds to; undefined where it is. */
function otherText(code: string | undefined, value: number): string | undefined {
  if (code === undefined || isPlain(code)) return undefined;
  let text: string;
  try {
    text = format(code, value);
  } catch {
    return undefined;
  }
  const bare = text.trim();
  // Zeros are hidden, or shown as a dash, in many a sound sheet.
  if (value === 0 && !/[1-9]/.test(bare)) return undefined;
  return numbersIn(bare).some((number) => isNear(number, Math.abs(value))) ? undefined : bare;
}

const numeral = /\d[\d,]*(?:\.\d+)?(?:E[+-]?\d+)?%?/gi;

function numbersIn(text: string): string[] {
  return text.match(numeral) ?? [];
}

function isNear(numeralText: string, size: number): boolean {
  const isShare = numeralText.endsWith("%");
  const digits = numeralText.replace(/[,%]/g, "");
  const decimals = /\.(\d+)/.exec(digits)?.[1]?.length ?? 0;
  const step = 10 ** -decimals / (isShare ? 100 : 1);
  const number = Number(digits) / (isShare ? 100 : 1);
  return Math.abs(number - size) <= 0.5 * step * (1 + 1e-9) || Math.abs(number / size - 1) < 1e-6;
}
