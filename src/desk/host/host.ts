import type { Place } from "../../cells";
import type { ModelOptions } from "../../sheet";
import type { SheetState, Workbook } from "../../workbook";
import { Answering } from "./answering";
import type { Functions } from "./book";
import { type Change, Listeners } from "./change";
import { Events } from "./events";
import { keepTabs } from "./keep";
import { makeDesk } from "./objects/catalog";
import type { Desk } from "./objects/desk";
import { OpenBook } from "./open-book";
import { PageSide } from "./page-side";

export interface HostOptions {
  /** The worksheet functions that formulas may call. */
  readonly functions: Functions;
  /** What the pane is told as the workbook's name. */
  readonly fileName?: string;
  readonly model?: ModelOptions;
}

/** A sheet as the page shows it. */
export interface SheetInfo {
  readonly name: string;
  readonly visibility: SheetState;
  readonly isProtected: boolean;
  readonly frozenRows: number;
  readonly frozenCols: number;
  /** Rows and columns in use. */
  readonly rowCount: number;
  readonly colCount: number;
  readonly hasMerges: boolean;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenCols: ReadonlySet<number>;
  /** Width of a column in characters. */
  readonly width: (col: number) => number;
}

/**
 * Holds one open workbook and answers both sides: the pane, which speaks Office.js through a
 * bridge, and the page with its grid. Rows and columns are 0-based; sheets go by name whatever the
 * case, and one that is not there throws a HostError.
 */
export class WorkbookHost extends PageSide {
  /** Takes each message for the client library; `connect` sets it. */
  onMessage: (text: string) => void = () => {};
  private readonly listeners = new Listeners();
  private readonly options: HostOptions;
  private readonly answering: Answering;
  private readonly events: Events;
  private desk: Desk;

  constructor(workbook: Workbook, options: HostOptions) {
    super();
    this.options = options;
    this.answering = new Answering((text) => this.onMessage(text));
    this.events = new Events(() => this.answering.sendEvents(this.events));
    this.desk = this.makeDesk(workbook, options.fileName ?? "workbook.xlsx");
  }

  protected get book(): OpenBook {
    return this.desk.book;
  }

  // The pane's side

  /** One message of the client library; answered later through `onMessage`. */
  sendMessageToHost(text: string): void {
    this.answering.receive(text, () => this.desk);
  }

  /** Requests answered so far: the round trips of the pane. */
  get requestCount(): number {
    return this.answering.requestCount;
  }

  /** While a cell is being edited, requests fail as in Excel, or wait if they asked to. */
  beginEdit(): void {
    this.answering.isEditing = true;
  }

  endEdit(): void {
    this.answering.endEdit(() => this.desk);
  }

  get isEditing(): boolean {
    return this.answering.isEditing;
  }

  // The page's side

  get workbook(): Workbook {
    return this.book.workbook;
  }

  get fileName(): string {
    return this.book.fileName;
  }

  /** Something was changed since opening or saving. */
  get isDirty(): boolean {
    return this.book.isDirty;
  }

  /** Counts the states of the open workbook. */
  get revision(): number {
    return this.book.revision;
  }

  /** Puts another workbook in place of the open one, whose unsaved changes are gone then; `isDirty` where it has such itself. */
  open(workbook: Workbook, fileName: string, isDirty = false): void {
    this.desk = this.makeDesk(workbook, fileName);
    this.book.isDirty = isDirty;
    this.listeners.changed({ kind: "opened" });
    this.listeners.selected(this.selection);
  }

  /** The file as it stands. */
  save(): Uint8Array {
    const bytes = this.bytes();
    this.book.isDirty = false;
    return bytes;
  }

  /** The file as it stands, for a copy of another kind: what was changed is not saved with it. */
  bytes(): Uint8Array {
    keepTabs(this.book.tabs);
    return this.book.workbook.save();
  }

  /** Does a part of what the first edit needs; false once nothing of that is left. */
  prepare(): boolean {
    return this.book.model.prepare();
  }

  /** Calls the listener after every change; the result ends that. */
  onChange(listener: (change: Change) => void): () => void {
    this.listeners.change.add(listener);
    return () => this.listeners.change.delete(listener);
  }

  /** Calls the listener when other cells are selected, by the page or the pane. */
  onSelect(listener: (cells: Place) => void): () => void {
    this.listeners.select.add(listener);
    return () => this.listeners.select.delete(listener);
  }

  /** In the order of the tabs, hidden ones included. */
  get sheets(): SheetInfo[] {
    return this.book.tabs.map((tab) => ({
      name: tab.name,
      visibility: tab.visibility,
      isProtected: tab.isProtected,
      frozenRows: tab.sheet.frozenRows,
      frozenCols: tab.sheet.frozenCols,
      rowCount: tab.sheet.rowCount,
      colCount: tab.sheet.colCount,
      hasMerges: tab.sheet.merges.length > 0,
      hiddenRows: tab.sheet.hiddenRows,
      hiddenCols: tab.sheet.hiddenCols,
      width: (col) => tab.width(col),
    }));
  }

  get shownSheets(): SheetInfo[] {
    return this.sheets.filter(({ visibility }) => visibility === "visible");
  }

  private makeDesk(workbook: Workbook, fileName: string): Desk {
    const { functions, model = {} } = this.options;
    const { events, listeners } = this;
    events.forgetSheets();
    return makeDesk(new OpenBook({ workbook, fileName, functions, model, events, listeners }));
  }
}
