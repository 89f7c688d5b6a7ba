import { visible } from "../../cells";
import type { JobCheck } from "../../job";
import { type Block, fitEntries, habitsInWords } from "../../reading";
import type { FileCheck } from "../check-file";
import { plainTable } from "./plain-table";
import type { Report } from "./report";

/** Reasons shown beside one role. */
const mostReasons = 2;
const shape = { indent: 4, gap: 4 };

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
    ({ sheet, layout, readings, roles, because, units }, at) => {
      const rows = Object.entries(roles).map(([role, cells]) => {
        const unit = units[role as keyof typeof units] ?? "";
        const reasons = because[role as keyof typeof because] ?? [];
        const shown = reasons.slice(0, mostReasons).join("; ");
        return [role, cells.join(", "), unit, shown].map(visible);
      });
      const title = `  Sheet ${visible(sheet)}: ${readings} readings, ${layout}`;
      const habits = habitsInWords(reading.blocks[at] as Block).map(
        (each) => `    ${visible(each)}`,
      );
      return [
        title,
        plainTable(rows, shape),
        ...(habits.length > 0 ? ["    keeps to", ...habits.map((each) => `  ${each}`)] : []),
        "",
      ];
    },
  );
  return [...blocks, ...reading.notRead.map(({ because }) => `  ${visible(because)}`)];
}

/** The sheets in our own form: each heading with the field it was taken for. */
function ownLines({ job }: JobCheck): string[] {
  return Object.values(job.fit.sheets)
    .flat()
    .flatMap(({ kind, sheet, headerRow, columns }) => {
      const rows = [...columns].map(([key, { heading }]) => [key, visible(heading)]);
      const title = `  Sheet ${visible(sheet)}: ${kind}, headings in row ${headerRow + 1}`;
      return [title, plainTable(rows, shape), ""];
    });
}
