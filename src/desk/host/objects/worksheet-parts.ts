import type { SheetTab } from "../book";
import { HostError, invalidArgument } from "../wire/errors";
import type { Members } from "../wire/served";
import type { Desk } from "./desk";
import { noPassword } from "./workbook";

/** A sheet protected in the file stays so, since a password there could not be told. */
export function sheetProtectionMembers(desk: Desk): Members<SheetTab> {
  const told = (tab: SheetTab) => desk.book.touched({ kind: "layout", sheet: tab.name });
  return {
    className: "WorksheetProtection",
    values: {
      protected: { get: (tab) => tab.isProtected },
      options: { get: (tab) => tab.protection },
    },
    methods: {
      protect(tab, args) {
        if (args.json(1) !== null) throw noPassword();
        if (tab.isProtected)
          throw new HostError("InvalidOperation", `The sheet "${tab.name}" is protected already.`);
        tab.protection = (args.json(0) ?? {}) as Record<string, unknown>;
        told(tab);
      },
      unprotect(tab, args) {
        if (args.json(0) !== null) throw noPassword();
        if (tab.sheet.isProtected)
          throw new HostError(
            "AccessDenied",
            `The sheet "${tab.name}" is protected in the file; unprotect it in a spreadsheet program.`,
          );
        tab.protection = null;
        told(tab);
      },
    },
  };
}

export function freezePanesMembers(desk: Desk): Members<SheetTab> {
  const freeze = (tab: SheetTab, rows: number, cols: number) => {
    if (rows < 0 || cols < 0) throw invalidArgument("The count of frozen lines is negative.");
    tab.sheet.arrange({ frozen: { rows, cols } });
    desk.book.touched({ kind: "layout", sheet: tab.name });
  };
  return {
    className: "WorksheetFreezePanes",
    methods: {
      freezeRows: (tab, args) => freeze(tab, args.optionalInteger(0, "The count of rows", 1), 0),
      freezeAt(tab, args) {
        const range = args.range(0) ?? desk.book.range(tab, args.text(0, "The range"));
        freeze(tab, range.bottom + 1, range.right + 1);
      },
    },
  };
}

/** The filter of the sheet as the file has it. */
export function autoFilterMembers(): Members<SheetTab> {
  return {
    className: "AutoFilter",
    values: { isDataFiltered: { get: ({ sheet }) => sheet.isFiltered } },
  };
}
