import { kept, longestText } from "../cells";
import type { CellSpec, PageSpec, SheetSpec, StyleSpec, Workbook } from "../workbook";
import { placeOf } from "./names";
import type { Look, PlanMargin, PlanPage, SheetPlan } from "./plan";

/** In inches. */
const margins = {
  left: 0.6,
  right: 0.6,
  top: 0.6,
  bottom: 0.75,
  header: 0.3,
  footer: 0.35,
} as const;

const lineColor = "B9C4C1";

/** Writes a plan into a workbook as a new sheet, whose name it gives. */
export function addPlan(workbook: Workbook, plan: SheetPlan): string {
  const sheets = workbook.sheets.map(({ name }) => ({ name, first: null }));
  const { name } = placeOf(plan, sheets);
  workbook.addSheet(name, specOf(workbook, plan));
  return name;
}

function specOf(workbook: Workbook, plan: SheetPlan): SheetSpec {
  const { columns, rows, merges, page, chart } = plan;
  const styles = new Map<Look, number>();
  const styleOf = (look: Look) => kept(styles, look, () => workbook.addStyle(styleSpecOf(look)));
  return {
    rows: rows.map(({ cells }) =>
      cells.map((cell): CellSpec | null => {
        if (cell === null) return null;
        const { value, formula, look } = cell;
        // Names and notes of a job may together be more than a cell holds.
        const shown = typeof value === "string" ? cut(value, longestText) : value;
        return { value: shown, formula, style: styleOf(look) };
      }),
    ),
    columnWidths: columns,
    rowHeights: rows.map(({ height }) => height),
    merges,
    page: pageSpecOf(page),
    charts: chart === undefined ? [] : [{ ...chart, legend: "bottom" }],
  };
}

function styleSpecOf({ line, format, ...look }: Look): StyleSpec {
  const bottom = line === "heavy under" ? ("medium" as const) : ("thin" as const);
  const side = "thin" as const;
  return {
    valign: "top",
    ...look,
    ...(format === undefined ? {} : { numberFormat: format }),
    ...(line === undefined
      ? {}
      : line === "around"
        ? { edges: { left: side, right: side, top: side, bottom: side, color: lineColor } }
        : { edges: { bottom, color: lineColor } }),
  };
}

/** How a record is printed, for both writers. */
export function pageSpecOf({
  paper,
  landscape,
  onePage,
  titleRows,
  breaksBefore,
  footer,
  area,
}: PlanPage): PageSpec {
  return {
    paper,
    landscape,
    pagesWide: 1,
    ...(onePage ? { pagesTall: 1 } : {}),
    margins,
    centered: true,
    footer: codesOf(footer),
    ...(titleRows > 0 ? { titleRows: [0, titleRows - 1] as const } : {}),
    area,
    breaksBefore,
  };
}

/** Margin texts in the codes of spreadsheets. */
function codesOf({ left, center, right }: PlanMargin) {
  const coded = (text: string | undefined) => (text === undefined ? undefined : footerCode(text));
  return { left: coded(left), center: coded(center), right: coded(right) };
}

/** The longest margin text kept; all three together may have 255 characters. */
const longestMargin = 70;

function footerCode(text: string): string {
  const short = cut(text, longestMargin);
  return short.replaceAll("&", "&&").replaceAll("{pages}", "&N").replaceAll("{page}", "&P");
}

const cut = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, most - 1)}…` : text;
