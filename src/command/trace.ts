import { InputError, visible, visibleJson } from "../cells";
import { type Job, readJob } from "../job";
import { cellNamed, lines, traceBack, withRow } from "../trace";
import { type Look, named, openFile } from "./check-file";
import type { Format } from "./options";

/** Traces a cell of a file, back to the typed values, as a report. */
export async function traceCell(
  cell: string,
  file: string,
  format: Format,
  look: Look,
): Promise<string> {
  const place = cellNamed(cell);
  if (!place)
    throw new InputError(`"${cell}" names no cell: write the sheet and the cell, such as Fans!P3`);
  const steps = await named(file, async () => {
    const opened = (await openFile(file, look)).job;
    const { sheet, row, col } = place;
    let job: Job | undefined;
    return traceBack(opened, sheet, row, col, (found) => {
      if (found.kind !== "typed") return found;
      job ??= readJob(opened);
      return withRow(found, job);
    });
  });
  const report =
    format === "json"
      ? visibleJson(JSON.stringify({ format: 1, file, steps }, null, 2))
      : steps.map((step) => lines(step).map(visible).join("\n")).join("\n\n");
  return `${report}\n`;
}
