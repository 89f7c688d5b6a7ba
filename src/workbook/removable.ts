import { decodeText } from "./decode";
import { printNames } from "./names";
import { openXml } from "./opc";
import type { Package } from "./package";
import { sheetOwnParts } from "./sheet-parts";
import { escapeText } from "./text";

function escapePattern(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

/** How references name the sheet: Name!, 'Na me'!, Name:Other! (first of several), and sheet="Name" of pivot sources. */
function mentionOf(name: string): RegExp {
  const plain = escapePattern(escapeText(name));
  const quoted = escapePattern(escapeText(name.replaceAll("'", "''")));
  // In attributes and in some writers' text an apostrophe stands as &apos; or &#39;.
  const apostrophe = "(?:'|&apos;|&#39;)";
  const inQuotes = quoted.replaceAll("'", apostrophe);
  return new RegExp(
    `(?<![\\w.])${plain}!|${inQuotes}${apostrophe}!|(?<![\\w.])${plain}:[^<>!"]{1,40}!|sheet="${plain}"`,
    "i",
  );
}

/** The workbook part's names apart from those local to the sheet, or some of them, which go with it. */
function otherNames(
  pkg: Package,
  workbookPart: string,
  index: number,
  follow?: readonly string[],
): string {
  const doc = openXml(pkg, workbookPart);
  const list = doc.child(doc.root, "definedNames");
  return (list === undefined ? [] : doc.children(list, "definedName"))
    .filter(
      ({ attributes }) =>
        Number(attributes.localSheetId ?? -1) !== index ||
        follow?.includes(String(attributes.name)) === false,
    )
    .map((name) => doc.raw(name))
    .join("\n");
}

export interface SheetPlace {
  readonly name: string;
  readonly part: string;
  /** Place in the workbook's list of sheets. */
  readonly index: number;
  readonly workbookPart: string;
}

/** Why a sheet cannot be removed without breaking something, or null when it can. */
export function whyNotRemovable(pkg: Package, place: SheetPlace): string | null {
  const { name, part, index, workbookPart } = place;
  const owned = sheetOwnParts(pkg, part);
  if ("reason" in owned) return owned.reason;
  const own = new Set([part, ...owned.parts]);
  return whoMentions(pkg, name, (other) =>
    own.has(other) ? "" : other === workbookPart ? otherNames(pkg, workbookPart, index) : null,
  );
}

/** What refers to a sheet by its name and would not follow another name, or null. */
export function whyNotRenamable(pkg: Package, place: SheetPlace): string | null {
  const { name, index, workbookPart } = place;
  return whoMentions(pkg, name, (other) =>
    other === workbookPart ? otherNames(pkg, workbookPart, index, printNames) : null,
  );
}

/** The first part that refers to a sheet; `textFor` gives what to search in a part, null for all of it. */
function whoMentions(
  pkg: Package,
  name: string,
  textFor: (part: string) => string | null,
): string | null {
  const mention = mentionOf(name);
  for (const other of pkg.names()) {
    const isText =
      /\.(xml|rels|vml)$/i.test(other) && !/sharedStrings\.xml$|^docProps\//i.test(other);
    if (!isText) continue;
    const text = textFor(other) ?? decodeText(other, pkg.get(other) as Uint8Array);
    if (mention.test(text)) return `${other} refers to it`;
  }
  return null;
}
