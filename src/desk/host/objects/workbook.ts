import type { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import { HostError } from "../wire/errors";
import type { Members, Served } from "../wire/served";
import type { Desk } from "./desk";
import { functions } from "./functions";

export function workbookMembers(desk: Desk): Members<OpenBook> {
  const rangeOfEvent = (book: OpenBook, reference: string): HostRange => {
    const mark = reference.indexOf("!");
    const tab = book.tab(reference.slice(0, mark));
    return book.range(tab, reference.slice(mark + 1));
  };
  return {
    className: "Workbook",
    values: {
      name: { get: (book) => book.fileName },
      readOnly: { get: () => false },
      isDirty: {
        get: (book) => book.isDirty,
        set(book, value) {
          book.isDirty = value === true;
        },
      },
    },
    links: {
      worksheets: () => desk.worksheets(),
      names: () => desk.names(null),
      tables: () => desk.tables(null),
      application: () => desk.application(),
      functions,
      settings: () => desk.settings(),
      protection: () => desk.workbookProtection(),
    },
    methods: {
      getActiveCell: ({ selection }) =>
        desk.range(selection.with({ bottom: selection.top, right: selection.left })),
      _RemoveReference: (book, args) => book.references.release(args.text(0, "The reference")),
      _RemoveAllReferences: (book) => book.references.releaseAll(),
      _GetReferenceCount: (book) => book.references.count,
      _GetRangeForEventByReferenceId: (book, args) =>
        desk.range(rangeOfEvent(book, args.text(0, "The reference"))),
      _GetRangeOrNullObjectForEventByReferenceId(book, args): Served | null {
        const reference = args.text(0, "The reference");
        const isThere = book.findTab(reference.slice(0, reference.indexOf("!"))) !== null;
        return isThere ? desk.range(rangeOfEvent(book, reference)) : null;
      },
    },
  };
}

/** The structure of the workbook; its protection is not read from the file. */
export function workbookProtectionMembers(): Members<OpenBook> {
  return {
    className: "WorkbookProtection",
    values: { protected: { get: ({ isStructureProtected }) => isStructureProtected } },
    methods: {
      protect(book, args) {
        if (args.json(0) !== null) throw noPassword();
        if (book.isStructureProtected)
          throw new HostError("InvalidOperation", "The workbook is protected already.");
        book.isStructureProtected = true;
      },
      unprotect(book, args) {
        if (args.json(0) !== null) throw noPassword();
        book.isStructureProtected = false;
      },
    },
  };
}

export function noPassword(): HostError {
  return new HostError("UnsupportedOperation", "Passwords are not available in this host.");
}
