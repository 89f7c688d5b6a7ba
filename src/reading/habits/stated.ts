import { serialOfDay } from "../../cells";
import type { Cells } from "../cells/cells";
import { isDaySerial } from "../evidence/stats";
import { type Label, labelsOf } from "../tables/labels";
import { bestRun, likeness, plain } from "../text/plain";
import type { Habit } from "../types";
import { type Language, languages, phrasesOf } from "../words";
import { type SignNote, signNotes } from "./sign";
import { type TitleUnits, titleUnits } from "./units";

/** What the workbook as a whole states, gathered once for all its blocks. */
export interface Stated {
  readonly window: Habit<readonly [number, number]> | undefined;
  readonly start: Habit<number> | undefined;
  readonly sign: readonly SignNote[];
  readonly units: TitleUnits;
}

export function gatherStated(sheets: readonly Cells[]): Stated {
  const labels = sheets.flatMap((cells) => labelsOf(cells, (row) => row >= topRows));
  return {
    window: windowOf(labels),
    start: startOf(labels, sheets),
    sign: signNotes(sheets),
    units: titleUnits(sheets),
  };
}

/** Labels stand near the top of a sheet; below it are rows of fans. */
const topRows = 40;

type LabelKey = keyof Language["labels"];
const phrases = new Map<LabelKey, string[][]>(
  (["constant", "start", "lowest", "highest"] as const).map((key) => [
    key,
    languages.flatMap(({ labels }) =>
      phrasesOf(labels[key]).map((phrase) => plain(phrase).split(" ")),
    ),
  ]),
);

function isLabel(text: string, key: LabelKey): boolean {
  const words = plain(text).split(" ");
  return phrases
    .get(key)!
    .some((parts) => words.length <= parts.length + 2 && bestRun(words, parts, likeness) >= 0.85);
}

/** The lowest and highest pressure that the workbook states. */
function windowOf(labels: readonly Label[]): Habit<readonly [number, number]> | undefined {
  const numbers = labels.filter(({ value }) => typeof value === "number");
  const low = numbers.find(({ text }) => isLabel(text, "lowest"));
  const high = numbers.find(({ text }) => isLabel(text, "highest"));
  if (!low || !high || !((low.value as number) < (high.value as number))) return undefined;
  return {
    value: [low.value as number, high.value as number],
    share: 1,
    stated: low.place,
    because: `"${low.text}" and "${high.text}" state it`,
  };
}

/** The day the job began, where a label states it. */
function startOf(labels: readonly Label[], sheets: readonly Cells[]): Habit<number> | undefined {
  for (const label of labels) {
    if (!isLabel(label.text, "start")) continue;
    const day =
      typeof label.value === "number"
        ? isDaySerial(label.value)
          ? label.value
          : undefined
        : dayOf(label.value);
    if (day !== undefined)
      return { value: day, share: 1, stated: label.place, because: `"${label.text}" states it` };
  }
  for (const cells of sheets)
    for (let row = 0; row < Math.min(cells.rows, topRows); row++)
      for (let col = 0; col < Math.min(cells.cols, 12); col++) {
        const text = cells.text(row, col);
        const found = /^([\p{L} .]{4,30})\s+(\d.*)$/u.exec(text.trim());
        if (!found || !isLabel(found[1]!, "start")) continue;
        const day = dayOf(found[2]!);
        if (day !== undefined)
          return {
            value: day,
            share: 1,
            stated: cells.place(row, col),
            because: `"${text}" states it`,
          };
      }
  return undefined;
}

/** The serial number of a day written as text; day first unless the second number cannot be a month. */
function dayOf(text: string): number | undefined {
  const found = /(\d{1,4})\s*[./-]\s*(\d{1,2})\s*[./-]\s*(\d{2,4})/.exec(text);
  if (!found) return undefined;
  const [a, b, c] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const year = a > 31 ? a : c < 100 ? c + 2000 : c;
  let [month, day] = a > 31 ? [b, c] : [b, a];
  if (month > 12) [month, day] = [day, month];
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return serialOfDay({ year, month, day }, false);
}
