import type { Validation as FileValidation, Sheet } from "../../workbook";
import { rangesOf, refOf } from "./refs-text";
import type { ListRule, Validation } from "./validation-rule";

const quoted = /^"(.*)"$/s;

/** The validations of a sheet's file. */
export function validationsOf(sheet: Sheet): Validation[] {
  return sheet.validations.map((inFile) => {
    const { type, formula, attributes = {} } = inFile;
    const entries = quoted.exec(formula)?.[1]?.replaceAll('""', '"');
    // The attribute says the opposite of its name: it hides the list.
    const inCellDropDown = !["1", "true"].includes(attributes.showDropDown ?? "");
    const rule = { list: { inCellDropDown, source: entries ?? `=${formula}` } };
    return { ranges: rangesOf(inFile.ref), rule: type === "list" ? rule : null, inFile };
  });
}

/** The validations as the file is to have them; those that did not change are the sheet's own objects. */
export function fileValidationsOf(validations: readonly Validation[]): FileValidation[] {
  return validations.map(({ ranges, rule, inFile }) => {
    const ref = refOf(ranges);
    if (inFile !== undefined) return inFile.ref === ref ? inFile : { ...inFile, ref };
    return listOf(ref, rule as ListRule);
  });
}

function listOf(ref: string, { list: { source, inCellDropDown } }: ListRule): FileValidation {
  const formula = source.startsWith("=") ? source.slice(1) : `"${source.replaceAll('"', '""')}"`;
  return {
    ref,
    type: "list",
    formula,
    attributes: {
      allowBlank: "1",
      ...(inCellDropDown ? {} : { showDropDown: "1" }),
      showInputMessage: "1",
      showErrorMessage: "1",
    },
  };
}
