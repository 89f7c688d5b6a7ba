import type { OpenBook } from "../open-book";
import { HostError } from "../wire/errors";
import { collection, type Members } from "../wire/served";
import type { Desk } from "./desk";
import { eventMethods } from "./event-methods";

export function worksheetsMembers(desk: Desk): Members<OpenBook> {
  return collection<OpenBook>({
    className: "WorksheetCollection",
    items: (book) => book.tabs.map(desk.worksheet),
    find(book, name) {
      const tab = book.findTab(name);
      return tab === null ? null : desk.worksheet(tab);
    },
    missing: (name) => `There is no sheet "${name}".`,
    methods: {
      add(book, args) {
        if (book.isStructureProtected)
          throw new HostError("AccessDenied", "The workbook is protected; no sheet can be added.");
        return desk.worksheet(book.addTab(args.optionalText(0, "The name of the sheet")));
      },
      getActiveWorksheet: (book) => desk.worksheet(book.active),
      ...eventMethods<OpenBook>(desk.book.events, null),
    },
  });
}
