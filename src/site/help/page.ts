import {
  helpFile,
  namespace,
  type WorksheetFunction,
  worksheetFunctions,
} from "../../../functions";
import { significant } from "../../cells";
import type { Source } from "../../formulas";
import {
  type CallWorking,
  type Example,
  explainCall,
  type Help,
  helps,
  ruleFor,
} from "../../rules";
import { type Html, html } from "../html/escape";
import type { Page } from "../html/page";
import { formulaPart, sourcePart, sumPart } from "./formula";
import { formulaText, problemOf, run } from "./run";

/** What the help says of a function. */
export const helpOf = (id: string): Help | undefined =>
  (helps as Readonly<Record<string, Help>>)[id];

/** What the comments of the functions say, by id: first of the function, then of each parameter. */
export type Descriptions = Readonly<Record<string, readonly string[]>>;

/** One page a function. Throws where there is no help for one. */
export function helpPages(told: Descriptions): Page[] {
  return worksheetFunctions.map((entry) => {
    const { id } = entry;
    const help = helpOf(id);
    if (!help) throw new Error(`no help for ${id}: add it to its rule`);
    return {
      file: helpFile(id),
      title: `${namespace}.${id}`,
      body: body(entry, help, told[id] ?? []),
    };
  });
}

function body(entry: WorksheetFunction, help: Help, told: readonly string[]): Html {
  const { id } = entry;
  const [description, ...ofParameters] = told;
  const formulas = help.formulas ?? ruleFor(id)?.formulas ?? [];
  const workings = help.examples.map((example) => workingOf(id, example));
  const named = [help, ...formulas]
    .map(({ source }) => source)
    .concat(workings.flatMap(({ sources }) => sources))
    .filter((source) => source !== undefined);
  const unique = [...new Map(named.map((source) => [sourceKey(source), source])).values()];
  return html`<h1>${breakable(`${namespace}.${id}`)}</h1>
<p>${description}</p>
${help.computes.map((text) => html`<p>${text}</p>\n`)}
<h2>Write it so</h2>
<pre>${breakable(signature(entry))}</pre>
<dl>${entry.parameters.map(
    ({ name, optional }, i) => html`
<dt>${name}${optional ? html` <span class="tag">(may be left out)</span>` : ""}</dt>
<dd>${ofParameters[i]}</dd>`,
  )}
<dt>Result</dt>
<dd>${help.result}</dd>
</dl>
<h2>Worked example</h2>
${help.examples.map((example, i) => examplePart(id, example, workings[i]))}
${formulas.length > 0 ? html`<h2>Formula</h2>\n${formulas.map(formulaPart)}` : ""}
<h2>Source</h2>
<ul>
${unique.map(sourcePart)}</ul>
<h2>Errors you may meet</h2>
<p>A bad cell in a range spoils its own result only. Point at the cell's error sign to read the message.</p>
<dl>${help.troubles.map(({ when, args }) => {
    const { code, message } = problemOf(id, args);
    return html`
<dt>${when}</dt>
<dd><code>${formulaText(id, args)}</code> gives <code>${code}</code>: ${message}.</dd>`;
  })}
</dl>
<p>For <code>#NAME?</code>, <code>#BUSY!</code> and <code>#SPILL!</code> see <a href="../support.html">Support</a>.</p>
<h2>See also</h2>
<ul>
${help.related.map((id) => html`<li><a href="../${helpFile(id)}">${namespace}.${id}</a></li>\n`)}</ul>`;
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

const sourceKey = ({ work, clause, mark }: Source): string => `${work}|${clause}|${mark}`;

/** How the function itself comes to the result of an example. */
function workingOf(id: string, { args }: Example): CallWorking {
  return explainCall(
    id,
    args.map((each) => (Array.isArray(each) ? each.map((cell) => [cell]) : each)),
  );
}

function examplePart(id: string, example: Example, working: CallWorking | undefined): Html {
  return html`<p>${example.words}</p>
<pre>${breakable(formulaText(id, example.args))}</pre>
${working?.sums.map(sumPart) ?? ""}<p>Result: <strong>${resultText(id, example, working)}</strong></p>
`;
}

/** What the function itself gives: with its unit as the working tells it, or to six digits. */
function resultText(id: string, { args, unit }: Example, working: CallWorking | undefined): string {
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
  const isTold = unit === undefined && working?.gives.length === 1 && working.result !== "";
  if (isTold) return working.result;
  return `${first?.join(" and ")}${unit === undefined ? "" : ` ${unit}`}`;
}
