import { readBook } from "./book";
import type { Dialect } from "./dialect";
import { addRel, kindOf, openXml, readRels, removePart, removeRel, setContentType } from "./opc";
import type { Package } from "./package";
import { escapeAttribute } from "./text";
import type { XmlPart } from "./tree";
import type { SheetState } from "./types";

/** The prefix bound to the relationships namespace on the workbook element, or a declaration to write with the id. */
function idAttribute(doc: XmlPart, dialect: Dialect, id: string): string {
  for (const [name, value] of Object.entries(doc.root.attributes)) {
    if (name.startsWith("xmlns:") && value === dialect.relationships)
      return `${name.slice(6)}:id="${id}"`;
  }
  return `xmlns:r="${dialect.relationships}" r:id="${id}"`;
}

/** Enters a new worksheet at the end of the workbook and gives its part's name. */
export function enterSheet(
  pkg: Package,
  workbookPart: string,
  dialect: Dialect,
  name: string,
  xml: string,
  state: SheetState = "visible",
): string {
  const book = readBook(pkg, workbookPart);
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf("/") + 1);
  let number = book.sheets.length + 1;
  while (pkg.has(`${folder}worksheets/sheet${number}.xml`)) number++;
  const part = `${folder}worksheets/sheet${number}.xml`;
  pkg.set(part, new TextEncoder().encode(xml));
  const id = addRel(pkg, workbookPart, `${dialect.relationships}/worksheet`, part);
  setContentType(
    pkg,
    part,
    "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml",
  );
  const doc = openXml(pkg, workbookPart);
  const list = doc.child(doc.root, "sheets");
  const sheetId = Math.max(0, ...book.sheets.map((sheet) => sheet.sheetId)) + 1;
  const entry = `<${doc.prefix}sheet name="${escapeAttribute(name)}" sheetId="${sheetId}"${state === "visible" ? "" : ` state="${state}"`} ${idAttribute(doc, dialect, id)}/>`;
  if (list === undefined)
    doc.append(doc.root, `<${doc.prefix}sheets>${entry}</${doc.prefix}sheets>`);
  else doc.append(list, entry);
  pkg.set(workbookPart, doc.toBytes());
  return part;
}

/** Gives a sheet of the list another name. */
export function renameSheet(pkg: Package, workbookPart: string, index: number, name: string): void {
  const doc = openXml(pkg, workbookPart);
  const list = doc.child(doc.root, "sheets");
  const entry = list === undefined ? undefined : doc.children(list, "sheet")[index];
  if (entry === undefined) return;
  doc.setAttribute(entry, "name", name);
  pkg.set(workbookPart, doc.toBytes());
}

/** Takes a sheet off the list, with its own names; the places of later sheets move up by one. */
export function strikeSheet(pkg: Package, workbookPart: string, index: number): void {
  const { sheets } = readBook(pkg, workbookPart);
  const doc = openXml(pkg, workbookPart);
  const list = doc.child(doc.root, "sheets");
  const entry = list === undefined ? undefined : doc.children(list, "sheet")[index];
  const sheet = sheets[index];
  if (entry === undefined || sheet === undefined) return;
  doc.remove(entry);
  const moveUp = (
    element: Parameters<typeof doc.remove>[0],
    attribute: string,
    atLeast: number,
  ) => {
    const place = Number(element.attributes[attribute] ?? Number.NaN);
    if (place >= atLeast) doc.setAttribute(element, attribute, String(Math.max(0, place - 1)));
  };
  const names = doc.child(doc.root, "definedNames");
  const own = names === undefined ? [] : doc.children(names, "definedName");
  const gone = own.filter((name) => Number(name.attributes.localSheetId ?? -1) === index);
  if (names !== undefined && gone.length === own.length) doc.remove(names);
  else {
    for (const name of own) {
      if (gone.includes(name)) doc.remove(name);
      else moveUp(name, "localSheetId", index + 1);
    }
  }
  const views = doc.child(doc.root, "bookViews");
  for (const view of views === undefined ? [] : doc.children(views, "workbookView")) {
    moveUp(view, "activeTab", Math.max(1, Math.min(index, sheets.length - 1)));
    moveUp(view, "firstSheet", Math.max(1, Math.min(index, sheets.length - 1)));
  }
  pkg.set(workbookPart, doc.toBytes());
  removeRel(pkg, workbookPart, sheet.rel.id);
  removePart(pkg, sheet.rel.target);
}

/**
 * Drops the calculation chain. It may not name a cell that has no formula any more, and a program
 * that calculates makes it anew.
 */
export function dropCalcChain(pkg: Package, workbookPart: string): void {
  for (const rel of readRels(pkg, workbookPart)) {
    if (kindOf(rel.type) !== "calcChain") continue;
    removeRel(pkg, workbookPart, rel.id);
    removePart(pkg, rel.target);
  }
}
