import type { Place } from "../../../cells";
import type { Table, TableCell } from "../../../rules";
import { farText } from "../../rewrite/places";
import type { TableSheet } from "../table-sheet";

const headings = ["Box", "Label", "Area", "First", "In box", "Box no.", "No."];

/** The cells of a list of openings, one a row. */
interface ListCells {
  readonly labels: readonly Place[];
  readonly areas: readonly Place[];
  readonly boxes: readonly Place[] | undefined;
}

/**
 * The openings of a list as the functions read them. A row without a label has "+" for it, which no
 * label is; an area that is not a number above 0 is 0. "First" marks the first of equal labels in a
 * box, "In box" counts its usable openings, "Box no." the boxes.
 */
export function openingTable(sheet: TableSheet, key: string, cells: ListCells): Table {
  const { labels } = cells;
  return sheet.table(
    `Openings in ${key}`,
    headings,
    (own) => labels.map((_, i) => rowOf(own, cells, i)),
    labels.length,
  );
}

function rowOf(own: Table, { labels, areas, boxes }: ListCells, i: number): TableCell[] {
  const [label, area] = [farText(labels[i] as Place), farText(areas[i] as Place)];
  const box = boxes && farText(boxes[i] as Place);
  const at = (heading: string) => own.cell(i, heading);
  /** The rows above in the same box where a column meets a condition. */
  const before = (heading: string, condition: string) =>
    i === 0
      ? "0"
      : `SUMPRODUCT((${above(own, i, "Box")}=${at("Box")})*(${above(own, i, heading)}${condition}))`;
  const counts = `${at("Label")}<>"+"`;
  const boxesBefore = i === 0 ? "0" : `MAX(${above(own, i, "Box no.")})`;
  const formulas = [
    box ? `IF(ISERROR(${box}),"#error",UPPER(TRIM(${box})))` : '""',
    `IF(ISERROR(${label}),"+",IF(TRIM(${label})="","+",SUBSTITUTE(LOWER(TRIM(${label}))," ",CHAR(10))))`,
    `IF(ISNUMBER(${area}),IF(${area}>0,${area},0),0)`,
    `IF(${counts},IF(${before("Label", `=${at("Label")}`)}=0,1,0),0)`,
    `IF(AND(${counts},${at("Area")}>0),1+${before("In box", ">0")},0)`,
    `IF(${counts},IF(${before("Label", '<>"+"')}=0,1+${boxesBefore},0),0)`,
  ];
  return [...formulas.map((formula) => ({ formula })), i + 1];
}

/** The cells of a column above row `i`. */
function above(own: Table, i: number, heading: string): string {
  const last = own.cell(i - 1, heading);
  return `${own.cell(0, heading)}:${last.slice(last.lastIndexOf("!") + 1)}`;
}
