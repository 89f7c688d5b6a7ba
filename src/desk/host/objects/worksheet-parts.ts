import { maxCols, maxRows } from "../../../cells";
import type { SheetTab } from "../book";
import { HostRange } from "../host-range";
import { HostError, invalidArgument, notFound } from "../wire/errors";
import type { Members, Served } from "../wire/served";
import type { Desk, SheetProperty } from "./desk";
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
  const location = (tab: SheetTab): Served | null => {
    const { frozenRows: rows, frozenCols: cols } = tab.sheet;
    if (rows === 0 && cols === 0) return null;
    const bottom = rows === 0 ? maxRows - 1 : rows - 1;
    const right = cols === 0 ? maxCols - 1 : cols - 1;
    return desk.range(new HostRange(tab, { top: 0, left: 0, bottom, right }));
  };
  return {
    className: "WorksheetFreezePanes",
    methods: {
      freezeRows: (tab, args) => freeze(tab, args.optionalInteger(0, "The count of rows", 1), 0),
      freezeColumns: (tab, args) =>
        freeze(tab, 0, args.optionalInteger(0, "The count of columns", 1)),
      freezeAt(tab, args) {
        const range = args.range(0) ?? desk.book.range(tab, args.text(0, "The range"));
        freeze(tab, range.bottom + 1, range.right + 1);
      },
      unfreeze: (tab) => freeze(tab, 0, 0),
      getLocationOrNullObject: location,
      getLocation(tab) {
        const range = location(tab);
        if (range === null) throw notFound(`Nothing is frozen on the sheet "${tab.name}".`);
        return range;
      },
    },
  };
}

export function sheetPropertiesMembers(desk: Desk): Members<SheetTab> {
  const find = (tab: SheetTab, key: string): Served | null =>
    tab.customProperties.has(key) ? desk.sheetProperty({ tab, key }) : null;
  return {
    className: "WorksheetCustomPropertyCollection",
    items: (tab) => [...tab.customProperties.keys()].map((key) => desk.sheetProperty({ tab, key })),
    item(tab, args) {
      const key = args.text(0, "The key");
      const found = find(tab, key);
      if (found === null) throw notFound(`The sheet has no property "${key}".`);
      return found;
    },
    methods: {
      add(tab, args) {
        const key = args.text(0, "The key");
        tab.customProperties.set(key, args.text(1, "The value"));
        return desk.sheetProperty({ tab, key });
      },
      getCount: (tab) => tab.customProperties.size,
      getItemOrNullObject: (tab, args) => find(tab, args.text(0, "The key")),
    },
  };
}

export function sheetPropertyMembers(): Members<SheetProperty> {
  return {
    className: "WorksheetCustomProperty",
    identify: ({ key }) => ({ _Id: key }),
    values: {
      key: { get: ({ key }) => key },
      value: {
        get: ({ tab, key }) => tab.customProperties.get(key),
        set({ tab, key }, value) {
          if (typeof value !== "string") throw invalidArgument("The value must be a text.");
          tab.customProperties.set(key, value);
        },
      },
    },
    methods: {
      delete({ tab, key }) {
        tab.customProperties.delete(key);
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
