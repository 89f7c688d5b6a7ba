import { type Desk, messageOf } from "../desk";
import type { Files } from "../files/files";
import type { WorkbookHost } from "../host";
import { allKept, forget, type KeptJob, keep } from "./kept";
import { Tab } from "./tabs";

/** Shortest time between two writes, in ms; and the part of the time that writing may take. */
const shortest = 500;
const share = 0.1;
/** So many cells take long to write: they are kept once nothing was changed for so long, at the latest after this, ms. */
const manyCells = 50_000;
const restTime = 3_000;
const latest = 20_000;

/** Keeps the unsaved job in the browser's storage, and offers what other tabs left there. */
export class Keeper {
  private readonly tab = new Tab();
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** When the first change was made that is not kept yet. */
  private waiting = 0;
  private pause = shortest;
  private changes = 0;
  private since = 0;
  private isRefused = false;
  private last: Promise<void> = Promise.resolve();

  constructor(
    private readonly host: WorkbookHost,
    private readonly desk: Desk,
    private readonly files: Files,
  ) {
    host.onChange(({ kind }) => {
      if (kind === "opened") this.begin();
      else this.changed(kind === "cells" ? 1 : 0);
    });
    desk.subscribe((topic) => {
      if (topic === "edit" && desk.edit) this.changed(0);
    });
    files.onSaved(() => this.settle());
    addEventListener("pagehide", () => this.flush());
    document.addEventListener("visibilitychange", () => this.flush());
    this.begin();
  }

  /** Offers each job that was left unsaved; `leaveFor` sees to the open one first. */
  async offer(leaveFor: (action: () => void) => void): Promise<void> {
    await this.attempt(async () => {
      const isLive = await this.tab.livesElsewhere();
      const left = (await allKept()).filter(({ id }) => id !== this.tab.id && !isLive(id));
      for (const job of left) this.offerOne(job, leaveFor);
    });
  }

  private offerOne(job: KeptJob, leaveFor: (action: () => void) => void): void {
    const { messages } = this.desk;
    const message = messages.add("info", `${job.fileName}, ${extentOf(job)}, not saved.`, [
      { label: "Open it again", run: () => leaveFor(() => this.takeUp(job, message)) },
      {
        label: "Leave it",
        run: () => {
          messages.dismiss(message);
          void this.attempt(() => forget(job.id));
        },
      },
    ]);
  }

  private takeUp(job: KeptJob, message: number): void {
    const { desk } = this;
    desk.attempt(() => {
      this.files.takeUp(job);
      desk.messages.dismiss(message);
      this.changes = job.changes;
      this.since = job.since;
      if (job.typing) {
        const { sheet, row, col, text } = job.typing;
        desk.attempt(() => desk.book.userEnters(sheet, row, col, text));
      }
      this.flush();
      void this.attempt(() => this.last.then(() => (this.isRefused ? undefined : forget(job.id))));
    });
  }

  /** Another job is open: what was kept of the one before was saved or let go. */
  private begin(): void {
    this.settle();
    const { fileName } = this.host;
    void this.attempt(async () => {
      if (await this.tab.opens(fileName))
        this.desk.messages.add(
          "info",
          `A ${fileName} is open in another tab too. Changes made in one do not show in the other.`,
        );
    });
  }

  private settle(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.changes = 0;
    this.since = 0;
    this.queue(() => forget(this.tab.id));
  }

  private changed(count: number): void {
    this.changes += count;
    this.since ||= Date.now();
    if (this.timer === undefined) this.waiting = performance.now();
    else if (!this.isLong || performance.now() - this.waiting > latest) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.flush(), this.isLong ? restTime : this.pause);
  }

  private get isLong(): boolean {
    const cells = this.host.sheets.map(({ rowCount, colCount }) => rowCount * colCount);
    return Math.max(...cells) > manyCells;
  }

  private flush(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    const { host, desk, changes } = this;
    const typing = desk.edit && { ...desk.edit };
    if (!host.isDirty && !typing) return;
    const since = this.since || Date.now();
    const start = performance.now();
    let bytes: Uint8Array;
    try {
      bytes = host.bytes();
    } catch (thrown) {
      this.refused(thrown);
      return;
    }
    this.pause = Math.max(shortest, (performance.now() - start) / share);
    const { fileName } = host;
    const file = this.files.opened;
    this.queue(() => keep({ id: this.tab.id, fileName, bytes, changes, since, typing, file }));
  }

  /** One write after the other, so that the last one stands. */
  private queue(write: () => Promise<void>): void {
    this.last = this.last.then(() => this.attempt(write));
  }

  private async attempt(action: () => Promise<void> | undefined): Promise<void> {
    try {
      await action();
    } catch (thrown) {
      this.refused(thrown);
    }
  }

  private refused(thrown: unknown): void {
    if (this.isRefused) return;
    this.isRefused = true;
    const reason = thrown instanceof Error ? messageOf(thrown) : "it refused";
    this.desk.messages.add(
      "error",
      `What is typed here cannot be kept in the browser's storage (${reason}): save a copy before you close the tab.`,
    );
  }
}

/** "12 changes from 14:02", with the day where it was another. */
function extentOf({ changes, since }: KeptJob): string {
  const at = new Date(since);
  const isToday = at.toDateString() === new Date().toDateString();
  const time = at.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const when = isToday ? time : `${at.toLocaleDateString()} ${time}`;
  const count = changes === 1 ? "1 change" : `${changes || "some"} changes`;
  return `${count} from ${when}`;
}
