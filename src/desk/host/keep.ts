import type { Arrangement } from "../../workbook";
import type { SheetTab } from "./book";
import { keepCharts } from "./charts/host-chart";
import { fileValidationsOf } from "./file-validations";
import { fileFormatsOf } from "./marks/file-marks";

/**
 * Writes into the workbook what the session holds beside it: widths, conditional formats,
 * validations and charts. What did not change stays in the file as it stands.
 */
export function keepTabs(tabs: readonly SheetTab[]): void {
  for (const tab of tabs) {
    const changes = changesOf(tab);
    if (Object.keys(changes).length > 0) tab.sheet.arrange(changes);
    tab.widths.clear();
    tab.heights.clear();
    if (tab.touched.charts) keepCharts(tab.sheet, tab.touched.charts);
  }
}

function changesOf(tab: SheetTab): Arrangement {
  const { sheet, widths, heights } = tab;
  const { marks, validations } = tab.touched;
  const changes: { -readonly [K in keyof Arrangement]: Arrangement[K] } = {};
  if (widths.size > 0) changes.widths = new Map(widths);
  if (heights.size > 0) changes.heights = new Map(heights);
  if (marks) {
    const formats = fileFormatsOf(marks);
    if (differs(formats, sheet.conditionalFormats)) changes.conditionalFormats = formats;
  }
  if (validations) {
    const rules = fileValidationsOf(validations);
    if (differs(rules, sheet.validations)) {
      changes.validations = rules;
      validations.forEach((validation, i) => {
        validations[i] = { ...validation, inFile: rules[i] as (typeof rules)[number] };
      });
    }
  }
  return changes;
}

function differs(a: readonly object[], b: readonly object[]): boolean {
  return a.length !== b.length || a.some((each, i) => each !== b[i]);
}
