import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { worksheet } from "./packages";
import { bothWays } from "./sheets";

const strings = ["plain", "bold and not", "a\rb"];

const letters = ["A", "B", "C", "D", "E"];

/** Text of an element: mostly plain, now and then what only a full parser knows, or damage. */
const text = fc
  .array(
    fc.oneof(
      {
        weight: 20,
        arbitrary: fc.constantFrom("a", "B2", "1", ".5", "-", " ", "+", "(", '"', "é"),
      },
      {
        weight: 4,
        arbitrary: fc.constantFrom("&amp;", "&lt;", "&#10;", "&#x1F600;", "😀", "_x0041_", "]"),
      },
      { weight: 2, arbitrary: fc.constantFrom("\n", "\r\n", "\t", "\r", "]]") },
      {
        weight: 1,
        arbitrary: fc.constantFrom("<!--c-->", "<![CDATA[<]]>", "]]>", "&no;", "\u0001", "<b/>"),
      },
    ),
    { maxLength: 5 },
  )
  .map((pieces) => pieces.join(""));

const number = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
  fc.integer().map(String),
  fc.tuple(fc.bigInt({ min: 0n, max: 10n ** 18n }), fc.nat(20)).map(([digits, point]) => {
    const all = String(digits);
    return `${all.slice(0, point)}.${all.slice(point)}`;
  }),
);

const space = fc.oneof(
  { weight: 6, arbitrary: fc.constant("") },
  fc.constantFrom(" ", "\n  ", "\r\n"),
);

/** Attributes in any order, some of them twice or of other programs. */
function tag(name: string, attributes: readonly string[]) {
  return fc
    .tuple(fc.shuffledSubarray([...attributes]), space)
    .map(([kept, end]) => `<${[name, ...kept].join(" ")}${end}`);
}

const value = fc.oneof(
  number.map((inner) => `<v>${inner}</v>`),
  fc.nat(3).map((index) => `<v>${index}</v>`),
  text.map((inner) => `<v>${inner}</v>`),
  fc.constantFrom("<v/>", "<v></v>", '<v xml:space="preserve"> </v>', "<v>2024-05-01</v>", ""),
);

const formula = fc
  .tuple(
    fc.oneof(
      { weight: 4, arbitrary: fc.constant("<f") },
      tag("f", ['t="shared"', 'si="0"', 'ref="A1:B2"', 'ca="1"']),
      tag("f", ['t="array"', 'ref="A1:B2"']),
    ),
    text,
    fc.boolean(),
  )
  .map(([open, inner, isEmpty]) => (isEmpty ? `${open}/>` : `${open}>${inner}</f>`));

const inline = fc.oneof(
  { weight: 4, arbitrary: text.map((inner) => `<is><t>${inner}</t></is>`) },
  fc.constantFrom(
    "<is/>",
    '<is><t xml:space="preserve"> x </t></is>',
    '<is><r><t>ri</t></r><r><t>ch</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is>',
  ),
);

function cell(row: number | undefined, col: string) {
  const types = ["n", "s", "str", "b", "e", "d", "inlineStr", "zz"].map((type) => `t="${type}"`);
  return fc
    .tuple(
      fc.oneof(
        { weight: 8, arbitrary: fc.constant(`r="${col}${row ?? 1}"`) },
        fc.constantFrom("", 'r="B2"'),
      ),
      fc.oneof(
        { weight: 4, arbitrary: fc.constant("") },
        fc.constantFrom('s="3"', 's="3" cm="1"', "s='x'"),
      ),
      fc.oneof({ weight: 3, arbitrary: fc.constant("") }, fc.constantFrom(...types)),
      space,
      fc.oneof({ weight: 3, arbitrary: fc.constant("") }, formula),
      fc.oneof({ weight: 4, arbitrary: value }, inline),
    )
    .map(([r, s, t, gap, f, v]) => {
      const open = `<c ${[t, r, s].filter((each) => each !== "").join(" ")}`;
      return f + v === "" ? `${open}/>` : `${open}>${gap}${f}${gap}${v}</c>`;
    });
}

const row = fc
  .tuple(fc.option(fc.integer({ min: 1, max: 6 }), { nil: undefined }), fc.subarray(letters))
  .chain(([index, cols]) =>
    fc
      .tuple(
        tag(index === undefined ? "row" : `row r="${index}"`, [
          'spans="1:5"',
          's="2"',
          'customFormat="1"',
          'hidden="1"',
        ]),
        space,
        fc.tuple(...cols.map((col) => cell(index, col))),
      )
      .map(([open, gap, inner]) => `${open}>${gap}${inner.join(gap)}</row>${gap}`),
  );

const sheet = fc
  .array(row, { maxLength: 5 })
  .map((rows) => worksheet(`<cols/><sheetData>${rows.join("")}</sheetData><mergeCells/>`));

describe("both readings of a sheet", () => {
  it("agree on whatever a program could write", () => {
    let plainly = 0;
    fc.assert(
      fc.property(sheet, (xml) => {
        const { plain, full, together } = bothWays(xml, { strings });
        if (plain !== undefined) {
          plainly++;
          expect(plain).toEqual(full);
        }
        expect(together).toEqual(full);
      }),
      { numRuns: 3000 },
    );
    // Both ways were gone.
    expect(plainly).toBeGreaterThan(300);
    expect(plainly).toBeLessThan(2900);
  });

  it("agree on damage anywhere in a sheet", () => {
    const good = worksheet(
      '<cols><col min="1" max="2" width="9"/></cols><sheetData><row r="1" spans="1:3"><c r="A1" s="1"><f>1+A2&amp;"x"</f><v>2.5</v></c><c r="B1" t="str"><v>a b</v></c><c r="C1" t="inlineStr"><is><t>in</t></is></c></row><row r="2"><c r="A2" t="b"><v>1</v></c></row></sheetData><mergeCells><mergeCell ref="A1:B1"/></mergeCells>',
    );
    const signs = [..."<>/=\"'&;] \n\r-!?cvfr0Aé"];
    const slip = fc.tuple(fc.nat(good.length), fc.nat(3), fc.constantFrom("", ...signs));
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 2 }), (slips) => {
        let xml = good;
        for (const [at, cut, put] of slips) xml = xml.slice(0, at) + put + xml.slice(at + cut);
        const { plain, full, together } = bothWays(xml, { strings });
        if (plain !== undefined) expect(plain).toEqual(full);
        expect(together).toEqual(full);
      }),
      { numRuns: 5000 },
    );
  });
});
