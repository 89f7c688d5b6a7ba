import type { ICellEditorComp, ICellEditorParams } from "ag-grid-community";
import { cellName } from "../../cells";
import { restOf } from "../rows/complete";
import { anchored } from "../text/anchor";
import type { GridContext } from "./cell-view";
import type { Line } from "./line";

/** The field in which a cell is edited. What is typed lives in the desk; the grid only holds it. */
export class CellEditor implements ICellEditorComp<Line> {
  private readonly input = document.createElement("input");
  private context: GridContext | undefined;
  private forget = () => {};

  init(params: ICellEditorParams<Line>): void {
    this.context = params.context as GridContext;
    const { desk } = this.context;
    const { input } = this;
    const { row, col } = desk.edit ?? desk.cursor;
    input.type = "text";
    input.className = "desk-editor";
    input.autocomplete = "off";
    input.spellcheck = false;
    input.setAttribute("aria-label", `Edit ${cellName(row, col)}`);
    input.value = desk.edit?.text ?? "";
    const choices = desk.book.choices(desk.sheet.name, row, col);
    if (choices) input.setAttribute("list", offer(choices));
    input.addEventListener("input", (event) => {
      input.placeholder = "";
      desk.retype(input.value);
      if ((event as InputEvent).inputType === "insertText") this.complete(row, col);
    });
    input.addEventListener("keydown", ({ key }) => {
      if (key === "F4") this.anchor();
      if (input.placeholder === "" || (key !== "Backspace" && key !== "Delete")) return;
      input.placeholder = "";
      desk.retype("");
    });
    this.forget = desk.subscribe((topic) => {
      if (topic === "edit" && desk.edit) this.show(desk.edit.text, desk.edit.problem);
      if (topic === "choices") this.open();
    });
    this.fit();
  }

  getGui(): HTMLElement {
    return this.input;
  }

  afterGuiAttached(): void {
    if (this.context?.desk.edit?.place !== "cell") return;
    this.input.focus({ preventScroll: true });
    this.input.setSelectionRange(this.input.value.length, this.input.value.length);
    const { edit } = this.context.desk;
    if (edit.isOver) this.complete(edit.row, edit.col);
  }

  getValue(): string {
    return this.input.value;
  }

  destroy(): void {
    this.forget();
  }

  /** Offers the rest of a text that the column knows, selected so that further typing replaces it. */
  private complete(row: number, col: number): void {
    const { input, context } = this;
    const typed = input.value;
    if (!context?.desk.edit?.isOver || input.selectionStart !== typed.length) return;
    const rest = restOf(context.desk, row, col, typed);
    if (rest === "") return;
    input.value = typed + rest;
    input.setSelectionRange(typed.length, input.value.length);
    context.desk.retype(input.value);
  }

  /** Holds the reference at the caret in its next way. */
  private anchor(): void {
    const { input } = this;
    const { text, caret } = anchored(input.value, input.selectionStart ?? 0);
    this.context?.desk.retype(text);
    input.setSelectionRange(caret, caret);
  }

  /** Opens the list whole: a browser shows of it only what is like the text in the field. */
  private open(): void {
    const { input } = this;
    // What it held stays in view until something is typed, or is taken out.
    input.placeholder = input.value;
    input.value = "";
    input.showPicker?.();
  }

  private show(text: string, problem: string | null): void {
    if (this.input.value !== text) this.input.value = text;
    this.input.setAttribute("aria-invalid", String(problem !== null));
    this.fit();
  }

  /** Grows over the cells beside it rather than hiding what is typed. */
  private fit(): void {
    this.input.style.width = `max(100%, ${Math.min(60, this.input.value.length + 2)}ch)`;
  }
}

const listId = "desk-choices";

/** Puts a cell's drop-down entries where its field finds them. */
function offer(choices: readonly string[]): string {
  let list = document.getElementById(listId);
  if (!list) {
    list = document.createElement("datalist");
    list.id = listId;
    document.body.append(list);
  }
  list.replaceChildren(
    ...choices.map((choice) => Object.assign(document.createElement("option"), { value: choice })),
  );
  return listId;
}
