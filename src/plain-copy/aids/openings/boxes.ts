import type { Place } from "../../../cells";
import type { Table, TableCell } from "../../../rules";
import { colsOf, farText } from "../../rewrite/places";
import type { TableSheet } from "../table-sheet";

interface Size {
  /** Rows for so many boxes. */
  readonly slots: number;
  /** Columns for so many openings of each. */
  readonly room: number;
}

const upTo = (count: number) => Array.from({ length: count }, (_, k) => k + 1);

/** The boxes of a list, a row each, with the labels and areas of their usable openings. */
export function boxTable(
  sheet: TableSheet,
  key: string,
  list: Table,
  labels: Place,
  { slots, room }: Size,
): Table {
  const each = upTo(room);
  const headings = [
    "Box",
    "Openings",
    "First row",
    ...each.map((k) => `Label ${k}`),
    ...each.map((k) => `Area ${k}`),
    "No.",
  ];
  const rowOf = (own: Table, slot: number): TableCell[] => {
    const at = (heading: string) => own.cell(slot - 1, heading);
    const sum = (...factors: readonly string[]) =>
      `SUMPRODUCT((${list.column("Box")}=${at("Box")})*${factors.join("*")})`;
    const of = (k: number) => `(${list.column("In box")}=${k})`;
    const label = (k: number) => {
      const row = sum(of(k), list.column("No."));
      return `TRIM(INDEX(${farText(labels)},${colsOf(labels) > 1 ? "1," : ""}${row}))`;
    };
    const first = at("First row");
    const formulas = [
      `IF(${first}=0,"+",INDEX(${list.column("Box")},${first}))`,
      sum(`(${list.column("In box")}>0)`),
      `SUMPRODUCT((${list.column("Box no.")}=${slot})*${list.column("No.")})`,
      ...each.map((k) => `IF(${k}>${at("Openings")},"",${label(k)})`),
      ...each.map((k) => `IF(${k}>${at("Openings")},0,${sum(of(k), list.column("Area"))})`),
    ];
    return [...formulas.map((formula) => ({ formula })), slot];
  };
  return sheet.table(
    `Boxes in ${key}`,
    headings,
    (own) => upTo(slots).map((slot) => rowOf(own, slot)),
    slots,
  );
}

/** Every set of up to `room` openings: 1 where it holds the opening; its area in each box. */
export function setTable(
  sheet: TableSheet,
  key: string,
  boxes: Table,
  { slots, room }: Size,
): Table {
  const each = upTo(room);
  const headings = [
    "No.",
    "How many",
    ...each.map((k) => `Opening ${k}`),
    ...upTo(slots).map((slot) => `Area, box ${slot}`),
  ];
  const rowOf = (own: Table, set: number): TableCell[] => {
    const held = each.map((k) => (set >> (k - 1)) & 1);
    const areas = upTo(slots).map((slot) => {
      const term = (k: number) =>
        `${own.cell(set - 1, `Opening ${k}`)}*${boxes.cell(slot - 1, `Area ${k}`)}`;
      return { formula: each.map(term).join("+") };
    });
    return [set, held.reduce((sum, one) => sum + one, 0), ...held, ...areas];
  };
  const sets = upTo(2 ** room - 1);
  return sheet.table(
    `Sets of openings in ${key}`,
    headings,
    (own) => sets.map((set) => rowOf(own, set)),
    sets.length,
  );
}
