import {
  aroundBySheet,
  boundsOf,
  InputError,
  maxCols,
  maxRows,
  type Place,
  type Spot,
} from "../../cells";
import type { PlannedBox } from "../../excel";
import { type Finding, type FitChoice, isOpen, type JobCheck, type JobStart } from "../../job";
import { announceChange, announceCheck, count } from "../model/announce";
import { placeOf } from "../model/finding-groups";
import type { ScreenKey } from "../model/screens";
import type { CellNow } from "../model/trace-now";
import { isWaiting } from "../model/waiting";
import { type Clock, Gather, wallClock } from "./debounce";
import { type Held, sheetOf } from "./held";
import type { PaneHost, Reading, Undoable } from "./host";
import { loadAudit, readable } from "./load-audit";
import { paint } from "./paint";
import { type SessionState, waitsForExcel } from "./state";
import { Store } from "./store";

/** Edits of one paste or burst come closer together than this. */
const burstTime = 20;
/** In a long job an edit is waited upon for a while: as a rule the next one is typed already. */
const quietTime = 250;
/** A reading and check that takes no longer than this keeps nobody from typing on. */
const unfelt = 150;
/** Excel begins to answer sooner than this, ms, unless a cell is being typed in. */
const patience = 2000;
/** After an edit of a long job all is read once nothing was typed for so long. */
const restTime = 10_000;
/** Cells of which is not known which they are. */
const everywhere: Place = { sheet: "", top: 0, left: 0, bottom: maxRows - 1, right: maxCols - 1 };
/** Mends that can be taken back. */
const mostApplied = 20;
/** Times that the workbook is read again while a worksheet function has not answered. */
const mostWaits = 6;

/**
 * What goes on between the pane and the workbook. Screens read `state` and call the methods,
 * none of which rejects: what went wrong stands in `state.problem`.
 */
export class Session extends Store {
  private readonly undos = new Map<string, Undoable & { readonly cells: Place }>();
  private readonly edits: Gather<Place>;
  /** Waits until nothing is typed. */
  private readonly rest: Gather<undefined>;
  private readonly unwatch: (() => void)[] = [];
  private reading: Reading | undefined;
  /** What the check in view was made of, and the cells that were edited or worked out again since. */
  private checked: Reading | undefined;
  private since: Place[] = [];
  /** Reading and checking all of the workbook takes long enough to be felt. */
  private isLong = false;
  private applications = 0;
  private waits = 0;
  private isWatching = false;
  /** An edit came while an earlier one was being checked, and nothing was made of that check. */
  private isOvertaken = false;
  /** Sheets that are written by us and read by nobody. */
  private readonly ownSheets = new Set<string>();

  constructor(
    private readonly host: PaneHost,
    clock: Clock = wallClock,
    /** The check of a long job lets the page do something else as often as this, in ms. */
    private readonly sliceTime = 50,
    private readonly unfeltTime = unfelt,
  ) {
    super();
    this.edits = new Gather(burstTime, (cells) => void this.recheck(cells), clock);
    this.rest = new Gather(restTime, () => void this.recheck([], true), clock);
  }

  /**
   * Begins to follow the selection; in an empty workbook with the screen that starts a job. Edits
   * are followed once a check has been made, which `checksAtOnce` asks for.
   */
  async open(checksAtOnce = false): Promise<void> {
    let isEmpty = false;
    await this.queue("", async () => {
      this.unwatch.push(await this.host.watchSelection((selection) => this.set({ selection })));
      this.set({ selection: await this.host.selection(), marks: await this.host.hasMarks() });
      isEmpty = await this.host.isEmpty();
      if (isEmpty && this.state.screen === "check") this.show("start");
    });
    if (checksAtOnce && !isEmpty && !this.reading) await this.check();
  }

  show(screen: ScreenKey): void {
    this.set({ screen });
  }

  close(): void {
    this.closed = true;
    this.edits.stop();
    this.rest.stop();
    for (const stop of this.unwatch.splice(0)) stop();
  }

  /** Reads the whole workbook and checks it. */
  check(): Promise<void> {
    return this.queue("Reading the workbook", async () => {
      this.edits.stop();
      const late = setTimeout(() => this.set({ busy: waitsForExcel }), patience);
      const isAnswered = () => clearTimeout(late);
      // Before the reading: what is typed meanwhile is read once more.
      if (!this.isWatching)
        this.unwatch.push(await this.host.watchEdits((cells) => this.edits.add(cells)));
      this.isWatching = true;
      this.reading = await this.host
        .read((progress) => {
          isAnswered();
          this.set({ progress, busy: "Reading the workbook" });
        })
        .finally(isAnswered);
      this.set({ busy: "Checking", progress: undefined });
      await this.judge((_, after) => announceCheck(after));
    });
  }

  /**
   * Reads and checks again after edits, without a word where nothing came of it. Of a long job only the
   * cells are read that the host tells of; whether it tells of all is certain once the whole is read,
   * at rest.
   */
  private recheck(edits: readonly Place[], isAtRest = false): Promise<void> {
    return this.queue("", async () => {
      const theirs = edits.filter(({ sheet }) => !this.ownSheets.has(sheet));
      this.since.push(...theirs);
      if (!this.reading || (theirs.length === 0 && !this.isOvertaken && !isAtRest)) return;
      const began = performance.now();
      const announce = (before: JobCheck | undefined, after: JobCheck) =>
        before ? announceChange(before, after) : "";
      const again =
        this.isLong && !isAtRest && this.checked && (await this.readAgain(this.checked));
      if (again) {
        this.reading = again;
        await this.judge(announce, began, this.since);
        this.rest.add(undefined);
        return;
      }
      const { arrived } = this.edits;
      // Read once more where the reading fails, or a worksheet function has not answered yet.
      let isDue = true;
      try {
        const read = await this.readUnless(isAtRest && (() => this.edits.arrived > arrived));
        isDue = read !== undefined && isWaiting(read.file);
        if (!read) return;
        this.reading = read;
      } finally {
        if (isDue && this.waits++ < mostWaits) this.edits.add(theirs[0] ?? everywhere);
        else this.waits = 0;
      }
      await this.judge(announce, began);
    });
  }

  /** The whole workbook; undefined where meanwhile it is no longer wanted. */
  private async readUnless(isLeft: false | (() => boolean)): Promise<Reading | undefined> {
    if (!isLeft) return this.host.read();
    try {
      return await this.host.read(() => {
        if (isLeft()) throw new Error("the reading is left");
      });
    } catch (thrown) {
      if (!isLeft()) throw thrown;
      return undefined;
    }
  }

  /** The cells edited since the last check; undefined where the host cannot read them by themselves. */
  private async readAgain(checked: Reading): Promise<Reading | undefined> {
    this.since = aroundBySheet(this.since);
    try {
      return await this.host.readAgain(checked, this.since);
    } catch {
      return undefined;
    }
  }

  /** `began`, of the check after an edit: where another edit comes, the check is left for the next. */
  private async judge(
    announce: (before: JobCheck | undefined, after: JobCheck) => string,
    began?: number,
    cells?: readonly Place[],
  ): Promise<void> {
    const { reading } = this;
    if (!reading) return;
    const { arrived } = this.edits;
    const from = began ?? performance.now();
    await paint();
    const before = this.state.check;
    const audit = await loadAudit();
    const { checkSteps } = await import("../../job/engine");
    const file = readable(reading.file, audit, before?.job.file, cells);
    const steps = checkSteps(file, reading.today, audit.further, { check: before, cells });
    let step = steps.next();
    for (let shown = performance.now(); !step.done; step = steps.next()) {
      if (performance.now() - shown < this.sliceTime) continue;
      await paint();
      this.isOvertaken = began !== undefined && this.edits.arrived > arrived;
      if (this.isOvertaken) return;
      shown = performance.now();
    }
    const check = step.value;
    this.isOvertaken = false;
    this.checked = reading;
    this.since = [];
    const took = performance.now() - from;
    if (!cells) this.isLong = took > this.unfeltTime;
    // A long job is not read and checked again at every pause in typing.
    this.edits.delay = began === undefined || cells || !this.isLong ? burstTime : quietTime;
    const message = announce(before, check);
    this.set({
      check,
      notes: [...reading.notes, ...audit.notes],
      ...(message === "" ? {} : { message }),
    });
    if (this.state.marks) await this.host.mark(check.findings.filter(isOpen));
  }

  select(sheet: string, cell: string): Promise<void> {
    return this.queue("", () => this.host.select(sheet, cell));
  }

  /** Selects a cell to be typed into: the keyboard goes there too, where the host can put it. */
  async goTo(sheet: string, cell: string): Promise<void> {
    await this.select(sheet, cell);
    this.toSheet();
  }

  /** Puts the keyboard on the sheet, unless the pane has a problem to tell of. */
  private toSheet(): void {
    if (this.state.problem === "") this.host.toSheet?.();
  }

  /**
   * What a cell holds at this moment; undefined where the workbook does not say, as while a cell is
   * being edited. One cell is read past the queue: it would wait for a long check otherwise.
   */
  async now(spot: Spot): Promise<CellNow | undefined> {
    try {
      return await this.host.describe(spot);
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      return undefined;
    }
  }

  /** Applies a finding's mend and checks again. */
  apply(finding: Finding): Promise<void> {
    const mend = finding.apply;
    if (!mend) return Promise.resolve();
    return this.queue("Writing", async () => {
      const { sheet } = finding;
      // A check that came in between may have found something else there.
      const own = JSON.stringify([placeOf(finding), mend]);
      const now = this.state.check?.findings ?? [];
      if (!now.some((each) => JSON.stringify([placeOf(each), each.apply]) === own))
        throw new InputError(
          `${placeOf(finding)} was changed since: nothing was written. Look at the new findings.`,
        );
      const undo = await this.host.apply(sheet, mend, sheetOf(this.reading, sheet));
      const key = `mend ${++this.applications}`;
      const written = boundsOf(mend.writes.map(({ cell }) => cell).join()) ?? everywhere;
      const cells = { ...written, sheet };
      this.undos.set(key, { ...undo, cells });
      const about = finding.about === "" ? "" : `, ${finding.about}`;
      const words = `${mend.label}${about} (${placeOf(finding)})`;
      this.set({
        applied: [...this.state.applied, { key, words }].slice(-mostApplied),
        message: `Done: ${words}.`,
      });
      this.edits.add(cells);
    });
  }

  /** Takes back one mend, the latest where no key is given. */
  undo(key: string | undefined = this.state.applied.at(-1)?.key): Promise<void> {
    const undoable = this.undos.get(key ?? "");
    const applied = this.state.applied.find((entry) => entry.key === key);
    if (!undoable || !applied) return Promise.resolve();
    return this.queue("Writing", async () => {
      await undoable.undo();
      this.undos.delete(applied.key);
      this.set({
        applied: this.state.applied.filter((entry) => entry !== applied),
        message: `Taken back: ${applied.words}.`,
      });
      this.edits.add(undoable.cells);
    });
  }

  /** Keeps in the workbook that a finding is taken as it is, with the reason and who says so. */
  accept(finding: Finding, reason: string, initials: string): Promise<void> {
    return this.queue("Writing", async () => {
      const { reading } = this;
      if (!reading) return;
      const { fingerprintOf } = await import("../../job/engine");
      const fingerprint = fingerprintOf(reading.file, finding);
      const acceptance = { finding, fingerprint, reason, initials, date: reading.today };
      await this.host.accept(acceptance);
      this.set({ initials });
      await this.judgeAgain(`Accepted: ${placeOf(finding)}.`);
    });
  }

  /** Takes an acceptance back: the finding is open again. */
  withdraw(finding: Finding): Promise<void> {
    return this.queue("Writing", async () => {
      if (!this.reading) return;
      await this.host.withdraw(finding);
      await this.judgeAgain(`Open again: ${placeOf(finding)}.`);
    });
  }

  /** Reads what we have written ourselves, and checks with it. */
  private async judgeAgain(message: string): Promise<void> {
    this.reading = await this.host.read();
    await this.judge(() => message);
  }

  /** Marks the cells of the findings on the sheets, or takes the marks away. */
  setMarks(on: boolean): Promise<void> {
    return this.queue("Writing", async () => {
      const findings = this.state.check?.findings.filter(isOpen) ?? [];
      if (!on) await this.host.clearMarks();
      const message = on
        ? `Marked ${count(await this.host.mark(findings), "cell")}.`
        : "Marks taken away.";
      this.set({ marks: on, message });
    });
  }

  writeFindings(): Promise<void> {
    return this.queue("Writing", async () => {
      const { check } = this.state;
      if (!check) return;
      const sheet = await this.host.writeFindings(check);
      this.ownSheets.add(sheet);
      this.set({ message: `Wrote ${count(check.findings.length, "finding")} to sheet ${sheet}.` });
    });
  }

  /** Keeps the choices in the workbook and checks with them. */
  async saveFit(choices: readonly FitChoice[]): Promise<void> {
    await this.queue("Writing", () => this.host.saveFit(choices));
    if (this.state.problem === "") await this.check();
  }

  async addJobSheets(start: JobStart): Promise<void> {
    let message = "";
    await this.queue("Writing", async () => {
      const notes: string[] = [];
      const added = await this.host.addJobSheets(start, (note) => notes.push(note));
      message = [
        `Added ${added.join(", ")}. Type the dwellings, plan a box, then type the fans.`,
        ...notes,
      ].join(" ");
      this.set({ message });
    });
    if (this.state.problem !== "") return;
    this.toSheet();
    if (!this.reading) await this.check();
    if (this.state.problem === "") this.set({ message });
  }

  async writeOpenings(plan: PlannedBox): Promise<void> {
    await this.queue("Writing", async () => {
      await this.host.writeOpenings(plan);
      this.set({ message: `Wrote ${plan.box} with ${count(plan.openings.length, "opening")}.` });
    });
    this.toSheet();
  }

  /** Whether the workbook can be had as a file. */
  get givesFile(): boolean {
    return this.host.givesFile();
  }

  /** Does a piece of work that stands in a file of its own, after those before it. */
  further(busy: SessionState["busy"], piece: (held: Held) => Promise<void>): Promise<void> {
    const set: Held["set"] = (change) => this.set(change);
    const own: Held["own"] = (sheet) => this.ownSheets.add(sheet);
    return this.queue(busy, () => piece({ host: this.host, reading: this.reading, set, own }));
  }

  async insertFormula(formula: string): Promise<void> {
    await this.queue("Writing", async () => {
      const cell = await this.host.insertFormula(formula);
      this.set({ message: `Inserted into ${cell}.` });
    });
    this.toSheet();
  }
}
