import Table from "cli-table3";
import { visible } from "../../cells";
import type { JobCheck } from "../../job";
import { fitEntries } from "../../reading";
import type { FileCheck } from "../check-file";
import { noLines } from "./no-lines";
import type { Report } from "./report";

/** Reasons shown beside one role. */
const mostReasons = 2;

/** How each file was read: which cells were taken for what, and why. No findings. */
export function fitReport(): Report {
  return { head: "", file: fileText, end: () => "" };
}

function fileText(result: FileCheck): string {
  if ("unreadable" in result) return "";
  const { job } = result.check;
  const lines = [visible(result.file)];
  if (job.noFans !== "") lines.push(`  ${visible(job.noFans)}`);
  lines.push(...firmLines(result.check), ...ownLines(result.check));
  return `${lines.join("\n")}\n\n`;
}

/** The blocks of sheets that a firm laid out itself. */
function firmLines({ job }: JobCheck): string[] {
  if (!job.firm) return [];
  const { reading } = job.firm;
  const blocks = fitEntries(reading).flatMap(
    ({ sheet, layout, readings, roles, because, units }) => {
      const table = plainTable();
      for (const [role, cells] of Object.entries(roles)) {
        const unit = units[role as keyof typeof units] ?? "";
        const reasons = because[role as keyof typeof because] ?? [];
        const shown = reasons.slice(0, mostReasons).join("; ");
        table.push([role, cells.join(", "), unit, shown].map(visible));
      }
      return [`  Sheet ${visible(sheet)}: ${readings} readings, ${layout}`, table.toString(), ""];
    },
  );
  return [...blocks, ...reading.notRead.map(({ because }) => `  ${visible(because)}`)];
}

/** The sheets in our own form: each heading with the field it was taken for. */
function ownLines({ job }: JobCheck): string[] {
  return Object.values(job.fit.sheets)
    .flat()
    .flatMap(({ kind, sheet, headerRow, columns }) => {
      const table = plainTable();
      for (const [key, { heading }] of columns) table.push([key, visible(heading)]);
      return [
        `  Sheet ${visible(sheet)}: ${kind}, headings in row ${headerRow + 1}`,
        table.toString(),
        "",
      ];
    });
}

function plainTable() {
  return new Table({
    chars: noLines,
    style: { "padding-left": 4, "padding-right": 0, head: [], border: [] },
  });
}
