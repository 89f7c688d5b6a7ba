import { type Place as Cells, InputError, type Spot } from "../../src/cells";
import type { NewAcceptance, PlannedBox } from "../../src/excel";
import type { Finding, FitChoice, JobFile, JobStart, Mend } from "../../src/job";
import type { CellNow } from "../../src/pane/model/trace-now";
import type { Clock } from "../../src/pane/session/debounce";
import type { PaneHost, Place, Reading } from "../../src/pane/session/host";
import type { SheetPlan } from "../../src/records";

/** A clock that stands until it is turned on. */
export class HandClock implements Clock {
  private readonly waiting = new Map<number, { run: () => void; delay: number }>();
  private next = 0;

  set(run: () => void, delay: number): number {
    this.waiting.set(++this.next, { run, delay });
    return this.next;
  }

  clear(timer: unknown): void {
    this.waiting.delete(timer as number);
  }

  /** Lets all happen that waits no longer than this. */
  turn(longest = Number.POSITIVE_INFINITY): void {
    const due = [...this.waiting].filter(([, { delay }]) => delay <= longest);
    for (const [timer] of due) this.waiting.delete(timer);
    for (const [, { run }] of due) run();
  }
}

/** A host whose workbook a test sets, and that keeps what was asked of it. */
export class FakeHost implements PaneHost {
  readonly asked: string[] = [];
  choices: readonly FitChoice[] = [];
  onEdit: ((sheet: string) => void) | undefined;
  onMove: ((place: Place) => void) | undefined;
  refuses = "";
  /** What the program itself fails in. */
  breaks = "";
  /** The workbook as a file, where the host gives one. */
  bytes: Uint8Array | undefined;

  constructor(public file: JobFile) {}

  private ask(what: string): void {
    this.asked.push(what);
    if (this.refuses === what) throw new InputError(`${what} is not allowed`);
    if (this.breaks === what) throw new TypeError("x is undefined");
  }

  private reading(): Reading {
    return { file: this.file, notes: ["Fans is filtered."], today: 46000 };
  }

  async read(onProgress?: (progress: { done: number; total: number }) => void): Promise<Reading> {
    this.ask(onProgress ? "read" : "read again");
    onProgress?.({ done: 1, total: 1 });
    return this.reading();
  }

  /** How often the workbook was read again. */
  get rereads(): number {
    return this.asked.filter((what) => what === "read again").length;
  }

  async readAgain(): Promise<undefined> {}

  async watchEdits(onEdit: (cells: Cells) => void): Promise<() => void> {
    this.onEdit = (sheet) => onEdit({ sheet, top: 0, left: 0, bottom: 0, right: 0 });
    return () => {
      this.onEdit = undefined;
    };
  }

  async watchSelection(onMove: (place: Place) => void): Promise<() => void> {
    this.onMove = onMove;
    return () => {
      this.onMove = undefined;
    };
  }

  async selection(): Promise<Place> {
    return { sheet: "Fans", row: 1, cell: "A2" };
  }

  async select(sheet: string, cell: string): Promise<void> {
    this.ask(`select ${sheet}!${cell}`);
  }

  async describe({ sheet, row, col }: Spot): Promise<CellNow> {
    this.ask("describe");
    const grid = this.file.sheets.find(({ name }) => name === sheet);
    const value = grid?.value(row, col) ?? null;
    return { formula: grid?.formula(row, col) ?? null, value, text: String(value ?? "") };
  }

  async apply(_sheet: string, mend: Mend) {
    this.ask(`apply ${mend.label}`);
    return { undo: async () => this.ask(`undo ${mend.label}`) };
  }

  async hasMarks(): Promise<boolean> {
    return false;
  }

  async mark(findings: readonly Finding[]): Promise<number> {
    this.ask("mark");
    return findings.length;
  }

  async clearMarks(): Promise<void> {
    this.ask("clear marks");
  }

  async writeFindings(): Promise<string> {
    this.ask("write findings");
    return "Findings 2";
  }

  async accept({ finding, reason }: NewAcceptance): Promise<string> {
    this.ask(`accept ${finding.sheet}!${finding.cell}: ${reason}`);
    return "Accepted";
  }

  async withdraw({ sheet, cell }: NewAcceptance["finding"]): Promise<string> {
    this.ask(`withdraw ${sheet}!${cell}`);
    return "Accepted";
  }

  async writeRecord({ name }: SheetPlan): Promise<string> {
    this.ask(`write ${name}`);
    return name;
  }

  givesFile(): boolean {
    return this.bytes !== undefined;
  }

  async workbookBytes(): Promise<Uint8Array> {
    this.ask("bytes");
    if (!this.bytes) throw new Error("there is no file");
    return this.bytes;
  }

  async openCopy(): Promise<void> {
    this.ask("open copy");
  }

  async saveFit(choices: readonly FitChoice[]): Promise<void> {
    this.ask("save fit");
    this.choices = choices;
  }

  async addJobSheets({ system, features = [] }: JobStart): Promise<readonly string[]> {
    this.ask(`add sheets ${[system, ...features].join(" ")}`);
    return ["Job", "Fans"];
  }

  async isEmpty(): Promise<boolean> {
    return this.file.sheets.length === 0;
  }

  async writeOpenings(plan: PlannedBox): Promise<void> {
    this.ask(`write ${plan.box}`);
  }

  async insertFormula(formula: string): Promise<string> {
    this.ask(`insert ${formula}`);
    return "Fans!K3";
  }
}
