import type { Finding, JobCheck } from "../../job";
import type { FileCheck } from "../check-file";
import { style } from "./html-style";
import { countsText, kindLines, scopeText } from "./summary";

/** The findings as one page that needs nothing beside it and runs no script. */
export function htmlReport(results: readonly FileCheck[], made: Date): string {
  const body = results.map((result) =>
    "check" in result ? fileSection(result.file, result.check) : unreadable(result),
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Job check</title>
<style>${style}</style>
</head>
<body>
<header><h1>Job check</h1><p>Made ${escapeHtml(made.toISOString().slice(0, 16).replace("T", " "))} UTC</p></header>
<main>
${body.join("\n")}
</main>
<footer><p>The check compares what the workbook states. It does not see the fan, the seat of the
box or the duct. Local code and licensed practice decide.</p></footer>
</body>
</html>
`;
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
  const rows = check.findings.map(findingRow).join("\n");
  const table =
    check.findings.length === 0
      ? ""
      : `<table><caption>Findings</caption><thead><tr><th scope="col">Cell</th><th scope="col">Severity</th><th scope="col">Where</th><th scope="col">Found</th><th scope="col">Effect</th><th scope="col">Mend</th></tr></thead>
<tbody>${rows}</tbody></table>`;
  return `<section><h2>${escapeHtml(file)}</h2>
<p>${escapeHtml(scopeText(check))}</p><p class="counts">${escapeHtml(countsText(check))}</p>
<ul class="kinds">${kinds}</ul>
${table}</section>`;
}

function findingRow({ sheet, cell, severity, about, what, effect, mend }: Finding): string {
  const place = sheet === "" ? "workbook" : `${sheet}!${cell}`;
  const cells = [about, what, effect, mend].map((text) => `<td>${escapeHtml(text)}</td>`).join("");
  return `<tr><th scope="row">${escapeHtml(place)}</th><td class="${severity}">${severity}</td>${cells}</tr>`;
}

/** Text made safe inside elements and attributes. */
export function escapeHtml(text: string): string {
  const safe: Record<string, string> = {
    "&": "&amp;",
    "<": "&lt;",
    ">": "&gt;",
    '"': "&quot;",
    "'": "&#39;",
  };
  return text.replace(/[&<>"']/g, (character) => safe[character] ?? character);
}
