import { columnLetters } from "../../cells";
import type { pageSpecOf } from "../../records";
import { toHostError } from "../host-error";

type PageSpec = ReturnType<typeof pageSpecOf>;

const inchPoints = 72;

/** What is told, once for all sheets, where the host refuses that. */
export const pageRefused = (thrown: unknown) =>
  `How it prints could not be set up (${toHostError(thrown).message}): choose paper, orientation and width before printing.`;

/** Queues how a sheet is printed. Excel may refuse it, as without a printer: sync it by itself. */
export function setUpPage(sheet: Excel.Worksheet, page: PageSpec): void {
  const { pageLayout } = sheet;
  const { landscape, paper, pagesWide, pagesTall, margins, titleRows, titleCols } = page;
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = paper === "a4" ? "A4" : "Letter";
  pageLayout.zoom = {
    ...(pagesWide === undefined ? {} : { horizontalFitToPages: pagesWide }),
    ...(pagesTall === undefined ? {} : { verticalFitToPages: pagesTall }),
  };
  for (const [side, inches] of Object.entries(margins ?? {}))
    pageLayout[`${side as keyof NonNullable<typeof margins>}Margin`] = inches * inchPoints;
  pageLayout.centerHorizontally = page.centered === true;
  if (page.area !== undefined) pageLayout.setPrintArea(page.area);
  if (titleRows) pageLayout.setPrintTitleRows(`$${titleRows[0] + 1}:$${titleRows[1] + 1}`);
  if (titleCols) pageLayout.setPrintTitleColumns(`$${titleCols.map(columnLetters).join(":$")}`);
  for (const row of page.breaksBefore ?? []) sheet.horizontalPageBreaks.add(`A${row + 1}`);
  const footer = pageLayout.headersFooters.defaultForAllPages;
  footer.leftFooter = page.footer?.left ?? "";
  footer.centerFooter = page.footer?.center ?? "";
  footer.rightFooter = page.footer?.right ?? "";
}
