import { damaged, quoted } from "./error";
import { kindOf, openXml, type Relationship, readRels } from "./opc";
import type { Package } from "./package";
import type { XmlPart } from "./tree";
import type { DefinedName, SheetState } from "./types";
import { attributeNamed, isTrue } from "./xml";

export interface BookSheet {
  readonly name: string;
  readonly state: SheetState;
  readonly sheetId: number;
  readonly rel: Relationship;
  /** False for chart, dialog and macro sheets, which hold no cells. */
  readonly isWorksheet: boolean;
}

/** What the workbook part says. */
export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly DefinedName[];
  readonly date1904: boolean;
}

function stateOf(value: string | undefined): SheetState {
  return value === "hidden" || value === "veryHidden" ? value : "visible";
}

function readSheets(pkg: Package, doc: XmlPart, rels: readonly Relationship[]): BookSheet[] {
  const list = doc.child(doc.root, "sheets");
  if (list === undefined) return [];
  const owners = new Map<string, string>();
  return doc.children(list, "sheet").map((element) => {
    const { name = "", state, sheetId } = element.attributes;
    const id = attributeNamed(element, "id");
    const rel = rels.find((known) => known.id === id);
    if (rel === undefined || rel.external || !pkg.has(rel.target)) {
      throw damaged(doc.part, `the sheet ${quoted(name)} has no part in the package`);
    }
    const other = owners.get(rel.target);
    if (other !== undefined)
      throw damaged(doc.part, `the sheets ${quoted(other)} and ${quoted(name)} are one part`);
    owners.set(rel.target, name);
    return {
      name,
      state: stateOf(state),
      sheetId: Number(sheetId),
      rel,
      isWorksheet: kindOf(rel.type) === "worksheet",
    };
  });
}

export function readBook(pkg: Package, part: string): Book {
  const doc = openXml(pkg, part);
  if (doc.root.local !== "workbook") throw damaged(part, "it is no workbook");
  const sheets = readSheets(pkg, doc, readRels(pkg, part));
  const list = doc.child(doc.root, "definedNames");
  const names = (list === undefined ? [] : doc.children(list, "definedName")).map((element) => {
    const { name = "", localSheetId, comment } = element.attributes;
    const sheet = localSheetId === undefined ? null : (sheets[Number(localSheetId)]?.name ?? null);
    const named = { name, formula: element.text, sheet };
    return comment === undefined ? named : { ...named, comment };
  });
  const date1904 = isTrue(doc.child(doc.root, "workbookPr")?.attributes.date1904);
  return { sheets, names, date1904 };
}
