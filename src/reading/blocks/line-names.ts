import { columnLetters } from "../../cells";
import type { LineHeading, Pool } from "../tables/section";

/** The name by which a user's choice means a line. */
export function lineName(pool: Pool, line: number): string {
  const name = headingOf(pool.headings.get(line));
  const isAlone = pool.lines.every(
    (other) => other === line || headingOf(pool.headings.get(other)) !== name,
  );
  return name !== "" && isAlone
    ? name
    : `${pool.sections[0]?.cells.turned ? "row" : "column"} ${lettersOf(pool, line)}`;
}

/** Letters of the column, or number of the row, in the first table of the pool. */
function lettersOf(pool: Pool, line: number): string {
  const [first] = pool.sections;
  const at = line + (first?.shift ?? 0);
  return first?.cells.turned ? String(at + 1) : columnLetters(at);
}

/** The lines that a user's choice means: by the heading with those above it, by the heading, by letters. */
export function linesMeant(pool: Pool, name: string): number[] {
  const same = (text: string | undefined) =>
    text?.trim().toLowerCase() === name.trim().toLowerCase();
  const ways = [
    (line: number) => same(headingOf(pool.headings.get(line))),
    (line: number) => same(pool.headings.get(line)?.text),
    (line: number) => same(lineName(pool, line)) || same(lettersOf(pool, line)),
  ];
  for (const is of ways) {
    const found = pool.lines.filter(is);
    if (found.length > 0) return found;
  }
  return [];
}

export function headingOf(heading: LineHeading | undefined): string {
  return heading
    ? [...heading.parents.filter((parent) => parent !== heading.text), heading.text]
        .filter((text) => text !== "")
        .join(" / ")
    : "";
}
