import { visible, visibleJson } from "../cells";
import { cellNamed, lines, TraceError, traceBack } from "../trace";
import { type Look, openFile, unreadableBy } from "./check-file";
import type { Format } from "./options";

/** A traced cell as a report, or one line that says why there is none. */
type Traced = { readonly report: string } | { readonly complaint: string };

/** Traces a cell of a file, back to the typed values. */
export async function traceCell(
  cell: string,
  file: string,
  format: Format,
  look: Look,
): Promise<Traced> {
  const place = cellNamed(cell);
  if (!place)
    return { complaint: `"${cell}" names no cell: write the sheet and the cell, such as Fans!P3` };
  try {
    const { job } = await openFile(file, look);
    const steps = traceBack(job, place.sheet, place.row, place.col);
    const report =
      format === "json"
        ? visibleJson(JSON.stringify({ format: 1, file, steps }, null, 2))
        : steps.map((step) => lines(step).map(visible).join("\n")).join("\n\n");
    return { report: `${report}\n` };
  } catch (error) {
    const why = error instanceof TraceError ? error.message : unreadableBy(error);
    if (why === undefined) throw error;
    return { complaint: `${file}: ${why}` };
  }
}
