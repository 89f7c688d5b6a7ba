import type { OpenBook } from "../open-book";
import { HostError } from "../wire/errors";
import type { Members } from "../wire/served";
import type { Desk } from "./desk";
import { eventMethods } from "./event-methods";

export function worksheetsMembers(desk: Desk): Members<OpenBook> {
  const listed = (book: OpenBook, visibleOnly: boolean) =>
    visibleOnly ? book.tabs.filter((tab) => tab.visibility === "visible") : book.tabs;
  const at = (book: OpenBook, visibleOnly: boolean, place: number) => {
    const tab = listed(book, visibleOnly).at(place);
    if (tab === undefined) throw new HostError("ItemNotFound", "The workbook has no such sheet.");
    return desk.worksheet(tab);
  };
  return {
    className: "WorksheetCollection",
    items: (book) => book.tabs.map((tab) => desk.worksheet(tab)),
    item: (book, args) => desk.worksheet(book.tab(args.text(0, "The name of the sheet"))),
    methods: {
      add(book, args) {
        if (book.isStructureProtected)
          throw new HostError("AccessDenied", "The workbook is protected; no sheet can be added.");
        return desk.worksheet(book.addTab(args.optionalText(0, "The name of the sheet")));
      },
      getActiveWorksheet: (book) => desk.worksheet(book.active),
      getCount: (book, args) => listed(book, args.flag(0)).length,
      getFirst: (book, args) => at(book, args.flag(0), 0),
      getLast: (book, args) => at(book, args.flag(0), -1),
      getItemOrNullObject(book, args) {
        const tab = book.findTab(args.text(0, "The name of the sheet"));
        return tab === null ? null : desk.worksheet(tab);
      },
      ...eventMethods<OpenBook>(desk.book.events, null),
    },
  };
}
