import type { OpenBook } from "../open-book";
import { HostError } from "../wire/errors";
import type { Members } from "../wire/served";
import type { Desk } from "./desk";
import { functions } from "./functions";

export function workbookMembers(desk: Desk): Members<OpenBook> {
  return {
    className: "Workbook",
    values: {
      readOnly: { get: () => false },
    },
    links: {
      worksheets: () => desk.worksheets(),
      names: () => desk.names(null),
      tables: () => desk.tables(null),
      application: () => desk.application(),
      functions,
      protection: () => desk.workbookProtection(),
    },
    methods: {
      getActiveCell: ({ selection }) =>
        desk.range(selection.with({ bottom: selection.top, right: selection.left })),
      _RemoveReference: (book, args) => book.references.release(args.text(0, "The reference")),
      _RemoveAllReferences: (book) => book.references.releaseAll(),
      _GetReferenceCount: (book) => book.references.count,
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
