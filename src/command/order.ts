import { InputError, visible, visibleJson } from "../cells";
import { csvOf } from "../csv";
import { findEdition } from "../editions";
import {
  type EstimateSection,
  estimateNotes,
  estimateOf,
  estimateSections,
  sectionText,
} from "../job";
import { type Look, readNamed } from "./check-file";
import type { Format } from "./options";

/** The order list of an estimate: what to buy, bring and charge; with another edition beside it. */
export async function tellOrder(
  file: string,
  under: string | undefined,
  format: Format,
  look: Look,
): Promise<string> {
  const job = await readNamed(file, look);
  const other = under === undefined ? undefined : findEdition(under);
  const estimate = estimateOf(job);
  if (!estimate)
    throw new InputError(
      `${file}: has no schedule of planned fans; --estimate makes one of a list of lots`,
    );
  const beside = other && estimateOf(job, other);
  const sections = estimateSections(estimate, job.settings, beside);
  const notes = estimateNotes(estimate, job.settings, beside);
  const edition = estimate.edition?.id ?? "no edition";
  if (format === "json") {
    const told = { format: 1, file, edition, ...(other && { other: other.id }), sections, notes };
    return visibleJson(`${JSON.stringify(told, null, 2)}\n`);
  }
  if (format === "csv")
    return csvOf(
      sections.flatMap(({ title, columns, rows }) => [
        [title],
        columns.map((column) => column.title),
        ...rows,
        [],
      ]),
    );
  const all = estimate.totals.at(-1);
  const head = [
    file,
    `  ${all?.dwellings ?? 0} dwellings, ${all?.planned ?? 0} fans planned; ${edition}${other ? `, beside it ${other.id}` : ""}`,
  ];
  // Each dwelling by itself is for programs and for the record.
  const tables = sections.filter(({ key, rows }) => key !== "dwellings" && rows.length > 0);
  const lines = [...head, ...tables.flatMap(tableLines), "", ...notes.map((note) => `  ${note}`)];
  return `${lines.map(visible).join("\n")}\n`;
}

function tableLines({ title, columns, rows }: EstimateSection): string[] {
  const texts = [
    columns.map((column) => column.title),
    ...rows.map((row) => row.map((cell, at) => sectionText(cell, columns[at]?.digits))),
  ];
  const widths = columns.map((_, at) => Math.max(...texts.map((row) => row[at]?.length ?? 0)));
  return [
    "",
    `  ${title}`,
    ...texts.map((row) =>
      `    ${row
        .map((cell, at) =>
          columns[at]?.digits === undefined
            ? cell.padEnd(widths[at] as number)
            : cell.padStart(widths[at] as number),
        )
        .join("  ")}`.trimEnd(),
    ),
  ];
}
