import type { SheetState } from "../../workbook";
import type { SheetTab } from "./book";
import { shownText } from "./cells/read";
import type { HostRange } from "./host-range";
import type { OpenBook } from "./open-book";
import { asHostError, HostError, invalidArgument } from "./wire/errors";

/** Widest a column is made for its content, in characters. */
const widest = 60;

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

/** Makes columns as wide as their longest text, within reason. */
export function autofit(book: OpenBook, range: HostRange): void {
  const { tab } = range;
  const used = tab.used(range);
  if (used === null) return;
  for (let col = used.left; col <= used.right; col++) {
    let longest = 0;
    for (let row = used.top; row <= used.bottom; row++) {
      const value = book.model.value(tab.name, row, col);
      const text = shownText(value, book.formats.code(tab, row, col), book.workbook.date1904);
      longest = Math.max(longest, text.length);
    }
    tab.widths.set(col, Math.min(widest, longest + 2));
  }
  book.touched({ kind: "layout", sheet: tab.name });
}
