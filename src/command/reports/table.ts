import { styleText } from "node:util";
import { visible, visibleIn } from "../../cells";
import {
  asSentence,
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
  readLines,
  scopeText,
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

/** Nobody reads more lines of a file than these in a terminal, and laying them out takes its time. */
const mostShown = 200;

/** Under each cause its cells: what is the same for all of them is told once. */
function findingsTable(findings: readonly Finding[], look: Look): string {
  const causes = byCause(findings);
  let left = mostShown;
  const shown = causes.map(({ lines }) => {
    const own = lines.slice(0, left).map(({ place, about, finding }) => ({
      place: visible(place),
      about: visible(about),
      finding: visibleIn(finding),
    }));
    left -= own.length;
    return own;
  });
  const all = shown.flat();
  const longest = Math.max(...all.map(({ place }) => place.length));
  const cell = Math.min(26, Math.max(6, longest)) + 2;
  const about = Math.min(24, Math.max(6, ...all.map((line) => line.about.length)) + 2);
  const rest = Math.max(46, look.width - cell - about - 6);
  const rows = causes.flatMap(({ title, severity, findings, shared }, at) => {
    const lines = shown[at] ?? [];
    if (lines.length === 0) return [];
    const many = findings.length > 1 ? ` (${findings.length})` : "";
    const kind = severity === "result" ? "" : `${paint(severity, severity, look)}: `;
    const both = shared ? [visible(shared.effect), `→ ${visible(shared.mend)}`] : [];
    const head = [
      `${kind}${title}${many}`,
      ...both.flatMap((text) => wrapped(text, look.width - 8)),
    ];
    return [
      [{ colSpan: 3, content: head.join("\n") }],
      ...lines.map(({ place, about, finding }) => [
        place,
        about,
        foundText(finding, shared !== undefined),
      ]),
    ];
  });
  const unseen = causes.reduce((sum, { lines }) => sum + lines.length, 0) - all.length;
  const more = unseen > 0 ? `\n  … and ${unseen} more, which --csv, --html and --json list` : "";
  return `${plainTable(rows, { indent: 4, gap: 1, widths: [cell, about, rest] })}${more}`;
}

function foundText(finding: Finding, isShared: boolean): string {
  const what = asSentence(finding.what);
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
export function wrapped(text: string, width: number): string[] {
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
