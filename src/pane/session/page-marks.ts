import { boundsOf, once } from "../../cells";
import { markLooks } from "../../excel";
import { type Finding, severities } from "../../job";
import type { PaneHost } from "./host";

/** A cell that the page around the pane marks, with what was found there. */
export interface PageMark {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  /** "#RRGGBB" */
  readonly fill: string;
  readonly color: string;
  readonly bold: boolean;
  readonly words: string;
}

/**
 * Marks that the page shows itself and that do not become part of the workbook. They are on from
 * the start: nothing is written, and nothing has to be taken away before the file is handed over.
 */
export function pageMarks(
  host: PaneHost,
  show: (marks: readonly PageMark[]) => void,
): Pick<PaneHost, "hasMarks" | "mark" | "clearMarks"> {
  return {
    hasMarks: async () => true,
    async mark(findings) {
      const marks = marksOf(findings);
      show(marks);
      return marks.length;
    },
    async clearMarks() {
      show([]);
      await host.clearMarks();
    },
  };
}

/** One mark a cell, with the words of all that was found there; the worst gives it its look. */
function marksOf(findings: readonly Finding[]): PageMark[] {
  const marks = new Map<string, PageMark>();
  for (const severity of severities)
    for (const finding of findings) {
      if (finding.severity !== severity) continue;
      for (const [key, mark] of marksBy(finding)) {
        const before = marks.get(key);
        marks.set(key, before ? { ...before, words: `${before.words} · ${mark.words}` } : mark);
      }
    }
  return [...marks.values()];
}

/** The marks of one finding, each with the name of its cell. */
const marksBy = once(({ cells, severity, what, mend }: Finding) =>
  cells.flatMap(({ sheet, cell }): [string, PageMark][] => {
    const at = boundsOf(cell);
    if (!at) return [];
    const { fill, color, bold } = markLooks[severity];
    const words = `${what} → ${mend}`;
    const mark = { sheet, row: at.top, col: at.left, fill, color, bold, words };
    return [[`${sheet}!${cell}`.toLowerCase(), mark]];
  }),
);
