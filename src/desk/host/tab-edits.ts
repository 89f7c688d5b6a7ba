import type { SheetState } from "../../workbook";
import type { SheetTab } from "./book";
import type { OpenBook } from "./open-book";
import { asHostError, HostError, invalidArgument } from "./wire/errors";

/** Deletes a sheet for good; refuses the last visible one and one that other parts refer to. */
export function deleteTab(book: OpenBook, tab: SheetTab): void {
  checkOtherVisible(book, tab);
  try {
    book.workbook.removeSheet(tab.name);
  } catch (thrown) {
    throw new HostError("InvalidOperation", asHostError(thrown).message);
  }
  book.leave(tab);
}

/** Refuses a name that is taken, not possible, or used by what would not follow. */
export function renameTab(book: OpenBook, tab: SheetTab, name: string): void {
  if (name === tab.name) return;
  const other = book.findTab(name);
  if (other !== null && other !== tab)
    throw new HostError("ItemAlreadyExists", `The workbook has a sheet "${name}" already.`);
  try {
    tab.sheet = book.workbook.renameSheet(tab.name, name);
  } catch (thrown) {
    if (thrown instanceof RangeError) throw invalidArgument(thrown.message);
    throw new HostError("UnsupportedOperation", asHostError(thrown).message);
  }
  book.model.refresh();
  book.touched({ kind: "sheets" });
}

/** Shows or hides a sheet; one stays visible. */
export function showTab(book: OpenBook, tab: SheetTab, state: SheetState): void {
  if (state !== "visible") {
    const other = checkOtherVisible(book, tab);
    if (book.active === tab) book.activate(other);
  }
  tab.visibility = state;
  book.touched({ kind: "sheets" });
}

function checkOtherVisible(book: OpenBook, tab: SheetTab): SheetTab {
  const other = book.tabs.find((each) => each !== tab && each.visibility === "visible");
  if (other === undefined)
    throw new HostError("InvalidOperation", "A workbook needs a visible sheet.");
  return other;
}
