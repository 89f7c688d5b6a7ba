import Table from "cli-table3";

const ends = ["left", "mid", "right"];
const edges = ["top", "bottom"].flatMap((side) => [side, ...ends.map((end) => `${side}-${end}`)]);
const inner = ["left", "left-mid", "mid", "mid-mid", "right", "right-mid", "middle"];
const noLines = Object.fromEntries([...edges, ...inner].map((name) => [name, ""]));

/**
 * The table shortens each cell to ten letters for a log of its own, letter by letter where lines are
 * broken; a mark as long as that spares it.
 */
const truncate = "…".padEnd(10);

/** A text in its column, or one that lies over several. */
type PlainCell = string | { readonly content: string; readonly colSpan: number };

interface Shape {
  /** Blanks before each line, and between columns. */
  readonly indent: number;
  readonly gap: number;
  /** Of each column with its gap, in which texts are broken at their words; left out, as wide as they are. */
  readonly widths?: readonly number[];
  readonly head?: readonly string[];
}

/** A table for a terminal, without lines; no blanks stand at the end of a line. */
export function plainTable(
  rows: readonly (readonly PlainCell[])[],
  { indent, gap, widths = [], head = [] }: Shape,
): string {
  const table = new Table({
    head: [...head],
    colWidths: [...widths],
    wordWrap: true,
    style: { head: [], border: [], "padding-left": 0, "padding-right": gap },
    chars: { ...noLines, left: " ".repeat(indent) },
  });
  for (const row of rows)
    table.push(
      row.map((cell) => ({ ...(typeof cell === "string" ? { content: cell } : cell), truncate })),
    );
  return table.toString().replace(/ +$/gm, "");
}
