import { natures, rolesAndOther } from "../roles";
import type { LineWords } from "./from-words";
import type { Ledger } from "./ledger";
import type { LineStats } from "./stats";

const wrongType = -5;

/** A title over blank cells names no fan. */
const names = new Set<string>(["fan", "dwelling", "room"]);

/** What the values of a line tell: size, scatter, vocabulary, dates, initials. */
export function addValues(
  stats: ReadonlyMap<number, LineStats>,
  words: ReadonlyMap<number, LineWords>,
  ledger: Ledger,
): void {
  const lines = [...stats.keys()];
  for (const [line, s] of stats) {
    const place = lines.indexOf(line) / Math.max(1, lines.length - 1);
    if (s.filled === 0) {
      for (const role of rolesAndOther)
        if (role !== "other" && role !== "note")
          ledger.add(line, role, "values", names.has(role) ? wrongType : -2, "its cells are blank");
      continue;
    }
    addTypes(s, ledger);
    if (s.texts >= s.filled * 0.4) addTexts(s, place, ledger);
    if (s.numeric >= s.filled * 0.5) addNumbers(s, place, words.get(line), ledger);
    if (s.dates >= s.filled * 0.6)
      ledger.add(line, "date", "values", 5 * (s.dates / s.filled), "its values are days");
  }
}

function addTypes(s: LineStats, ledger: Ledger): void {
  const numeric = s.numeric / s.filled;
  const isDate = s.dates >= s.filled * 0.6;
  for (const role of rolesAndOther) {
    const nature = natures[role];
    if (isDate ? nature !== "date" && role !== "other" : nature === "date")
      ledger.add(
        s.line,
        role,
        "values",
        wrongType,
        isDate ? "its values are days" : "its values are no days",
      );
    else if (nature === "number" && numeric < 0.5 && !mayHoldNumbers(s))
      ledger.add(s.line, role, "values", wrongType, "its values are no numbers");
    else if (nature === "text" && numeric > 0.6)
      ledger.add(s.line, role, "values", wrongType, "its values are numbers");
  }
}

/** A flow formula of a template gives "" or an error before a reading is typed. */
function mayHoldNumbers(s: LineStats): boolean {
  return s.formulas >= s.filled * 0.5 && s.texts <= s.filled * 0.3;
}

function addTexts(s: LineStats, place: number, ledger: Ledger): void {
  const { line } = s;
  const kinds = s.words.size;
  const few = kinds <= Math.max(2, Math.min(12, s.texts * 0.6));
  const [longest, known] = [
    [...s.words.keys()].reduce((most, word) => Math.max(most, word.length), 0),
    Math.max(s.rooms, s.duties, s.verdicts),
  ];
  if (s.rooms > 0) ledger.add(line, "room", "values", 4.5 * s.rooms, "its words are rooms");
  if (s.duties > 0 && s.duties >= s.rooms * 0.6)
    ledger.add(line, "duty", "values", 4 * s.duties, "its words are ways of running");
  if (s.verdicts > 0)
    ledger.add(
      line,
      "verdict",
      "values",
      // A lone letter in every row may as well be an opening's name.
      4 * s.verdicts * (few ? 1 : 0.5) * (kinds === 1 && longest === 1 ? 0.4 : 1),
      "its words are verdicts",
    );
  if (s.dwellings > 0 && s.dwellings >= s.rooms * 0.8)
    ledger.add(line, "dwelling", "values", 2.5 * s.dwellings, "its values begin like dwellings");
  if (s.repeats > 0.3 && s.repeats < 0.97 && kinds > 4 && known < 0.5)
    ledger.add(line, "dwelling", "values", 1, "its values stand in runs");
  if (place < 0.15) ledger.add(line, "dwelling", "values", 0.8, "it stands first");
  const initials = share(s, (word) =>
    /^\p{Lu}{1,3}\.?$|^\p{Lu}\p{Ll}{1,7}\.?$|^\p{Ll}{2,3}$|^\p{Lu}\.\s?\p{Lu}/u.test(word),
  );
  if (initials > 0.7 && kinds <= 8 && known < 0.5 && place > 0.05)
    ledger.add(line, "tester", "values", 1.6, "its values are a few names or initials");
  const tags = share(s, (word) => /^\p{L}{1,4}[-. ]?\d{1,3}[a-z]?$/iu.test(word));
  if (kinds === 1 && s.texts > 4)
    ledger.add(line, "fan", "values", -4, "it is the same in every row");
  else if (tags > 0.7 && known < 0.6 && place < 0.6)
    ledger.add(line, "fan", "values", 1.2, "its values are tags");
  const codes = share(s, (word) => /^\p{L}?[-\p{L}\d+& ]{0,6}$/u.test(word));
  if (codes > 0.8 && kinds <= 9 && known < 0.6 && s.texts >= kinds * 1.5)
    ledger.add(line, "opening", "values", 1.2, "its values are a few codes");
  if (s.meanLength > 8 && kinds > s.texts * 0.25 && s.filled < s.looked * 0.6)
    ledger.add(line, "note", "values", 2, "it is filled here and there");
  if (few && known < 0.3) ledger.add(line, "duty", "values", 0.4, "a few words recur");
  if (!few && kinds > 12)
    for (const role of ["duty", "verdict", "tester", "box", "opening"] as const)
      ledger.add(line, role, "values", -1.5, "its words are many");
  if (longest > 45)
    for (const role of ["verdict", "tester", "box", "opening", "duty", "room"] as const)
      ledger.add(line, role, "values", -1.5, "its texts are long");
}

function share(s: LineStats, test: (word: string) => boolean): number {
  let all = 0;
  let passed = 0;
  for (const [word, count] of s.words) {
    all += count;
    if (test(word)) passed += count;
  }
  return all ? passed / all : 0;
}

function addNumbers(
  s: LineStats,
  place: number,
  words: LineWords | undefined,
  ledger: Ledger,
): void {
  const { line, median } = s;
  const unit = words?.unit;
  const [pascals, spread] = [
    unit?.dimension === "pressure" ? median * unit.factor : median,
    s.distinctNumbers,
  ];
  const many = spread > Math.max(4, s.numeric * 0.12);
  const few = spread <= Math.max(3, Math.min(12, s.numeric * 0.35));
  if (pascals >= 0.5 && pascals <= 15 && s.whole < 0.5 && many)
    ledger.add(line, "pressure", "values", 2, "its values have the size of box pressures");
  else if (pascals < 0.2 || pascals > 40)
    ledger.add(line, "pressure", "values", -3, "its values have not the size of box pressures");
  else if (pascals > 18)
    ledger.add(line, "pressure", "values", -1.5, "its values are high for box pressures");
  if (s.negative > 0.6) ledger.add(line, "pressure", "values", 1.5, "its values are negative");
  if (s.negative > 0.6)
    for (const role of ["flow", "area", "required", "rated", "diameter"] as const)
      ledger.add(line, role, "values", -4, "its values are negative");
  if (s.whole < 0.95 || spread > 9)
    ledger.add(line, "box", "values", wrongType, "its numbers are no names of boxes");
  if (few && median >= 3 && median <= 3000)
    ledger.add(line, "area", "values", 1.2, "a few sizes recur");
  if (few && median >= 1.5 && median <= 400)
    ledger.add(line, "diameter", "values", 0.4, "a few sizes recur");
  if (many && median >= 3 && median <= 900)
    ledger.add(line, "flow", "values", 1, "its values differ as flows do");
  if (few && s.whole > 0.8 && median >= 4 && median <= 500)
    ledger.add(line, "required", "values", 1.2, "a few whole rates recur");
  if (s.repeats > 0.3 && s.whole > 0.9 && place < 0.2 && spread > 2)
    ledger.add(line, "dwelling", "values", 1.5, "its numbers stand in runs");
  if (place < 0.1 && s.whole > 0.9) ledger.add(line, "dwelling", "values", 0.4, "it stands first");
  const counted = isCount(s);
  if (counted) ledger.add(line, "other", "values", 3.5, "it counts the rows");
  if (spread === 1 && s.numeric > 4)
    for (const role of ["flow", "pressure"] as const)
      ledger.add(line, role, "values", -2.5, "it is the same in every row");
  if (median < 3 && spread <= 3 && s.numeric > 6)
    ledger.add(line, "constant", "values", 0.6, "it is nearly the same in every row");
  if (median >= 0 && s.high <= 1.5 && s.formulas > s.filled / 2)
    ledger.add(line, "other", "values", 1.5, "its values are ratios");
}

/** 1, 2, 3 … down the line. */
function isCount(s: LineStats): boolean {
  let steps = 0;
  let last = Number.NaN;
  for (const number of s.numbers) {
    if (number === last + 1) steps++;
    last = number;
  }
  return s.numeric >= 4 && s.distinctNumbers > s.numeric * 0.9 && steps > s.numeric * 0.8;
}
