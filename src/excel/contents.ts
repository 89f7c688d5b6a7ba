import { asText, formulaOf, textFormat } from "./cell-text";

type Content = string | number | boolean;

/** Cells of a rectangle, written so that Excel takes them back as the same. */
export interface Contents {
  readonly formulas: readonly (readonly Content[])[];
  readonly numberFormats: readonly (readonly string[])[];
}

/** Asks for what `contentsOf` needs, to come with the next sync. */
export function loadContents(range: Excel.Range): Excel.Range {
  range.load("address,values,valueTypes,formulas,numberFormat");
  return range;
}

export function contentsOf(range: Excel.Range): Contents {
  const { values, valueTypes, formulas, numberFormat } = range;
  return {
    numberFormats: numberFormat as string[][],
    formulas: formulas.map((line, r) =>
      line.map((formula: Content, c): Content => {
        const value = values[r]?.[c];
        const isText = valueTypes[r]?.[c] === "String" && formulaOf(value, formula) === null;
        // On a text cell that keeps its format an apostrophe would become part of the text.
        return isText && numberFormat[r]?.[c] !== textFormat ? asText(String(value)) : formula;
      }),
    ),
  };
}
