import type { Cells } from "./cells/cells";
import { wordsOf } from "./evidence/from-words";
import type { Section } from "./tables/section";
import { readHeading, takeUnit } from "./text/heading";
import { plain } from "./text/plain";
import type { OpeningEntry } from "./types";

const mostOpenings = 40;

/** Openings that a workbook lists: small tables of a name and a size, and notes such as "A = 24 in²". */
export function findOpenings(
  sections: readonly Section[],
  sheets: readonly Cells[],
): OpeningEntry[] {
  const found: OpeningEntry[] = [];
  for (const section of sections) found.push(...fromTable(section));
  for (const cells of sheets) found.push(...fromNotes(cells));
  return found;
}

/** A table whose lines are names, each once, and sizes; and neither pressures nor flows. */
function fromTable(section: Section): OpeningEntry[] {
  const { cells, records, shift } = section;
  if (records.length > mostOpenings || records.length < 2) return [];
  let name: { line: number; weight: number } | undefined;
  let size: { line: number; weight: number; round: boolean; unit: string | undefined } | undefined;
  for (const [line, heading] of section.headings) {
    const { told, unit } = wordsOf(heading);
    const weight = (role: "opening" | "area" | "diameter" | "pressure") =>
      told.get(role)?.weight ?? 0;
    if (unit?.dimension === "pressure" || weight("pressure") >= 3.5) return [];
    const numbers = records.filter((row) => cells.isNumber(row, line + shift)).length;
    if (numbers < records.length * 0.7) {
      if (weight("opening") > (name?.weight ?? 1.5)) name = { line, weight: weight("opening") };
      continue;
    }
    const round = unit ? unit.dimension === "length" : weight("diameter") > weight("area");
    const strength =
      Math.max(weight("area"), weight("diameter")) +
      (unit && (unit.dimension === "area" || unit.dimension === "length") ? 3 : 0);
    if (unit && unit.dimension !== "area" && unit.dimension !== "length") continue;
    if (strength > (size?.weight ?? 2.4) || (size?.round && !round && strength >= 2.4))
      size = { line, weight: strength, round, unit: unit?.name };
    else if (weight("opening") > (name?.weight ?? 1.5)) name = { line, weight: weight("opening") };
  }
  if (!size) return [];
  const names = name?.line ?? firstOther(section, size.line);
  if (names === undefined) return [];
  const entries = records.flatMap((row): OpeningEntry[] => {
    const text = cells.text(row, names + shift).trim() || String(cells.number(row, names + shift));
    const value = cells.number(row, size.line + shift);
    if (text === "NaN" || Number.isNaN(value)) return [];
    return [
      {
        name: text,
        area: size.round ? undefined : value,
        diameter: size.round ? value : undefined,
        unit: size.unit,
        place: cells.place(row, size.line + shift),
      },
    ];
  });
  const distinct = new Set(entries.map((entry) => plain(entry.name)));
  return distinct.size === entries.length ? entries : [];
}

function firstOther(section: Section, size: number): number | undefined {
  const lines = [...section.headings.keys()].filter((line) => line !== size);
  return lines.find((line) =>
    section.records.every((row) => !section.cells.isBlank(row, line + section.shift)),
  );
}

const inProse =
  /(?:^|[\s,;:(–-])([\p{L}\d][\p{L}\d+#. ]{0,14}?)\s*[=:]\s*(\d+(?:[.,]\d+)?)\s*([^\d\s,;)]{1,4}(?:\s?(?:in|cm|mm|inches)\b)?[²2]?)?/gu;

/** "small = 12 in², large = 24 in²", with the unit said at least once. */
function fromNotes(cells: Cells): OpeningEntry[] {
  const found: OpeningEntry[] = [];
  for (let row = 0; row < Math.min(cells.rows, 400); row++)
    for (let col = 0; col < cells.cols; col++) {
      const text = cells.text(row, col);
      if (text.length < 8 || !/[=:]\s*\d/.test(text)) continue;
      const said =
        takeUnit(text).unit ??
        text
          .split(/[\s,;]+/)
          .map((word) => takeUnit(word).unit)
          .find((unit) => unit?.dimension === "area");
      if (said?.dimension !== "area" && said?.dimension !== "length") continue;
      const parts = [...text.matchAll(inProse)];
      if (parts.length < 2) continue;
      for (const [, name, number] of parts) {
        const value = Number(number!.replace(",", "."));
        found.push({
          name: withoutWord(name!.trim().replace(/^.*[:,]\s*/, "")),
          area: said.dimension === "area" ? value : undefined,
          diameter: said.dimension === "length" ? value : undefined,
          unit: said.name,
          place: cells.place(row, col),
        });
      }
    }
  return found;
}

/** "small" for "opening small". */
function withoutWord(name: string): string {
  const [first, ...rest] = name.split(/\s+/);
  return rest.length && (readHeading(first!).told.get("opening")?.weight ?? 0) >= 3
    ? rest.join(" ")
    : name;
}
