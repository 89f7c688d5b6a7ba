import { visible } from "../../cells";
import { type Finding, type JobCheck, provenanceLine, provenanceOf } from "../../job";
import { style } from "./html-style";
import type { Report } from "./report";
import {
  acceptanceText,
  byCause,
  type Cause,
  countsText,
  kindLines,
  readLines,
  scopeText,
  sorted,
} from "./summary";

/** The findings as one page that needs nothing beside it and runs no script. */
export function htmlReport(made: Date): Report {
  return {
    head: `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Job check</title>
<style>${style}</style>
</head>
<body>
<header><h1>Job check</h1><p>Made ${escapeHtml(made.toISOString().slice(0, 16).replace("T", " "))} UTC</p></header>
<main>
`,
    file: (result) =>
      `${"check" in result ? fileSection(result.file, result.check) : unreadable(result)}\n`,
    end: () => `</main>
<footer><p>The check compares what the workbook states. It does not see the fan, the seat of the
box or the duct. Local code and licensed practice decide.</p></footer>
</body>
</html>
`,
  };
}

function unreadable({ file, unreadable: why }: { file: string; unreadable: string }): string {
  return `<section><h2>${escapeHtml(file)}</h2><p class="wrong">Could not be read: ${escapeHtml(why)}</p></section>`;
}

function fileSection(file: string, check: JobCheck): string {
  const kinds = kindLines(check)
    .map(
      ({ title, severity, count }) =>
        `<li><b class="${severity}">${count}</b> ${escapeHtml(title)}</li>`,
    )
    .join("");
  const { faults, results, accepted } = sorted(check);
  return `<section><h2>${escapeHtml(file)}</h2>
<p>${escapeHtml([scopeText(check), ...readLines(check)].join(" · "))}</p><p class="counts">${escapeHtml(countsText(check))}</p>
<ul class="kinds">${kinds}</ul>
${findingsTable("Faults", faults)}${findingsTable("Results of the fans", results)}${findingsTable("Accepted", accepted)}
<p class="provenance">${escapeHtml(provenanceLine(provenanceOf(check.job)))}</p></section>`;
}

function findingsTable(caption: string, findings: readonly Finding[]): string {
  if (findings.length === 0) return "";
  const rows = byCause(findings).flatMap(causeRows).join("\n");
  return `<table><caption>${caption}</caption><thead><tr><th scope="col">Cell</th><th scope="col">Severity</th><th scope="col">Where</th><th scope="col">Found</th><th scope="col">Effect</th><th scope="col">Mend</th></tr></thead>
<tbody>${rows}</tbody></table>`;
}

/** Rows that a cell of a table in HTML may span at the most. */
const mostSpanned = 65_534;

/** What is the same for all cells of a cause stands once, beside all of them. */
function causeRows({ lines, shared }: Cause): string[] {
  return lines.map(({ place, about, finding }, at) => {
    const { severity, what, effect, mend } = finding;
    const found = [what, acceptanceText(finding)].filter((text) => text !== "").join(". ");
    const own = [about, found].map((text) => `<td>${escapeHtml(text)}</td>`).join("");
    const isFirst = at % mostSpanned === 0;
    const span = shared ? ` rowspan="${Math.min(mostSpanned, lines.length - at)}"` : "";
    const told = [effect, mend].map((text) => `<td${span}>${escapeHtml(text)}</td>`).join("");
    return `<tr><th scope="row">${escapeHtml(place)}</th><td class="${severity}">${severity}</td>${own}${shared && !isFirst ? "" : told}</tr>`;
  });
}

/** Text made safe inside elements and attributes, and visible. */
function escapeHtml(text: string): string {
  const safe: Record<string, string> = {
    "&": "&amp;",
    "<": "&lt;",
    ">": "&gt;",
    '"': "&quot;",
    "'": "&#39;",
  };
  return visible(text).replace(/[&<>"']/g, (character) => safe[character] ?? character);
}
