import { maxCols, maxRows, parseRectangle } from "../../cells";
import { checkedColor } from "../color";
import { decodeText, detectEncoding, encodeText } from "../decode";
import { arrangeColumns } from "./columns";
import { SheetFrame } from "./frame";
import { arrangePage, isFitted } from "./page";
import { arrangeRows } from "./rows";
import { arrangeConditionalFormats, type Looks } from "./rules";
import type { Arrangement, ConditionalFormat, Validation } from "./spec";
import { arrangeValidations } from "./validations";
import { arrangeFrozen } from "./view";

/** The rules of a sheet as objects, each standing for one in the file, in the file's order. */
export interface SheetRules {
  readonly conditionalFormats: readonly ConditionalFormat[];
  readonly validations: readonly Validation[];
}

/** A sheet part with changes made around its cells, and the rules it has then. */
export function arrangeSheet(
  part: string,
  bytes: Uint8Array,
  depth: number,
  changes: Arrangement,
  rules: () => SheetRules,
  looks: Looks,
): { readonly bytes: Uint8Array; readonly rules: SheetRules | undefined } {
  checkArrangement(changes);
  const encoding = detectEncoding(bytes);
  const text = decodeText(part, bytes);
  const withRows = arrangeRows(part, text, depth, changes);
  const frame = new SheetFrame(
    part,
    withRows === text ? bytes : encodeText(withRows, encoding),
    depth,
  );
  // In the order of the format, so that what is added at one place stands in that order too.
  putProperties(frame, changes);
  if (changes.frozen) arrangeFrozen(frame, changes.frozen.rows, changes.frozen.cols);
  arrangeColumns(frame, changes);
  if (changes.merges) putMerges(frame, changes.merges);
  let { conditionalFormats, validations } =
    changes.conditionalFormats || changes.validations ? rules() : noRules;
  if (changes.conditionalFormats)
    conditionalFormats = arrangeConditionalFormats(
      frame,
      conditionalFormats,
      changes.conditionalFormats,
      looks,
    );
  if (changes.validations)
    validations = arrangeValidations(frame, validations, changes.validations);
  if (changes.page) arrangePage(frame, changes.page);
  const hasRules = changes.conditionalFormats || changes.validations;
  return {
    bytes: frame.doc.toBytes(),
    rules: hasRules ? { conditionalFormats, validations } : undefined,
  };
}

const noRules: SheetRules = { conditionalFormats: [], validations: [] };

/** Refuses what a sheet cannot have, before anything is changed. */
export function checkArrangement(changes: Arrangement): void {
  const { widths, heights, merges = [], frozen, tabColor } = changes;
  if (typeof tabColor === "string") checkedColor(tabColor);
  for (const [col, width] of widths ?? [])
    if (!(col >= 0 && col < maxCols) || (width !== null && !(width >= 0 && width <= 255)))
      throw new RangeError(`Column ${col} cannot be ${width} characters wide; 255 are the most.`);
  for (const [row, height] of heights ?? [])
    if (!(row >= 0 && row < maxRows) || (height !== null && !(height >= 0 && height <= 409)))
      throw new RangeError(`Row ${row} cannot be ${height} points high; 409 are the most.`);
  if (frozen && (frozen.rows < 0 || frozen.cols < 0))
    throw new RangeError("The count of frozen lines is negative.");
  const ranges = merges.map((ref) => ({ ref, ...parseRectangle(ref) }));
  ranges.forEach((a, i) => {
    const over = ranges.slice(i + 1).find((b) => {
      return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
    });
    if (over) throw new RangeError(`The merged ranges ${a.ref} and ${over.ref} overlap.`);
  });
}

function putProperties(frame: SheetFrame, { tabColor, page }: Arrangement): void {
  const fitted = page !== undefined && isFitted(page);
  if (tabColor === undefined && !fitted) return;
  const old = frame.first("sheetPr");
  const raw = (local: string) => {
    const element = old && frame.doc.child(old, local);
    return element === undefined ? "" : frame.doc.raw(element);
  };
  const setup = old && frame.doc.child(old, "pageSetUpPr");
  const color =
    tabColor === undefined
      ? raw("tabColor")
      : tabColor === null
        ? ""
        : frame.element("tabColor", { rgb: `FF${checkedColor(tabColor)}` });
  const pages = fitted
    ? frame.element("pageSetUpPr", { ...setup?.attributes, fitToPage: "1" })
    : raw("pageSetUpPr");
  const inner = color + frame.rest(old, "tabColor", "pageSetUpPr") + pages;
  if (old === undefined && inner === "") return;
  frame.put("sheetPr", frame.element("sheetPr", old?.attributes ?? {}, inner));
}

function putMerges(frame: SheetFrame, merges: readonly string[]): void {
  const inner = merges.map((ref) => frame.element("mergeCell", { ref })).join("");
  const count = String(merges.length);
  frame.put("mergeCells", merges.length === 0 ? "" : frame.element("mergeCells", { count }, inner));
}
