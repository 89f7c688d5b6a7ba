import { describe, expect, it } from "vitest";
import { helpFile, worksheetFunctions } from "../../functions";
import { descriptions } from "../../functions/metadata/index.mjs";
import { editions } from "../../src/editions";
import { type Example, type ExampleCell, explainCall, ruleFor } from "../../src/rules";
import { helpOf, helpPages } from "../../src/site/help/page";
import { formulaText, problemOf, run } from "../../src/site/help/run";
import { html } from "../../src/site/html/escape";
import { pageText } from "../../src/site/html/page";

const ids = worksheetFunctions.map(({ id }) => id);
const examples = ids.flatMap((id) =>
  (helpOf(id)?.examples ?? []).map((example) => [id, example] as const),
);
const pages = helpPages(await descriptions());
const pageOf = (id: string) => {
  const page = pages.find(({ file }) => file === helpFile(id));
  return page ? pageText(page, "assets/site.css") : "";
};

/** The cells of an example, row by row. */
const rowsOf = (gives: Example["gives"]): readonly (readonly ExampleCell[])[] => {
  if (!Array.isArray(gives)) return [[gives as ExampleCell]];
  return (Array.isArray(gives[0]) ? gives : [gives]) as readonly (readonly ExampleCell[])[];
};
const sixDigits = (cell: unknown) =>
  typeof cell === "number" ? Number(cell.toPrecision(6)) : cell;

describe("the worked examples", () => {
  it.each(examples.map(([id, example]) => [formulaText(id, example.args), id, example] as const))(
    "%s gives what the help says, to six digits",
    (_, id, { args, gives }) => {
      const outcome = run(id, args);
      const cells = "cells" in outcome ? outcome.cells : [];
      expect(cells.map((row) => row.map(sixDigits))).toEqual(rowsOf(gives));
    },
  );

  it("name the clause and the mark that the edition itself carries", () => {
    const known = editions.flatMap(({ rooms, dwelling }) => [...rooms, ...dwelling]);
    for (const id of ["ROOM_RATE", "DWELLING_RATE"]) {
      const [example] = helpOf(id)?.examples ?? [];
      for (const { work, clause, mark } of explainCall(id, example?.args ?? []).sources)
        expect(known.map((rule) => rule.source)).toContainEqual(
          expect.objectContaining({ work, clause, mark }),
        );
    }
  });
});

describe("the help", () => {
  it("has an example and a page for every function, and for nothing else", () => {
    for (const id of ids) expect(helpOf(id)?.examples.length, id).toBeGreaterThan(0);
    expect(pages.map(({ file }) => file)).toEqual(ids.map(helpFile));
  });

  it("points only at functions there are, and never at the page itself", () => {
    for (const id of ids) {
      const { related = [] } = helpOf(id) ?? {};
      expect(ids).toEqual(expect.arrayContaining([...related]));
      expect(related).not.toContain(id);
    }
  });

  it.each(ids)("%s: describes each argument, its formula, source, example and errors", (id) => {
    const text = pageOf(id);
    const entry = worksheetFunctions.find((each) => each.id === id);
    for (const { name } of entry?.parameters ?? [])
      expect(text).toMatch(new RegExp(`<dt>${name}[ <]`));
    const help = helpOf(id);
    for (const { title } of help?.formulas ?? ruleFor(id)?.formulas ?? [])
      expect(text).toContain(title);
    expect(text).toMatch(/— (read|two sources|from memory|common practice|by definition): /);
    for (const { args } of help?.troubles ?? [])
      expect(text).toContain(`<code>${problemOf(id, args).code}</code>`);
    expect(text.match(/<h1>/g)).toHaveLength(1);
    expect(text.match(/<h2>[^<]+/g)?.length).toBeGreaterThanOrEqual(5);
  });

  it("shows the formula in symbols and with the numbers of the example", () => {
    expect(pageOf("FLOW")).toContain("Q = K · A · √ΔP");
    expect(pageOf("FLOW")).toContain("Q = 1.07 · 24 · √4");
    expect(pageOf("DWELLING_RATE")).toContain("Q<sub>req</sub> = 0.03 · 1800 + 7.5 · (3 + 1)");
  });

  it("shows the very message that the function answers", () => {
    expect(pageOf("OPEN_AREA")).toContain("unknown opening &quot;D&quot;: this box has A, B, C.");
  });

  it("refuses to tell of an error that does not come", () => {
    expect(() => problemOf("FLOW", [24, 4])).toThrow("=FANROW.FLOW(24, 4) fails, but it does not");
    expect(() => run("NO_SUCH", [])).toThrow("NO_SUCH");
  });

  it("writes calls as one types them: blanks for what is left out, columns as constants", () => {
    expect(formulaText("FLOW", [24, 4, null, "si"])).toBe('=FANROW.FLOW(24, 4, , "si")');
    expect(formulaText("REACH", [[12, 24]])).toBe("=FANROW.REACH({12; 24})");
    expect(formulaText("OPEN_AREA", ['a "b"'])).toBe('=FANROW.OPEN_AREA("a ""b""")');
  });
});

describe("markup", () => {
  it("escapes every text that is put into it, once", () => {
    const inner = html`<b>${"<i> & \"x\" 'y'"}</b>`;
    expect(html`<p title="${'"'}">${inner}${[1, "<"]}${undefined}</p>`.markup).toBe(
      '<p title="&quot;"><b>&lt;i&gt; &amp; &quot;x&quot; &#39;y&#39;</b>1&lt;</p>',
    );
  });
});
