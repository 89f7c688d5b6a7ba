import type { SheetState } from "../../../workbook";
import { addressTooLong, longestAddress } from "../address";
import type { SheetTab } from "../book";
import { HostRange } from "../host-range";
import { deleteTab, renameTab, showTab } from "../tab-edits";
import type { Arguments } from "../wire/arguments";
import { HostError, invalidArgument } from "../wire/errors";
import { type Members, serve } from "../wire/served";
import type { Desk } from "./desk";
import { eventMethods } from "./event-methods";
import { pageBreaksMembers } from "./page-layout";

const visibilities: Readonly<Record<string, SheetState>> = {
  Visible: "visible",
  Hidden: "hidden",
  VeryHidden: "veryHidden",
};

export function worksheetMembers(desk: Desk): Members<SheetTab> {
  const { book } = desk;
  const pageBreaks = serve(pageBreaksMembers(desk));
  const used = (tab: SheetTab, args: Arguments) => {
    const whole = book.wholeSheet(tab);
    const rect = args.flag(0) ? tab.used(whole) : tab.usedOrFormatted(whole);
    return rect === null ? null : new HostRange(tab, rect);
  };
  return {
    className: "Worksheet",
    identify: (tab) => ({ Id: tab.id }),
    values: {
      id: { get: (tab) => tab.id },
      name: {
        get: (tab) => tab.name,
        set(tab, value) {
          if (typeof value !== "string") throw invalidArgument("The name must be a text.");
          renameTab(book, tab, value);
        },
      },
      position: { get: (tab) => tab.position },
      visibility: {
        get: (tab) => Object.keys(visibilities).find((key) => visibilities[key] === tab.visibility),
        set(tab, value) {
          const state = visibilities[String(value)];
          if (state === undefined) throw invalidArgument(`"${String(value)}" is no visibility.`);
          showTab(book, tab, state);
        },
      },
    },
    links: {
      names: (tab) => desk.names(tab),
      tables: (tab) => desk.tables(tab),
      autoFilter: (tab) => desk.autoFilter(tab),
      protection: (tab) => desk.sheetProtection(tab),
      freezePanes: (tab) => desk.freezePanes(tab),
      charts: (tab) => desk.charts(tab),
      pageLayout: (tab) => desk.pageLayout(tab),
      horizontalPageBreaks: pageBreaks,
    },
    methods: {
      activate: (tab) => book.activate(tab),
      delete(tab) {
        if (book.isStructureProtected)
          throw new HostError(
            "AccessDenied",
            "The workbook is protected; no sheet can be deleted.",
          );
        deleteTab(book, tab);
      },
      getRange(tab, args) {
        const address = args.optionalText(0, "The address") ?? "";
        return desk.range(address === "" ? book.wholeSheet(tab) : book.range(tab, address));
      },
      getRanges(tab, args) {
        const text = args.optionalText(0, "The addresses") ?? "";
        if (text === "") return desk.areas(book.wholeSheet(tab));
        if (text.length > longestAddress) throw invalidArgument(addressTooLong(text));
        const rects = text.split(",").map((part) => book.range(tab, part));
        return desk.areas({ tab, rects });
      },
      getRangeByIndexes(tab, args) {
        const top = args.integer(0, "The first row");
        const left = args.integer(1, "The first column");
        const rows = args.integer(2, "The number of rows");
        const cols = args.integer(3, "The number of columns");
        const corners = { top, left, bottom: top + rows - 1, right: left + cols - 1 };
        return desk.range(new HostRange(tab, corners));
      },
      getUsedRange: (tab, args) => desk.range(used(tab, args) ?? book.corner(tab)),
      getUsedRangeOrNullObject(tab, args) {
        const range = used(tab, args);
        return range === null ? null : desk.range(range);
      },
      ...eventMethods<SheetTab>(book.events, (tab) => tab.id),
    },
  };
}
