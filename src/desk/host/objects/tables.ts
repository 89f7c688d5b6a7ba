import { parseRectangle, rectangleText } from "../../../cells";
import type { TableInfo } from "../../../workbook";
import type { SheetTab } from "../book";
import { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import { overlaps } from "../subtract";
import { HostError, invalidArgument } from "../wire/errors";
import { collection, type Members } from "../wire/served";
import type { Desk, TableColumn } from "./desk";
import { clearRange } from "./range-clear";

/** The tables of one sheet or of the whole workbook. */
export function tablesMembers(desk: Desk): Members<SheetTab | null> {
  const listed = (tab: SheetTab | null) =>
    desk.book.tables.filter(
      ({ sheet }) => tab === null || sheet.toLowerCase() === tab.name.toLowerCase(),
    );
  return collection<SheetTab | null>({
    className: "TableCollection",
    items: (tab) => listed(tab).map(desk.table),
    find(tab, name) {
      const wanted = name.toLowerCase();
      const found = listed(tab).find((table) => table.name.toLowerCase() === wanted);
      return found === undefined ? null : desk.table(found);
    },
    missing: (name) => `There is no table "${name}".`,
    methods: {
      add(tab, args) {
        const { book } = desk;
        const on = tab ?? book.active;
        const range = args.range(0) ?? book.rangeAnywhere(on, args.text(0, "The cells"));
        return desk.table(addTable(book, range, args.flag(1)));
      },
    },
  });
}

/** Makes a table of cells whose first row holds its headings. */
function addTable(book: OpenBook, range: HostRange, hasHeadings: boolean): TableInfo {
  if (!hasHeadings || range.rows < 2)
    throw new HostError("UnsupportedOperation", "A table needs headings in its first row here.");
  const { tab } = range;
  tab.checkWritable();
  const others = book.tables.filter(({ sheet }) => sheet === tab.name);
  if (others.some(({ ref }) => overlaps(parseRectangle(ref), range)))
    throw invalidArgument(`A table stands in ${range.address} already.`);
  let number = 1;
  while (book.tables.some(({ name }) => name === `Table${number}`)) number++;
  const table = {
    name: `Table${number}`,
    sheet: tab.name,
    ref: rectangleText(range),
    columns: Array.from({ length: range.cols }, (_, i) => {
      const heading = book.model.value(tab.name, range.top, range.left + i);
      return typeof heading === "string" && heading !== "" ? heading : `Column${i + 1}`;
    }),
    headerRow: true,
    totalsRow: false,
  };
  book.addedTables.set(table.name, { tab, table });
  book.model.refresh();
  return table;
}

export function columnsMembers(desk: Desk): Members<TableInfo> {
  return {
    className: "TableColumnCollection",
    items: (table) => table.columns.map((_, index) => desk.column({ table, index })),
  };
}

export function columnMembers(): Members<TableColumn> {
  return {
    className: "TableColumn",
    identify: ({ index }) => ({ Id: index + 1 }),
    values: {
      id: { get: ({ index }) => index + 1 },
      index: { get: ({ index }) => index },
      name: { get: ({ table, index }) => table.columns[index] },
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
    },
    links: {
      columns: desk.columns,
    },
    methods: {
      delete(table) {
        if (!desk.book.addedTables.has(table.name))
          throw new HostError(
            "UnsupportedOperation",
            `The table "${table.name}" is one of the file: take it off in a spreadsheet program.`,
          );
        clearRange(desk.book, whole(table), "All");
        desk.book.addedTables.delete(table.name);
        desk.book.model.refresh();
      },
      getRange: (table) => desk.range(whole(table)),
    },
  };
}
