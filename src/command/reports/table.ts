import { styleText } from "node:util";
import { visible, visibleIn } from "../../cells";
import {
  type Finding,
  type JobCheck,
  provenanceLine,
  provenanceOf,
  type Severity,
} from "../../job";
import { plainTable } from "./plain-table";
import type { Report } from "./report";
import {
  acceptanceText,
  byCause,
  countsText,
  faultCount,
  kindLines,
  placeText,
  readLines,
  scopeText,
  sentence,
  sorted,
} from "./summary";

interface Look {
  readonly width: number;
  readonly colour: boolean;
}

const colours = { wrong: "red", doubtful: "yellow", missing: "cyan", result: "magenta" } as const;

/** The findings for a terminal: one row a finding, then a summary a file. */
export function tableReport(look: Look): Report {
  let files = 0;
  let faults = 0;
  let results = 0;
  let lost = 0;
  let between = "";
  return {
    head: "",
    file(result) {
      files++;
      if ("unreadable" in result) lost++;
      if (!("check" in result)) return "";
      faults += faultCount(result.check);
      results += result.check.summary.bySeverity.result;
      const told = between + fileReport(result.file, result.check, look);
      between = "\n";
      return told;
    },
    end() {
      const unread = lost > 0 ? `, ${lost} could not be read` : "";
      return files > 1
        ? `${between}${files} files, ${faults} faults, ${results} results${unread}\n`
        : "";
    },
  };
}

function fileReport(file: string, check: JobCheck, look: Look): string {
  const lines = [visible(file), `  ${visible(scopeText(check))}`];
  lines.push(...readLines(check).map((line) => `  ${visible(line)}`), "");
  if (!check.job.fans && check.findings.length === 0) return lines.join("\n");
  lines.push(`  ${countsText(check)}`);
  for (const { title, severity, count } of kindLines(check))
    lines.push(
      `  ${String(count).padStart(4)}  ${paint(severity, severity.padEnd(8), look)}  ${title}`,
    );
  lines.push("");
  const { faults, results, accepted } = sorted(check);
  if (faults.length > 0) lines.push("  Faults of the sheets:", findingsTable(faults, look), "");
  if (results.length > 0) lines.push("  Results of the fans:", findingsTable(results, look), "");
  if (accepted.length > 0) lines.push("  Accepted:", findingsTable(accepted, look), "");
  lines.push(...wrapped(visible(provenanceLine(provenanceOf(check.job))), look.width), "");
  return lines.join("\n");
}

/** Nobody reads more findings of a file than these in a terminal, and laying them out takes its time. */
const mostShown = 500;

function findingsTable(told: readonly Finding[], look: Look): string {
  const left = told.length - mostShown;
  const rest = left > 0 ? `\n  … and ${left} more, which --csv, --html and --json list` : "";
  return `${laidOut(told.slice(0, mostShown), look)}${rest}`;
}

/** Under each cause its cells: what is the same for all of them is told once. */
function laidOut(findings: readonly Finding[], look: Look): string {
  const told = findings.map(visibleIn);
  const cell = Math.max(6, ...told.map((finding) => placeText(finding).length)) + 2;
  const about = Math.min(24, Math.max(6, ...told.map((finding) => finding.about.length)) + 2);
  const rest = Math.max(46, look.width - cell - about - 6);
  const rows = byCause(told).flatMap(({ title, severity, findings, shared }) => {
    const many = findings.length > 1 ? ` (${findings.length})` : "";
    const kind = severity === "result" ? "" : `${paint(severity, severity, look)}: `;
    const both = shared ? [shared.effect, `→ ${shared.mend}`] : [];
    const lines = [
      `${kind}${title}${many}`,
      ...both.flatMap((text) => wrapped(text, look.width - 8)),
    ];
    return [
      [{ colSpan: 3, content: lines.join("\n") }],
      ...findings.map((finding) => [
        placeText(finding),
        finding.about,
        foundText(finding, shared !== undefined),
      ]),
    ];
  });
  return plainTable(rows, { indent: 4, gap: 1, widths: [cell, about, rest] });
}

function foundText(finding: Finding, isShared: boolean): string {
  const what = sentence(finding.what);
  return [
    isShared ? what : `${what} ${finding.effect}`,
    visible(acceptanceText(finding)),
    isShared ? "" : `→ ${finding.mend}`,
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function paint(severity: Severity, text: string, look: Look): string {
  return look.colour ? styleText(colours[severity], text) : text;
}

/** Words in lines of a width, two blanks in. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = " ";
  for (const word of text.split(" ")) {
    if (line.length + word.length + 1 > Math.max(40, width) && line !== " ") {
      lines.push(line);
      line = " ";
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
