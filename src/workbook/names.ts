import { quotedSheet } from "../cells";
import { openXml } from "./opc";
import type { Package } from "./package";
import { escapeText } from "./text";
import { openingTag } from "./tree";

/** Children of a workbook element that stand behind its defined names (ECMA-376 part 1, 18.2.27). */
const later = [
  "calcPr",
  "oleSize",
  "customWorkbookViews",
  "pivotCaches",
  "smartTagPr",
  "smartTagTypes",
  "webPublishing",
  "fileRecoveryPr",
  "webPublishObjects",
  "extLst",
];

/**
 * Gives a name its formula, adding it when it is new; null removes it. `local` is the place of the
 * sheet it belongs to, null for the whole workbook. Other names stay as they stand.
 */
export function setName(
  pkg: Package,
  workbookPart: string,
  name: string,
  local: number | null,
  formula: string | null,
  comment = "",
): void {
  const doc = openXml(pkg, workbookPart);
  const list = doc.child(doc.root, "definedNames");
  const all = list === undefined ? [] : doc.children(list, "definedName");
  const old = all.find(({ attributes }) => {
    const isSame = attributes.name?.toLowerCase() === name.toLowerCase();
    return isSame && attributes.localSheetId === (local === null ? undefined : String(local));
  });
  if (formula === null && old === undefined) return;
  if (old !== undefined && formula === old.text && comment === "") return;
  const element = `${doc.prefix}definedName`;
  const attributes = {
    ...(old?.attributes ?? { name }),
    ...(local === null ? {} : { localSheetId: String(local) }),
    ...(comment === "" ? {} : { comment }),
  };
  const xml =
    formula === null
      ? ""
      : `${openingTag(element, attributes, false)}${escapeText(formula)}</${element}>`;
  if (old !== undefined) {
    if (xml === "" && all.length === 1 && list !== undefined) doc.remove(list);
    else doc.replace(old, xml);
  } else if (list !== undefined) doc.append(list, xml);
  else {
    const made = `<${doc.prefix}definedNames>${xml}</${doc.prefix}definedNames>`;
    const behind = new Set(later.map((local) => doc.prefix + local));
    const next = doc.root.children.find((child) => behind.has(child.name));
    if (next === undefined) doc.append(doc.root, made);
    else doc.insertBefore(next, made);
  }
  pkg.set(workbookPart, doc.toBytes());
}

/** Names that say how one sheet is printed: they go with it, and by its name. */
export const printNames = ["_xlnm.Print_Titles", "_xlnm.Print_Area"];

/** Lets the print titles and the print area of a sheet follow its new name. */
export function renameInPrintNames(
  pkg: Package,
  workbookPart: string,
  local: number,
  newName: string,
): void {
  for (const name of printNames) {
    const doc = openXml(pkg, workbookPart);
    const list = doc.child(doc.root, "definedNames");
    const own = (list === undefined ? [] : doc.children(list, "definedName")).find(
      ({ attributes }) => attributes.name === name && attributes.localSheetId === String(local),
    );
    const ranges = own?.text.replace(ofSheet, `$1${quotedSheet(newName)}!`);
    if (ranges !== undefined) setName(pkg, workbookPart, name, local, ranges);
  }
}

/** The sheet before each of the ranges of a list. */
const ofSheet = /(^|,)(?:'(?:[^']|'')+'|[^',!]+)!/g;
