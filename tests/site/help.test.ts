import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { oneValue } from "../../src/algebra";
import { editions } from "../../src/editions";
import { examples, helpFile, helpPages } from "../../src/site";
import { formulaText, problemOf, run } from "../../src/site/help/run";
import { topics } from "../../src/site/help/topics";
import { html } from "../../src/site/html/escape";
import { pageText } from "../../src/site/html/page";

const ids = worksheetFunctions.map(({ id }) => id);
const pages = helpPages();
const pageOf = (id: string) => {
  const page = pages.find(({ file }) => file === helpFile(id));
  return page ? pageText(page, "assets/site.css") : "";
};

describe("the worked examples", () => {
  it.each(examples.map((example) => [formulaText(example.id, example.args), example] as const))(
    "%s gives what the help says",
    (_, { id, args, gives, tolerance }) => {
      const outcome = run(id, args);
      const cells = "cells" in outcome ? outcome.cells : [];
      expect(cells.map((row) => row.length)).toEqual(gives.map((row) => row.length));
      gives.flat().forEach((expected, i) => {
        const cell = cells.flat()[i];
        if (typeof expected === "string") expect(cell).toBe(expected);
        else expect(Math.abs((cell as number) - expected)).toBeLessThanOrEqual(tolerance);
      });
    },
  );

  it("carry sums that end in the same numbers, but for the margin behind a verdict", () => {
    for (const { id, sums, gives } of examples) {
      const numbers = gives.flat().filter((cell) => typeof cell === "number");
      const ends = sums
        .slice(-numbers.length)
        .map(({ formula, given }) => oneValue(formula, given));
      if (numbers.length > 0 && sums.length > 0)
        expect(ends, id).toEqual(numbers.map((number) => expect.closeTo(number, 3)));
    }
  });

  it("name the clause and the mark that the edition itself carries", () => {
    const known = editions.flatMap(({ rooms, dwelling }) => [...rooms, ...dwelling]);
    const sourced = examples.filter(({ source }) => source);
    expect(sourced.map(({ id }) => id)).toEqual(["ROOM_RATE", "DWELLING_RATE"]);
    for (const { source } of sourced)
      expect(known.map((rule) => rule.source)).toContainEqual(expect.objectContaining(source));
  });
});

describe("the help", () => {
  it("has a topic, an example and a page for every function, and for nothing else", () => {
    expect(topics.map(({ id }) => id).sort()).toEqual([...ids].sort());
    expect([...new Set(examples.map(({ id }) => id))].sort()).toEqual([...ids].sort());
    expect(pages.map(({ file }) => file)).toEqual(ids.map(helpFile));
  });

  it("points only at functions there are, and never at the page itself", () => {
    for (const { id, related } of topics) {
      expect(ids).toEqual(expect.arrayContaining([...related]));
      expect(related).not.toContain(id);
    }
  });

  it.each(ids)("%s: describes each argument, its formula, source, example and errors", (id) => {
    const text = pageOf(id);
    const entry = worksheetFunctions.find((each) => each.id === id);
    for (const { name } of entry?.parameters ?? [])
      expect(text).toMatch(new RegExp(`<dt>${name}[ <]`));
    const topic = topics.find((each) => each.id === id);
    for (const { title } of topic?.formulas ?? []) expect(text).toContain(title);
    expect(text).toMatch(/— (read|two sources|from memory|common practice|by definition): /);
    for (const { args } of topic?.troubles ?? [])
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
