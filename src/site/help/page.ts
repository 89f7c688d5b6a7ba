import { namespace, type WorksheetFunction, worksheetFunctions } from "../../../functions";
import { significant } from "../../cells";
import { type Html, html } from "../html/escape";
import type { Page } from "../html/page";
import { type Example, examples } from "./examples";
import { formulaPart, sourcePart, sumPart } from "./formula";
import { formulaText, problemOf, run } from "./run";
import type { Topic } from "./topic";
import { topics } from "./topics";

/** The help page of a function, as its @helpurl names it. */
export const helpFile = (id: string): string =>
  `help/${id.toLowerCase().replaceAll("_", "-")}.html`;

/** One page a function. Throws where a function has no topic or no example. */
export function helpPages(): Page[] {
  return worksheetFunctions.map((entry) => {
    const { id } = entry;
    const topic = topics.find((each) => each.id === id);
    if (!topic) throw new Error(`no help for ${id}: add a topic under src/site/help/topics`);
    const own = examples.filter((each) => each.id === id);
    if (own.length === 0)
      throw new Error(`no worked example for ${id}: add one to src/site/help/examples`);
    return { file: helpFile(id), title: `${namespace}.${id}`, body: body(entry, topic, own) };
  });
}

function body(entry: WorksheetFunction, topic: Topic, own: readonly Example[]): Html {
  const named = [topic, ...topic.formulas, ...own]
    .map(({ source }) => source)
    .filter((source) => source !== undefined);
  const unique = [...new Map(named.map((source) => [JSON.stringify(source), source])).values()];
  return html`<h1>${breakable(`${namespace}.${entry.id}`)}</h1>
<p>${entry.description}</p>
${topic.computes.map((text) => html`<p>${text}</p>\n`)}
<h2>Write it so</h2>
<pre>${breakable(signature(entry))}</pre>
<dl>${entry.parameters.map(
    ({ name, optional, description }) => html`
<dt>${name}${optional ? html` <span class="tag">(may be left out)</span>` : ""}</dt>
<dd>${description}</dd>`,
  )}
<dt>Result</dt>
<dd>${topic.result}</dd>
</dl>
<h2>Worked example</h2>
${own.map(examplePart)}
${topic.formulas.length > 0 ? html`<h2>Formula</h2>\n${topic.formulas.map(formulaPart)}` : ""}
<h2>Source</h2>
<ul>
${unique.map(sourcePart)}</ul>
<h2>Errors you may meet</h2>
<p>A bad cell in a range spoils its own result only. Point at the cell's error sign to read the message.</p>
<dl>${topic.troubles.map(({ when, args }) => {
    const { code, message } = problemOf(entry.id, args);
    return html`
<dt>${when}</dt>
<dd><code>${formulaText(entry.id, args)}</code> gives <code>${code}</code>: ${message}.</dd>`;
  })}
</dl>
<p>For <code>#NAME?</code>, <code>#BUSY!</code> and <code>#SPILL!</code> see <a href="../support.html">Support</a>.</p>
<h2>See also</h2>
<ul>
${topic.related.map((id) => html`<li><a href="../${helpFile(id)}">${namespace}.${id}</a></li>\n`)}</ul>`;
}

/** A name that a narrow screen may break after a dot or a bracket, or before an underscore. */
function breakable(name: string): (string | Html)[] {
  return name
    .split(/(?<=[A-Z]\.|\()|(?=_)/)
    .map((part, i) => (i === 0 ? part : html`<wbr>${part}`));
}

/** The call with the names of its arguments; those that may be left out in square brackets. */
function signature({ id, parameters }: WorksheetFunction): string {
  const names = parameters.map(({ name, optional, repeating }) =>
    optional ? `[${name}]` : repeating ? `${name}, …` : name,
  );
  return `=${namespace}.${id}(${names.join(", ")})`;
}

function examplePart(example: Example): Html {
  return html`<p>${example.words}</p>
<pre>${breakable(formulaText(example.id, example.args))}</pre>
${example.sums.map(sumPart)}<p>Result: <strong>${resultText(example)}</strong></p>
`;
}

/** What the function itself gives, numbers to six digits. */
function resultText({ id, args, unit }: Example): string {
  const outcome = run(id, args);
  if ("failure" in outcome)
    throw new Error(`the example of ${id} fails: ${outcome.failure.message}`);
  const rows = outcome.cells.map((row) =>
    row.map((cell) => {
      if (typeof cell === "number") return significant(cell);
      if (typeof cell === "string") return cell;
      throw new Error(`the example of ${id} gives an error`);
    }),
  );
  const [first, ...further] = rows;
  if (first && further.length > 0) return rows.map((row) => row.join(" | ")).join("; ");
  return `${first?.join(" and ")}${unit === "" ? "" : ` ${unit}`}`;
}
