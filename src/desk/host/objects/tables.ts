import { parseRectangle } from "../../../cells";
import type { TableInfo } from "../../../workbook";
import type { SheetTab } from "../book";
import { HostRange } from "../host-range";
import { HostError, notFound } from "../wire/errors";
import type { Members, Served } from "../wire/served";
import type { Desk } from "./desk";

/** The tables of one sheet or of the whole workbook, for reading. */
export function tablesMembers(desk: Desk): Members<SheetTab | null> {
  const listed = (tab: SheetTab | null) =>
    desk.book.workbook.tables.filter(
      ({ sheet }) => tab === null || sheet.toLowerCase() === tab.name.toLowerCase(),
    );
  const find = (tab: SheetTab | null, name: string): Served | null => {
    const wanted = name.toLowerCase();
    const found = listed(tab).find((table) => table.name.toLowerCase() === wanted);
    return found === undefined ? null : desk.table(found);
  };
  return {
    className: "TableCollection",
    values: { count: { get: (tab) => listed(tab).length } },
    items: (tab) => listed(tab).map(desk.table),
    item(tab, args) {
      const name = args.text(0, "The name of the table");
      const found = find(tab, name);
      if (found === null) throw notFound(`There is no table "${name}".`);
      return found;
    },
    methods: {
      getCount: (tab) => listed(tab).length,
      getItemOrNullObject: (tab, args) => find(tab, args.text(0, "The name of the table")),
    },
  };
}

export function tableMembers(desk: Desk): Members<TableInfo> {
  const whole = (table: TableInfo) =>
    new HostRange(desk.book.tab(table.sheet), parseRectangle(table.ref));
  return {
    className: "Table",
    identify: ({ name }) => ({ Id: name }),
    values: {
      id: { get: ({ name }) => name },
      name: { get: ({ name }) => name },
      showHeaders: { get: ({ headerRow }) => headerRow },
      showTotals: { get: ({ totalsRow }) => totalsRow },
    },
    links: { worksheet: (table) => desk.worksheet(desk.book.tab(table.sheet)) },
    methods: {
      getRange: (table) => desk.range(whole(table)),
      getHeaderRowRange(table) {
        if (!table.headerRow)
          throw new HostError("InvalidOperation", `The table "${table.name}" has no headings.`);
        const range = whole(table);
        return desk.range(range.with({ bottom: range.top }));
      },
      getDataBodyRange(table) {
        const range = whole(table);
        const top = range.top + (table.headerRow ? 1 : 0);
        const bottom = range.bottom - (table.totalsRow ? 1 : 0);
        return desk.range(range.with({ top, bottom }));
      },
    },
  };
}
