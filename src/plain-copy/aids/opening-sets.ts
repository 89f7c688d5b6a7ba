import { counted, kept, type Place } from "../../cells";
import { NoNativeForm, type OpeningList, wrong } from "../../rules";
import type { Workbook } from "../../workbook";
import { colsOf, farText, type Places, rowsOf } from "../rewrite/places";
import { boxTable, setTable } from "./openings/boxes";
import { openingTable } from "./openings/list";
import { TableSheet } from "./table-sheet";

/** Rows that a list may grow by where its columns are named whole. */
const spare = 20;
/** The longest list that is read. */
const longest = 500;
/** The most openings of a box of which every set is tried; more are only tried one and two at a time. */
const mostCombined = 10;
/** Room for so many openings a box, and so many boxes, though fewer are there yet. */
const usualOpenings = 8;
const usualBoxes = 6;

/** The openings of the workbook's boxes, and every set of them. */
export class OpeningSets {
  private readonly tables: TableSheet;
  private readonly known = new Map<string, OpeningList | string>();

  constructor(
    readonly sheet: string,
    private readonly workbook: Workbook,
    private readonly places: Places,
  ) {
    this.tables = new TableSheet(sheet, [16, 14, 14, ...Array<number>(20).fill(12)]);
  }

  write(workbook: Workbook, styles: { readonly title: number; readonly heading: number }): void {
    this.tables.write(workbook, styles);
  }

  /** The list in these columns; native error text where they cannot be a list. */
  list(labels: Place, areas: Place, boxes: Place | undefined): OpeningList | string {
    const places = [labels, areas, ...(boxes ? [boxes] : [])];
    const key = places.map(farText).join(" ");
    return kept(this.known, key, () => this.read(places, key));
  }

  private read(written: readonly Place[], key: string): OpeningList | string {
    const size = (place: Place) => rowsOf(place) * colsOf(place);
    if (new Set(written.map(size)).size > 1)
      return wrong("labels, areas and boxes: give columns of one length");
    if (written.some((place) => rowsOf(place) > 1 && colsOf(place) > 1))
      throw new NoNativeForm("a list of openings that is no single column");
    const count = Math.max(...written.map((place) => size(this.places.clipped(place, spare))));
    if (count > longest) throw new NoNativeForm(`a list of ${count} openings`);
    const [labels = [], areas = [], boxes] = written.map((place) => cellsOf(place, count));
    const table = openingTable(this.tables, key, { labels, areas, boxes });
    const hasBoxes = boxes !== undefined;
    const sizes = this.boxSizes(labels, boxes);
    const most = Math.max(0, ...sizes);
    const room = Math.min(mostCombined, count, Math.max(usualOpenings, most));
    const slots = hasBoxes ? Math.min(count, Math.max(usualBoxes, sizes.length + 2)) : 1;
    const [first, last] = [labels[0] as Place, labels.at(-1) as Place];
    const whole = { ...first, bottom: last.bottom, right: last.right };
    const own = () => boxTable(this.tables, key, table, whole, { slots, room });
    const sets = () => setTable(this.tables, key, own(), { slots, room });
    return { table, hasBoxes, boxes: own, sets, room, isTooLarge: most > mostCombined };
  }

  /** How many labelled openings each box has now. */
  private boxSizes(labels: readonly Place[], boxes: readonly Place[] | undefined): number[] {
    const text = (place: Place | undefined) => {
      const value = place && this.workbook.sheet(place.sheet)?.cell(place.top, place.left)?.value;
      return typeof value === "object" ? "" : String(value ?? "").trim();
    };
    const named = labels.flatMap((place, i) =>
      text(place) === "" ? [] : [boxes ? text(boxes[i]).toUpperCase() : ""],
    );
    return [...counted(named).values()];
  }
}

/** The first `count` cells of a range, row by row. */
function cellsOf(place: Place, count: number): Place[] {
  const cols = colsOf(place);
  return Array.from({ length: count }, (_, i) => {
    const top = place.top + Math.floor(i / cols);
    const left = place.left + (i % cols);
    return { sheet: place.sheet, top, left, bottom: top, right: left };
  });
}
