import type { OpenBook } from "../open-book";
import { serve } from "../wire/served";
import { applicationMembers } from "./application";
import { bordersMembers } from "./borders";
import { chartMembers, chartsMembers } from "./charts";
import { conditionalFormatMembers, conditionalFormatsMembers } from "./conditional-formats";
import type { Desk } from "./desk";
import { namedItemMembers, namedItemsMembers } from "./named-items";
import { pageLayoutMembers } from "./page-layout";
import { rangeMembers } from "./range";
import { rangeAreasMembers } from "./range-areas";
import {
  rangeFillMembers,
  rangeFontMembers,
  rangeFormatMembers,
  rangeProtectionMembers,
} from "./range-format";
import { columnMembers, columnsMembers, tableMembers, tablesMembers } from "./tables";
import { validationMembers } from "./validation";
import { workbookMembers, workbookProtectionMembers } from "./workbook";
import { worksheetMembers } from "./worksheet";
import { autoFilterMembers, freezePanesMembers, sheetProtectionMembers } from "./worksheet-parts";
import { worksheetsMembers } from "./worksheets";

/** Serves the objects of a workbook. */
export function makeDesk(book: OpenBook): Desk {
  const table = <M, T>(members: (desk: Desk) => M & Parameters<typeof serve<T>>[0]) => {
    let made: ReturnType<typeof serve<T>> | undefined;
    // Made on first use, when every table knows where to find the others.
    return (self: T) => {
      made ??= serve(members(desk));
      return made(self);
    };
  };
  const ofBook = (members: Parameters<typeof table<unknown, OpenBook>>[0]) => {
    const made = table(members);
    return () => made(book);
  };
  const desk: Desk = {
    book,
    workbook: ofBook(workbookMembers),
    application: ofBook(applicationMembers),
    workbookProtection: ofBook(workbookProtectionMembers),
    worksheets: ofBook(worksheetsMembers),
    worksheet: table(worksheetMembers),
    sheetProtection: table(sheetProtectionMembers),
    freezePanes: table(freezePanesMembers),
    range: table(rangeMembers),
    rangeFormat: table(rangeFormatMembers),
    rangeFill: table(rangeFillMembers),
    rangeFont: table(rangeFontMembers),
    rangeProtection: table(rangeProtectionMembers),
    borders: table(bordersMembers),
    charts: table(chartsMembers),
    chart: table(chartMembers),
    pageLayout: table(pageLayoutMembers),
    areas: table(rangeAreasMembers),
    autoFilter: table(autoFilterMembers),
    validation: table(validationMembers),
    marks: table(conditionalFormatsMembers),
    mark: table(conditionalFormatMembers),
    names: table(namedItemsMembers),
    name: table(namedItemMembers),
    tables: table(tablesMembers),
    table: table(tableMembers),
    columns: table(columnsMembers),
    column: table(columnMembers),
  };
  return desk;
}
