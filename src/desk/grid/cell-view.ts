import type { ICellRendererComp, ICellRendererParams } from "ag-grid-community";
import { type CellValue, visible } from "../../cells";
import type { StyleSpec } from "../../workbook";
import type { Desk } from "../desk";
import type { Mark } from "../host";
import { readable } from "../look/contrast";
import { fillIn, markIn } from "../look/fill";
import { fitNumber } from "../look/fit-number";
import type { ThemeName } from "../look/theme-name";
import { meaningOf } from "../text/errors";
import type { Line } from "./line";

/** Shown before the text of a cell that a check has marked, so that colour is not the only sign. */
const markSign = "◆";

/** What is common to all cells of a grid. */
export interface GridContext {
  readonly desk: Desk;
  /** The theme in force, which decides how much of a fill is shown. */
  readonly theme: () => ThemeName;
}

/** One cell as the grid draws it: its text, its look, its mark, and what is wrong with it. */
export class CellView implements ICellRendererComp<Line> {
  private readonly element = document.createElement("span");
  private worn = plainDress;
  private drawn = "";

  init(params: ICellRendererParams<Line>): void {
    this.element.className = "desk-cell-text";
    this.draw(params);
  }

  getGui(): HTMLElement {
    return this.element;
  }

  refresh(params: ICellRendererParams<Line>): boolean {
    this.draw(params);
    return true;
  }

  private draw(params: ICellRendererParams<Line>): void {
    const { desk, theme } = params.context as GridContext;
    const cell = params.eGridCell;
    const row = params.data?.row ?? 0;
    const col = Number(params.column?.getColId());
    const sheet = desk.sheet.name;
    const value = desk.book.value(sheet, row, col);
    const found = desk.markAt(row, col);
    const mark = found ?? desk.book.marksAt(sheet, row, col);
    const { element } = this;
    const text = value === null ? "" : visible(desk.book.text(sheet, row, col));
    const look = desk.book.styleAt(sheet, row, col);
    const isGeneral = (look.numberFormat ?? "General") === "General";
    const room = charactersIn(params.column?.getActualWidth() ?? 0, mark !== null);
    const fitted = typeof value === "number" ? fitNumber(text, value, room, isGeneral) : text;
    const drawn = `${fitted}\n${mark ? `${markSign}${found?.words ?? ""}` : ""}`;
    // A text that is put in anew is laid out anew, and a screen holds hundreds.
    if (drawn !== this.drawn) {
      element.textContent = fitted;
      if (mark) element.prepend(signOf(found?.words ?? ""));
    }
    this.drawn = drawn;
    const error = typeof value === "object" && value !== null ? value : null;
    // The grid keeps the titles of its cells to itself, so the text inside carries it.
    const said = [
      fitted === text ? "" : text,
      error ? `${error.error} ${meaningOf(error)}` : "",
      found?.words ?? "",
    ];
    const title = said.filter((text) => text !== "").join(" ");
    if (title !== "") element.title = title;
    else if (element.title !== "") element.removeAttribute("title");
    if (cell.dataset.row !== String(row)) cell.dataset.row = String(row);
    if (cell.dataset.col !== String(col)) cell.dataset.col = String(col);
    this.dress(cell, look, mark, value, theme());
    showSelection(cell, desk, row, col);
  }

  /** Most cells look plain, and touching the style of a cell costs more than a comparison. */
  private dress(
    cell: HTMLElement,
    look: StyleSpec,
    mark: Mark | null,
    value: CellValue,
    theme: ThemeName,
  ): void {
    const fill = mark?.fill ? markIn(theme, mark.fill) : fillIn(theme, hex(look.fill));
    const dress: Dress = {
      background: fill ?? "",
      color: fill === null ? "" : readable(mark?.color ?? hex(look.color), fill),
      fontWeight: look.bold || mark?.bold ? "600" : "",
      fontStyle: look.italic ? "italic" : "",
      textAlign: look.align ?? alignOf(value),
    };
    for (const name of dressNames)
      if (dress[name] !== this.worn[name]) cell.style[name] = dress[name];
    this.worn = dress;
    const isError = typeof value === "object" && value !== null;
    setClass(cell, "desk-error", isError);
    setClass(cell, "desk-filled", fill !== null);
    setClass(cell, "desk-marked", mark !== null);
    setClass(cell, "desk-wrap", look.wrap === true);
  }
}

/** "#RRGGBB" of the digits in a file. */
const hex = (digits: string | undefined) => (digits === undefined ? null : `#${digits}`);

/** How many characters of a number stand in a cell, beside the sign of a mark. */
function charactersIn(pixels: number, isMarked: boolean): number {
  return Math.floor((pixels - 13 - (isMarked ? 14 : 0)) / 7.6);
}

const dressNames = ["background", "color", "fontWeight", "fontStyle", "textAlign"] as const;
type Dress = Readonly<Record<(typeof dressNames)[number], string>>;
const plainDress: Dress = {
  background: "",
  color: "",
  fontWeight: "",
  fontStyle: "",
  textAlign: "",
};

function setClass(element: HTMLElement, name: string, isOn: boolean): void {
  if (element.classList.contains(name) !== isOn) element.classList.toggle(name, isOn);
}

/** Shows on a cell's element whether it is the active one and whether it is selected. */
export function showSelection(cell: HTMLElement, desk: Desk, row: number, col: number): void {
  const { cursor, area } = desk;
  const isActive = cursor.row === row && cursor.col === col;
  const isSelected = row >= area.top && row <= area.bottom && col >= area.left && col <= area.right;
  setClass(cell, "desk-active", isActive);
  setClass(cell, "desk-selected", isSelected && !isActive);
  if (isSelected) cell.setAttribute("aria-selected", "true");
  else if (cell.hasAttribute("aria-selected")) cell.removeAttribute("aria-selected");
}

function signOf(words: string): HTMLElement {
  const sign = document.createElement("span");
  sign.className = "desk-mark-sign";
  sign.setAttribute("role", "img");
  sign.setAttribute("aria-label", words === "" ? "marked" : `marked: ${words}`);
  sign.textContent = markSign;
  return sign;
}

function alignOf(value: unknown): string {
  if (typeof value === "number") return "right";
  return typeof value === "boolean" || (typeof value === "object" && value !== null)
    ? "center"
    : "";
}
