import { typeset } from "../../algebra";
import { type Formula, type Mark, type Source, unitIn } from "../../formulas";
import type { SaidSum } from "../../rules";
import { type Html, html } from "../html/escape";

const marks: Readonly<Record<Mark, string>> = {
  read: "read in the named text",
  "two sources": "found in two independent texts, or read once and recomputed",
  "from memory": "recalled, not read: verify against your copy",
  "common practice": "what the trade does; no text stands behind it",
  "by definition": "follows from a definition by arithmetic",
};

/** A formula in symbols, what they mean, and where it is valid. */
export function formulaPart(formula: Formula): Html {
  return html`<h3>${formula.title}</h3>
<div class="formula">${lines(typeset(formula).symbols)}</div>
<dl class="symbols">${[formula.result, ...formula.symbols, ...(formula.steps ?? [])].map(
    ({ shown, meaning, unit }) => html`
<dt>${withSubscripts(shown)}</dt>
<dd>${meaning}${unitText(unitIn(unit, "ip"), unitIn(unit, "si"))}</dd>`,
  )}
</dl>
<p class="quiet">${formula.validity}</p>
`;
}

/** A sum of an example: the formula with its numbers, and what it comes to. */
export function sumPart({ numbers, results }: SaidSum): Html {
  const came = results.at(-1) ?? "";
  return html`<div class="formula">${lines([...numbers, came])}</div>
`;
}

export function sourcePart(source: Source): Html {
  const place = source.clause === "" ? source.work : `${source.work}, ${source.clause}`;
  return html`<li>${place} <span class="tag">— ${source.mark}: ${marks[source.mark]}.</span></li>
`;
}

const lines = (texts: readonly string[]): Html[] =>
  texts.map((text) => html`<p>${withSubscripts(text)}</p>`);

/** `Q_req` with its tail set low. */
function withSubscripts(text: string): (string | Html)[] {
  return text
    .split(/(_[\p{L}\d]+)/u)
    .map((part) => (/^_./.test(part) ? html`<sub>${part.slice(1)}</sub>` : part));
}

function unitText(ip: string, si: string): string {
  if (ip === "1" || ip === "") return "";
  return ip === si ? `, ${ip}` : `, ${ip} (${si} for "si")`;
}
