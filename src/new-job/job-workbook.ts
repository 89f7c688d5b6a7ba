import { worksheetFunctions } from "../../functions";
import { cellName } from "../cells";
import {
  type Field,
  firstRow,
  formulasOf,
  headingHeight,
  headingOf,
  type JobPlan,
  jobPlan,
  jobSettings,
  jobTitle,
  namingColumns,
  numberFormatOf,
  pageOf,
  type RowFormulas,
  type SheetLayout,
  settingChoices,
  settingHeight,
  settingRow,
  settingsPage,
  settingsWidths,
  widthOf,
} from "../job";
import { inStoredForm, SheetModel } from "../sheet";
import { type CellSpec, Workbook } from "../workbook";
import { type JobRows, type Row, sizeOf } from "./job-rows";

/**
 * A job workbook: its sheets, their formulas, and the values that the formulas give. With `layouts`
 * it has these sheets in this order and the settings last.
 */
export function jobWorkbook(rows: JobRows, layouts?: readonly SheetLayout[]): Workbook {
  const workbook = Workbook.create();
  const styles = stylesOf(workbook);
  const size = sizeOf(rows);
  const plan = layouts
    ? (Object.fromEntries(
        layouts.map((layout) => [layout.kind, layout]),
      ) as Partial<JobPlan> as JobPlan)
    : jobPlan(rows.features ?? []);
  if (!layouts) addSettings(workbook, styles, rows.settings);
  for (const layout of Object.values(plan))
    addTable(workbook, styles, layout, rows[layout.kind] ?? [], rows.settings, (row) =>
      formulasOf(layout.kind, row, size, plan),
    );
  if (layouts) addSettings(workbook, styles, rows.settings);
  storeValues(workbook);
  return workbook;
}

type Styles = ReturnType<typeof stylesOf>;

function stylesOf(workbook: Workbook) {
  const computed = "EEF3F1";
  return {
    heading: workbook.addStyle({ bold: true, fill: "1F4E4A", color: "FFFFFF", wrap: true }),
    help: workbook.addStyle({ italic: true, color: "5A6664", wrap: true, valign: "top" }),
    label: workbook.addStyle({ bold: true, valign: "top" }),
    setting: (numberFormat: string | undefined) =>
      workbook.addStyle({ numberFormat, align: "left", valign: "top" }),
    cell: (field: Field) =>
      workbook.addStyle({
        numberFormat: numberFormatOf(field),
        fill: field.is ? computed : undefined,
        wrap: field.wraps,
      }),
  };
}

function addSettings(
  workbook: Workbook,
  styles: Styles,
  settings: Readonly<Record<string, number | string>>,
): void {
  const heading = ["Setting", "Value", "What it means"].map((value) => ({
    value,
    style: styles.heading,
  }));
  const lines = jobSettings.map((entry): CellSpec[] => [
    { value: entry.label, style: styles.label },
    {
      value: settings[entry.key] ?? null,
      style: styles.setting(entry.format),
    },
    { value: entry.help || null, style: styles.help },
  ]);
  workbook.addSheet(jobTitle, {
    rows: [heading, ...lines],
    columnWidths: settingsWidths,
    rowHeights: [settingHeight(""), ...jobSettings.map(({ help }) => settingHeight(help))],
    frozenRows: 1,
    page: settingsPage(settings.units === "si" ? "si" : "ip"),
    validations: Object.entries(settingChoices).map(([key, list]) => ({
      ref: `B${settingRow(key) + 1}`,
      list,
    })),
  });
}

function addTable(
  workbook: Workbook,
  styles: Styles,
  layout: SheetLayout,
  rows: readonly Row[],
  settings: JobRows["settings"],
  ownFormulas: (row: number) => RowFormulas,
): void {
  const { fields } = layout;
  const system = settings.units === "si" ? "si" : "ip";
  const heading = fields.map((field) => ({
    value: headingOf(field, system),
    style: styles.heading,
  }));
  const body = rows.map((row, i) => {
    const formulas = ownFormulas(firstRow + i);
    return fields.map((field) => toCell(field, row[field.key], formulas[field.key], styles));
  });
  const last = firstRow + rows.length - 1;
  workbook.addSheet(layout.title, {
    rows: [heading, ...body],
    columnWidths: fields.map(widthOf),
    rowHeights: [headingHeight(layout, system)],
    frozenRows: 1,
    frozenCols: namingColumns(layout),
    autoFilter: `A1:${cellName(last, fields.length - 1)}`,
    page: pageOf(layout, system, rows.length),
    validations: fields.flatMap((field, col) => {
      const list = field.choices;
      return list ? [{ ref: `${cellName(firstRow, col)}:${cellName(last, col)}`, list }] : [];
    }),
  });
}

function toCell(
  field: Field,
  typed: Row[string] | undefined,
  formula: string | undefined,
  styles: Styles,
): CellSpec | null {
  const style = styles.cell(field);
  const text = typeof typed === "object" && typed !== null ? typed.formula : formula;
  if (typed !== undefined && (typeof typed !== "object" || typed === null))
    return { value: typed, style };
  if (text === undefined) return { style };
  return { formula: inStoredForm(text, worksheetFunctions), style };
}

/** Evaluates every formula once and stores what it gives, as a spreadsheet does on saving. */
function storeValues(workbook: Workbook): void {
  const model = new SheetModel(workbook, worksheetFunctions);
  model.recalculateAll();
  const left = model.unsupported()[0];
  if (left) throw new Error(`${left.sheet} row ${left.row + 1}: ${left.what} has no value`);
}
