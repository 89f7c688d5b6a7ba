import { addressText, maxCols, maxRows, parseAddress } from "../../cells";
import { type ModelOptions, SheetModel } from "../../sheet";
import type { Sheet, TableInfo, Workbook } from "../../workbook";
import { addressTooLong, longestAddress } from "./address";
import { type Book, type Functions, SheetTab } from "./book";
import { CellWriter } from "./cells/write";
import type { Change, Listeners } from "./change";
import type { Events } from "./events";
import { Formats } from "./formats";
import { History } from "./history";
import { HostRange } from "./host-range";
import { Marks } from "./marks/marks";
import { Names } from "./names";
import { HostError, invalidArgument, notFound } from "./wire/errors";
import { References } from "./wire/references";

interface BookSource {
  readonly workbook: Workbook;
  readonly fileName: string;
  readonly functions: Functions;
  readonly model: ModelOptions;
  readonly events: Events;
  readonly listeners: Listeners;
}

/** Everything about the one workbook that is open. */
export class OpenBook implements Book {
  readonly workbook: Workbook;
  readonly fileName: string;
  readonly functions: Functions;
  readonly model: SheetModel;
  readonly events: Events;
  readonly listeners: Listeners;
  readonly names: Names;
  readonly formats: Formats;
  readonly marks: Marks;
  readonly history = new History();
  /** Objects that the client keeps. */
  readonly references = new References();
  readonly cells: CellWriter;
  readonly tabs: SheetTab[];
  /** Tables made in this session, which a saved copy has as plain cells. */
  readonly addedTables = new Map<string, { readonly tab: SheetTab; readonly table: TableInfo }>();
  calculationMode = "Automatic";
  isDirty = false;
  isStructureProtected = false;
  selection: HostRange;
  #lastId = 0;
  /** Counts the states of the workbook, for whatever is worked out from it. */
  revision = 1;

  constructor({ workbook, fileName, functions, model, events, listeners }: BookSource) {
    this.workbook = workbook;
    this.fileName = fileName;
    this.functions = functions;
    this.events = events;
    this.listeners = listeners;
    this.names = new Names(this);
    const tables = () => this.tables;
    const view = {
      get sheets() {
        return workbook.sheets;
      },
      sheet: (name: string) => workbook.sheet(name),
      get names() {
        return workbook.names;
      },
      get tables() {
        return tables();
      },
      date1904: workbook.date1904,
    };
    this.model = new SheetModel(view, functions, model);
    this.formats = new Formats(this);
    this.marks = new Marks(this);
    this.cells = new CellWriter(this, this.history, this.formats);
    this.tabs = workbook.sheets.map((sheet) => new SheetTab(this, this.#newId(), sheet));
    this.selection = this.corner(this.tabs.find((tab) => tab.visibility === "visible"));
  }

  get tables(): readonly TableInfo[] {
    // The same list as long as nothing was added: it is looked through once.
    if (this.addedTables.size === 0) return this.workbook.tables;
    const added = [...this.addedTables.values()].filter(({ tab }) => !tab.isDeleted);
    const named = added.map(({ tab, table }) => ({ ...table, sheet: tab.name }));
    return [...this.workbook.tables, ...named];
  }

  get active(): SheetTab {
    return this.selection.tab;
  }

  findTab(key: string): SheetTab | null {
    const wanted = key.toLowerCase();
    return (
      this.tabs.find((tab) => tab.name.toLowerCase() === wanted) ??
      this.tabs.find((tab) => tab.id === key) ??
      null
    );
  }

  /** By name or id; throws ItemNotFound. */
  tab(key: string): SheetTab {
    const found = this.findTab(key);
    if (found === null) throw notFound(`The workbook has no sheet "${key}".`);
    return found;
  }

  /** A range by its address on a sheet, or by a name that stands for one. */
  range(tab: SheetTab, text: string): HostRange {
    if (text.length > longestAddress) throw invalidArgument(addressTooLong(text));
    const address = parseAddress(text);
    if (address !== null) {
      if (address.sheet === null) return new HostRange(tab, address.range);
      const named = this.tab(address.sheet);
      if (named === tab) return new HostRange(tab, address.range);
      throw invalidArgument(`"${text}" is not on the sheet "${tab.name}".`);
    }
    const name = this.names.find(text, tab);
    const range = name === undefined ? null : this.names.range(name);
    if (range !== null) return range;
    throw invalidArgument(`"${text}" is neither an address such as A1:B9 nor the name of a range.`);
  }

  /** A range by an address that may name another sheet than the given one. */
  rangeAnywhere(tab: SheetTab, text: string): HostRange {
    const sheet = parseAddress(text)?.sheet ?? null;
    return this.range(sheet === null ? tab : this.tab(sheet), text);
  }

  wholeSheet(tab: SheetTab): HostRange {
    return new HostRange(tab, { top: 0, left: 0, bottom: maxRows - 1, right: maxCols - 1 });
  }

  select(range: HostRange): void {
    const { selection: before } = this;
    if (range.tab.visibility !== "visible")
      throw new HostError(
        "InvalidOperation",
        `The sheet "${range.tab.name}" is hidden and cannot be shown.`,
      );
    const isSame = before.tab === range.tab && before.address === range.address;
    this.selection = range;
    if (before.tab !== range.tab) this.events.activated(range.tab.id);
    if (isSame) return;
    this.events.selectionChanged(range.tab.id, addressText(range));
    this.listeners.selected(range.ref);
  }

  activate(tab: SheetTab): void {
    if (tab !== this.active) this.select(this.corner(tab));
  }

  /** Adds a sheet after the last. Refuses a name that is taken or not possible. */
  addTab(name: string | null): SheetTab {
    const wanted = name ?? this.#freeName();
    if (this.workbook.sheet(wanted) !== undefined)
      throw new HostError("ItemAlreadyExists", `The workbook has a sheet "${wanted}" already.`);
    try {
      return this.#enter(this.workbook.addSheet(wanted, { rows: [] }));
    } catch (thrown) {
      throw thrown instanceof RangeError ? invalidArgument(thrown.message) : thrown;
    }
  }

  #enter(sheet: Sheet): SheetTab {
    const tab = new SheetTab(this, this.#newId(), sheet);
    this.tabs.push(tab);
    this.touched({ kind: "sheets" });
    return tab;
  }

  /** Forgets a sheet that was taken out of the workbook. */
  leave(tab: SheetTab): void {
    const at = this.tabs.indexOf(tab);
    this.tabs.splice(at, 1);
    if (this.active === tab) {
      const visible = (other: SheetTab) => other.visibility === "visible";
      const next = this.tabs.slice(at).find(visible) ?? this.tabs.slice(0, at).findLast(visible);
      this.selection = this.corner(next);
      if (next) this.events.activated(next.id);
      this.listeners.selected(this.selection.ref);
    }
    tab.isDeleted = true;
    this.history.forget(tab);
    this.names.forget();
    // The model knows sheets by name; a new one of this name must not meet the old cells.
    this.model.refresh();
    this.touched({ kind: "sheets" });
  }

  /** Notes a change and tells the page. */
  touched(change: Change): void {
    this.revision++;
    this.isDirty = true;
    this.listeners.changed(change);
  }

  /** The top left cell of a sheet; of the first when no sheet is given. */
  corner(tab: SheetTab | undefined): HostRange {
    const on = tab ?? this.tabs[0];
    if (on === undefined) throw new RangeError("The workbook has no sheet to show.");
    return new HostRange(on, { top: 0, left: 0, bottom: 0, right: 0 });
  }

  #freeName(): string {
    let number = this.tabs.length + 1;
    while (this.findTab(`Sheet${number}`) !== null) number++;
    return `Sheet${number}`;
  }

  #newId(): string {
    return `{${String(++this.#lastId).padStart(8, "0")}-0000-4000-8000-000000000000}`;
  }
}
