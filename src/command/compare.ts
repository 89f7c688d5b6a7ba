import { auditFormulas } from "../audit";
import { counted, InputError, visible, visibleIn, visibleJson } from "../cells";
import {
  type Change,
  checkJob,
  codeKinds,
  codesExplained,
  compareChecks,
  type JobCodes,
  provenanceOf,
  shownStates,
} from "../job";
import { type Look, named, openFile } from "./check-file";
import type { Format } from "./options";
import { csvLines } from "./reports/csv";
import { plainTable } from "./reports/plain-table";
import { wrapped } from "./reports/table";

/** Two states stand in memory at once, each with what its check came to. */
const mostRows = 30_000;

interface Wide extends Look {
  readonly width: number;
}

/** What changed from one state of a job to another, as a report. */
export async function compareFiles(
  [before, after]: readonly [before: string, after: string],
  format: Format,
  look: Wide,
): Promise<{ readonly report: string; readonly changes: number }> {
  const checked = (file: string) =>
    named(file, async () => {
      const { job, today } = await openFile(file, look);
      const rows = job.sheets.reduce((sum, { rowCount }) => sum + rowCount, 0);
      if (rows > mostRows)
        throw new InputError(
          `has ${rows.toLocaleString("en")} rows, more than the ${mostRows.toLocaleString("en")} of which two states are compared: part it into several files, dwelling by dwelling`,
        );
      return checkJob(job, today, auditFormulas);
    });
  const was = await checked(before);
  const is = await checked(after);
  const changes = compareChecks(was, is);
  // Without a row of a job there is nothing that a code could stand for.
  const isJob = was.isJob || is.isJob;
  const codes = isJob ? [was, is].map(({ job }) => provenanceOf(job).codes) : [];
  const report = {
    table: () => tableOf(before, after, changes, look.width, codes),
    json: () =>
      visibleJson(`${JSON.stringify({ format: 1, before, after, codes, changes }, null, 2)}\n`),
    csv: () => csvLines([columns, ...changes.map((one) => columns.map((key) => `${one[key]}`))]),
    html: () => "",
  }[format]();
  return { report, changes: changes.length };
}

const columns = ["kind", "sheet", "cell", "about", "field", "before", "after", "rows"] as const;

function tableOf(
  before: string,
  after: string,
  told: readonly Change[],
  width: number,
  [old, now]: readonly JobCodes[],
): string {
  const changes = told.map(visibleIn);
  const lines = [visible(before), `  → ${visible(after)}`, ""];
  if (old && now) {
    for (const kind of codeKinds)
      lines.push(`  ${kind.padEnd(9)} ${codeLine(old[kind], now[kind])}`);
    lines.push("", ...wrapped(codesExplained, width - 2), "");
  }
  if (changes.length === 0) return [...lines, "  nothing changed", ""].join("\n");
  const place = ({ sheet, cell }: Change) => (cell === "" ? sheet : `${sheet}!${cell}`);
  const widest = (of: (change: Change) => string, most: number) =>
    Math.min(most, Math.max(4, ...changes.map((change) => of(change).length)) + 2);
  const widths = [
    15,
    widest(place, 20),
    widest(({ about }) => about, 24),
    widest(({ field }) => field, 20),
  ];
  const rest = Math.max(24, width - widths.reduce((sum, one) => sum + one, 0) - 6);
  const table = plainTable(
    changes.map((change) => [
      change.kind,
      place(change),
      change.about,
      change.field,
      fromTo(change),
    ]),
    {
      indent: 2,
      gap: 1,
      widths: [...widths, rest],
      head: ["change", "cell", "row", "field", "from → to"],
    },
  );
  const counts = counted(changes.map(({ kind }) => kind));
  const sums = [...counts].map(([kind, count]) => `${count} ${kind}`).join(", ");
  return [...lines, table, "", `  ${sums}`, ""].join("\n");
}

function codeLine(old: string, now: string): string {
  return old === now ? `${old}  the same` : `${old} → ${now}  changed`;
}

function fromTo(change: Change): string {
  const { kind, rows } = change;
  const more = rows > 1 ? ` (in ${rows} rows)` : "";
  const [before, after] = shownStates(change);
  if (kind === "finding new") return after;
  if (kind === "finding gone") return before;
  return before === "" && after === "" ? "" : `${before} → ${after}${more}`;
}
