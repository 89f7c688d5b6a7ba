import { escapeText } from "../text";
import type { SheetFrame } from "./frame";
import type { HeaderText, PageSpec } from "./spec";

/** Ids of paper sizes (ECMA-376 part 1, 18.3.1.63). */
const papers = { letter: "1", a4: "9" } as const;

/** Whether the print is shrunk to a number of pages; stands in the sheet's properties. */
export function isFitted(page: PageSpec): boolean {
  return page.pagesWide !== undefined || page.pagesTall !== undefined;
}

/** Writes how the sheet is printed, in the order of the format. */
export function arrangePage(frame: SheetFrame, page: PageSpec): void {
  const { paper, landscape, margins, centered, header, footer, breaksBefore } = page;
  if (centered !== undefined) {
    const attributes = frame.merged("printOptions", { horizontalCentered: centered ? "1" : null });
    const isBare = Object.keys(attributes).length === 0;
    frame.put("printOptions", isBare ? "" : frame.element("printOptions", attributes));
  }
  if (margins !== undefined) {
    const { left, right, top, bottom } = margins;
    const inches = Object.entries({ left, right, top, bottom, ...ends(margins) });
    const attributes = Object.fromEntries(inches.map(([side, inch]) => [side, String(inch)]));
    frame.put("pageMargins", frame.element("pageMargins", attributes));
  }
  const setup: Record<string, string | null> = {};
  if (paper !== undefined) setup.paperSize = papers[paper];
  if (isFitted(page)) {
    setup.scale = null;
    setup.fitToWidth = String(page.pagesWide ?? 0);
    setup.fitToHeight = String(page.pagesTall ?? 0);
  }
  if (landscape !== undefined) setup.orientation = landscape ? "landscape" : "portrait";
  if (Object.keys(setup).length > 0)
    frame.put("pageSetup", frame.element("pageSetup", frame.merged("pageSetup", setup)));
  if (header !== undefined || footer !== undefined) putHeaders(frame, header, footer);
  if (breaksBefore !== undefined) putBreaks(frame, breaksBefore);
}

function ends({ header, footer }: { readonly header: number; readonly footer: number }) {
  return { header, footer };
}

function putHeaders(frame: SheetFrame, header?: HeaderText, footer?: HeaderText): void {
  const old = frame.first("headerFooter");
  const kept = (local: string) => {
    const element = old && frame.doc.child(old, local);
    return element === undefined ? "" : frame.doc.raw(element);
  };
  const made = (local: string, text: HeaderText | undefined) => {
    if (text === undefined) return kept(local);
    const codes = headerCodes(text);
    return codes === "" ? "" : frame.element(local, {}, escapeText(codes));
  };
  const inner = made("oddHeader", header) + made("oddFooter", footer);
  const rest = frame.rest(old, "oddHeader", "oddFooter");
  const attributes = old?.attributes ?? {};
  frame.put(
    "headerFooter",
    inner + rest === "" ? "" : frame.element("headerFooter", attributes, inner + rest),
  );
}

/** The three parts of a header as one text of the format. */
function headerCodes({ left, center, right }: HeaderText): string {
  const part = (code: string, text: string | undefined) => (text ? `&${code}${text}` : "");
  return part("L", left) + part("C", center) + part("R", right);
}

function putBreaks(frame: SheetFrame, rows: readonly number[]): void {
  const breaks = [...new Set(rows)].filter((row) => row > 0).sort((a, b) => a - b);
  const count = String(breaks.length);
  const inner = breaks
    .map((row) => frame.element("brk", { id: String(row), max: "16383", man: "1" }))
    .join("");
  frame.put(
    "rowBreaks",
    breaks.length === 0
      ? ""
      : frame.element("rowBreaks", { count, manualBreakCount: count }, inner),
  );
}
