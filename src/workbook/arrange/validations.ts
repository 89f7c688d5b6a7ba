import { escapeText } from "../text";
import type { Element } from "../tree";
import type { SheetFrame } from "./frame";
import { mergedAttributes } from "./frame";
import type { Validation } from "./spec";

/** Longest list of entries a validation can spell out (ECMA-376 limits formula1 of a list to 255 characters). */
const maxListText = 255;

/** The formula of a list of entries. Throws a RangeError for entries that cannot be spelled out. */
export function listFormula(ref: string, list: readonly string[]): string {
  const comma = list.find((entry) => entry.includes(","));
  if (comma !== undefined) {
    throw new RangeError(
      `Validation of ${ref}: the entry "${comma}" holds a comma; put the list in cells.`,
    );
  }
  const joined = list.join(",");
  if (joined.length > maxListText) {
    throw new RangeError(
      `Validation of ${ref}: the list has over ${maxListText} characters; put it in cells.`,
    );
  }
  return `"${joined.replaceAll('"', '""')}"`;
}

function elements(frame: SheetFrame): Element[] {
  const list = frame.first("dataValidations");
  return list === undefined ? [] : frame.doc.children(list, "dataValidation");
}

/** The validations as they stand in the file. */
export function readValidations(frame: SheetFrame): Validation[] {
  return elements(frame).map((element) => {
    const { sqref = "", type = "none", ...attributes } = element.attributes;
    const text = (local: string) => frame.doc.child(element, local)?.text;
    return Object.freeze({
      ref: sqref,
      type,
      formula: text("formula1") ?? "",
      formula2: text("formula2"),
      attributes,
    });
  });
}

/** Makes these the validations of the sheet; `known` stand for those in the file, in its order. */
export function arrangeValidations(
  frame: SheetFrame,
  known: readonly Validation[],
  next: readonly Validation[],
): Validation[] {
  const { doc } = frame;
  const there = elements(frame);
  const wanted = new Set(next);
  const kept = known.filter((validation) => wanted.has(validation));
  const inFile = new Set(kept);
  const added = next.filter((validation) => !inFile.has(validation));
  const list = frame.first("dataValidations");
  if (kept.length === known.length && added.length === 0) return kept;
  const inner =
    there
      .filter((_, i) => wanted.has(known[i] as Validation))
      .map((element) => doc.raw(element))
      .join("") + added.map((validation) => validationXml(frame, validation)).join("");
  const attributes = mergedAttributes(list?.attributes ?? {}, {
    count: String(kept.length + added.length),
  });
  frame.put(
    "dataValidations",
    inner === "" ? "" : frame.element("dataValidations", attributes, inner),
  );
  return [...kept, ...added];
}

const usual = { allowBlank: "1", showInputMessage: "1", showErrorMessage: "1" };

function validationXml(frame: SheetFrame, validation: Validation): string {
  const { ref, type, formula, formula2, attributes = usual } = validation;
  const part = (local: string, text: string | undefined) =>
    text === undefined || text === "" ? "" : frame.element(local, {}, escapeText(text));
  return frame.element(
    "dataValidation",
    { type, ...attributes, sqref: ref },
    part("formula1", formula) + part("formula2", formula2),
  );
}
