import { addressText } from "../../../cells";
import type { HeaderText, Margins, PageSpec } from "../../../workbook";
import type { SheetTab } from "../book";
import type { HostRange } from "../host-range";
import type { Arguments } from "../wire/arguments";
import { invalidArgument } from "../wire/errors";
import { type Members, serve } from "../wire/served";
import type { Desk } from "./desk";

const inch = 72;
/** What a spreadsheet program takes where a sheet says nothing of its margins. */
const usualMargins: Margins = {
  left: 0.7,
  right: 0.7,
  top: 0.75,
  bottom: 0.75,
  header: 0.3,
  footer: 0.3,
};

function setPage(desk: Desk, tab: SheetTab, page: PageSpec): void {
  tab.checkWritable();
  tab.sheet.arrange({ page });
  tab.page = { ...tab.page, ...page };
  desk.book.touched({ kind: "layout", sheet: tab.name });
}

/** How a sheet is printed. What was set in this session is written at once and can be read back. */
export function pageLayoutMembers(desk: Desk): Members<SheetTab> {
  const set = (tab: SheetTab, page: PageSpec) => setPage(desk, tab, page);
  const margin = (side: keyof Margins) => ({
    get: ({ page }: SheetTab) => (page.margins ?? usualMargins)[side] * inch,
    set(tab: SheetTab, value: unknown) {
      if (typeof value !== "number" || value < 0)
        throw invalidArgument("A margin must be a number of points.");
      set(tab, { margins: { ...(tab.page.margins ?? usualMargins), [side]: value / inch } });
    },
  });
  const range = ({ args, tab }: { args: Arguments; tab: SheetTab }): HostRange =>
    args.range(0) ?? desk.book.range(tab, args.text(0, "The range"));
  const headers = serve(headersFootersMembers(set));
  return {
    className: "PageLayout",
    values: {
      orientation: {
        get: ({ page }) => (page.landscape ? "Landscape" : "Portrait"),
        set: (tab, value) => set(tab, { landscape: value === "Landscape" }),
      },
      paperSize: {
        get: ({ page }) => (page.paper === "a4" ? "A4" : "Letter"),
        set(tab, value) {
          if (value !== "A4" && value !== "Letter")
            throw invalidArgument(`The paper "${String(value)}" is not available: A4 or Letter.`);
          set(tab, { paper: value === "A4" ? "a4" : "letter" });
        },
      },
      zoom: {
        get: ({ page }) => ({
          horizontalFitToPages: page.pagesWide,
          verticalFitToPages: page.pagesTall,
        }),
        set(tab, value) {
          const { horizontalFitToPages: wide, verticalFitToPages: tall } = (value ?? {}) as {
            horizontalFitToPages?: number;
            verticalFitToPages?: number;
          };
          if (wide === undefined && tall === undefined)
            throw invalidArgument("Only a zoom that fits the sheet to pages is available.");
          set(tab, { pagesWide: wide, pagesTall: tall });
        },
      },
      leftMargin: margin("left"),
      rightMargin: margin("right"),
      topMargin: margin("top"),
      bottomMargin: margin("bottom"),
      headerMargin: margin("header"),
      footerMargin: margin("footer"),
      centerHorizontally: {
        get: ({ page }) => page.centered === true,
        set: (tab, value) => set(tab, { centered: value === true }),
      },
    },
    links: { headersFooters: headers },
    methods: {
      setPrintArea: (tab, args) => set(tab, { area: addressText(range({ args, tab })) }),
      setPrintTitleRows(tab, args) {
        const { top, bottom } = range({ args, tab });
        set(tab, { titleCols: tab.page.titleCols, titleRows: [top, bottom] });
      },
      setPrintTitleColumns(tab, args) {
        const { left, right } = range({ args, tab });
        set(tab, { titleCols: [left, right], titleRows: tab.page.titleRows });
      },
    },
  };
}

/** The rows that start a new page; those of the file before this session are not listed. */
export function pageBreaksMembers(desk: Desk): Members<SheetTab> {
  const pageBreak = serve<number>({
    className: "PageBreak",
    values: { rowIndex: { get: (row) => row } },
  });
  return {
    className: "PageBreakCollection",
    items: ({ page }) => (page.breaksBefore ?? []).map(pageBreak),
    methods: {
      add(tab, args) {
        const { top } = args.range(0) ?? desk.book.range(tab, args.text(0, "The range"));
        setPage(desk, tab, { breaksBefore: [...(tab.page.breaksBefore ?? []), top] });
        return pageBreak(top);
      },
    },
  };
}

function headersFootersMembers(set: (tab: SheetTab, page: PageSpec) => void): Members<SheetTab> {
  const text = (where: "header" | "footer", side: keyof HeaderText) => ({
    get: ({ page }: SheetTab) => page[where]?.[side] ?? "",
    set: (tab: SheetTab, value: unknown) =>
      set(tab, { [where]: { ...tab.page[where], [side]: String(value) } }),
  });
  const all = serve<SheetTab>({
    className: "HeaderFooter",
    values: {
      leftHeader: text("header", "left"),
      centerHeader: text("header", "center"),
      rightHeader: text("header", "right"),
      leftFooter: text("footer", "left"),
      centerFooter: text("footer", "center"),
      rightFooter: text("footer", "right"),
    },
  });
  return { className: "HeaderFooterGroup", links: { defaultForAllPages: all } };
}
