import { beforeEach, describe, expect, it } from "vitest";
import { followCommands } from "../../src/pane/session/commands";
import { Session } from "../../src/pane/session/session";
import { FakeHost, HandClock } from "./fake-host";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, jobSheet } from "./job-file";

const fan = (pressure: number | null) =>
  goodFan.map((cell, col) => (col === 7 || col === 8 ? pressure : cell));
const file = (pressure: number | null) =>
  fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(fan(pressure)));

let host: FakeHost;
let clock: HandClock;
let session: Session;

/** Lets the clock run and everything in hand come to its end. */
async function settle(): Promise<void> {
  clock.turn();
  await session.select("Fans", "A1");
}

const kinds = () => session.state.check?.findings.map(({ kind }) => kind);
const reversed = () => {
  const found = session.state.check?.findings.find(({ kind }) => kind === "pressure-negative");
  if (!found) throw new Error("no reversed pressure was found");
  return found;
};

beforeEach(() => {
  host = new FakeHost(file(-4));
  clock = new HandClock();
  session = new Session(host, clock);
});

describe("a session", () => {
  it("reads, checks and tells what it came to", async () => {
    await session.check();
    expect(kinds()).toContain("pressure-negative");
    expect(session.state.message).toMatch(/^Checked 1 fan in 1 dwelling: 1 wrong/);
    expect(session.state.notes).toEqual(["Fans is filtered."]);
    expect(session.state.busy).toBe("");
  });

  it("shows progress while it reads and none afterwards", async () => {
    const seen: unknown[] = [];
    session.subscribe(() => seen.push(session.state.progress));
    await session.check();
    expect(seen).toContainEqual({ done: 1, total: 1 });
    expect(session.state.progress).toBeUndefined();
  });

  it("reads the workbook again after edits, once for a quick series", async () => {
    await session.check();
    host.file = file(2);
    host.onEdit?.("Fans");
    host.onEdit?.("Fans");
    await settle();
    expect(host.rereads).toBe(1);
    expect(kinds()).not.toContain("pressure-negative");
    expect(session.state.message).toMatch(/^1 cleared/);
  });

  it("reads again after an edit whose reading failed, but not for ever", async () => {
    await session.check();
    host.refuses = "read again";
    host.onEdit?.("Fans");
    await settle();
    expect([kinds()?.includes("pressure-negative"), host.rereads]).toEqual([true, 1]);
    host.file = file(2);
    host.refuses = "";
    await settle();
    expect(kinds()).not.toContain("pressure-negative");
    host.refuses = "read again";
    host.onEdit?.("Fans");
    for (let times = 0; times < 20; times++) await settle();
    expect(host.rereads).toBeLessThan(12);
  });

  it("keeps its last word after an edit that changed no finding", async () => {
    await session.check();
    const { message } = session.state;
    host.onEdit?.("Fans");
    await settle();
    expect(host.rereads).toBe(1);
    expect(session.state.message).toBe(message);
  });

  it("applies a mend, reads again, and takes it back", async () => {
    await session.check();
    await session.apply(reversed());
    expect(host.asked).toContain("apply Turn the sign");
    expect(session.state.applied.map(({ words }) => words)).toEqual([
      "Turn the sign, Lot 1, B1 (Fans!H2)",
    ]);
    await settle();
    expect(host.rereads).toBe(1);
    await session.undo();
    expect(host.asked).toContain("undo Turn the sign");
    expect(session.state.applied).toEqual([]);
    expect(session.state.message).toMatch(/^Taken back: Turn the sign/);
  });

  it("takes back an earlier mend by its key and leaves the later one", async () => {
    await session.check();
    await session.apply(reversed());
    await session.apply(reversed());
    const [first, second] = session.state.applied;
    await session.undo(first?.key);
    expect(session.state.applied).toEqual([second]);
  });

  it("says why a thing was refused, keeps the rest, and forgets it with the next", async () => {
    await session.check();
    host.refuses = "apply Turn the sign";
    await session.apply(reversed());
    expect(session.state.problem).toBe("apply Turn the sign is not allowed");
    expect(session.state.applied).toEqual([]);
    expect(session.state.check).toBeDefined();
    await session.select("Fans", "H2");
    expect(session.state.problem).toBe("");
  });

  it("tells a fault of ours as such, with what to report", async () => {
    host.breaks = "read";
    await session.check();
    expect(session.state.problem).toMatch(/^This is a fault of Fanrow.* report "x is undefined"/);
  });

  it("can be asked again after a reading that failed", async () => {
    host.refuses = "read";
    await session.check();
    expect(session.state.problem).toBe("read is not allowed");
    expect(session.state.busy).toBe("");
    host.refuses = "";
    await session.check();
    expect(session.state.check).toBeDefined();
    expect(host.onEdit).toBeDefined();
  });

  it("renews the marks with every check while they are on", async () => {
    await session.check();
    await session.setMarks(true);
    expect(session.state.message).toMatch(/^Marked \d+ cell/);
    await session.check();
    expect(host.asked.filter((what) => what === "mark")).toHaveLength(2);
    await session.setMarks(false);
    await session.check();
    expect(host.asked.filter((what) => what === "mark")).toHaveLength(2);
  });

  it("saves a fit and checks with it, but does not check where it could not be saved", async () => {
    const choices = [{ sheet: "Fans", heading: "Tester", field: "" }];
    await session.saveFit(choices);
    expect(host.choices).toEqual(choices);
    expect(host.asked).toEqual(["save fit", "read"]);
    host.refuses = "save fit";
    await session.saveFit(choices);
    expect(host.asked.filter((what) => what === "read")).toHaveLength(1);
    expect(session.state.problem).toBe("save fit is not allowed");
  });

  it("adds the sheets of a job with the features that were chosen", async () => {
    await session.addJobSheets({ system: "si", features: ["spread", "existing"] });
    expect(host.asked).toEqual(["add sheets si spread existing", "read"]);
    expect(session.state.check).toBeDefined();
    await session.addJobSheets({ system: "ip" });
    expect(host.asked.at(-1)).toBe("add sheets ip");
    expect(session.state.message).toMatch(/^Added Job, Fans\./);
  });

  it("does not take its own Findings sheet for an edit, whatever its name", async () => {
    await session.check();
    await session.writeFindings();
    expect(session.state.message).toMatch(/sheet Findings 2\.$/);
    host.onEdit?.("Findings 2");
    await settle();
    expect(host.asked.filter((what) => /read/.test(what))).toEqual(["read"]);
  });

  it("reads again while a worksheet function has not answered, but not for ever", async () => {
    await session.check();
    const waiting = fan(2).map((cell, col) => (col === 6 ? { error: "#BUSY!" } : cell));
    host.file = fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(waiting));
    host.onEdit?.("Fans");
    for (let times = 0; times < 20; times++) await settle();
    expect(host.rereads).toBeGreaterThan(2);
    expect(host.rereads).toBeLessThan(10);
  });

  it("follows the selection once open, and nothing any more once closed", async () => {
    await session.open();
    expect(session.state.selection).toMatchObject({ row: 1 });
    host.onMove?.({ sheet: "Fans", row: 7, cell: "B8" });
    expect(session.state.selection).toMatchObject({ row: 7 });
    await session.check();
    session.close();
    expect([host.onMove, host.onEdit]).toEqual([undefined, undefined]);
  });
});

describe("commands from the ribbon and the cell menu", () => {
  it("check the workbook and show a screen, until they are no longer followed", async () => {
    const events = new EventTarget();
    const stop = followCommands(events, session);
    events.dispatchEvent(new CustomEvent("fanrow:show", { detail: { screen: "rates" } }));
    expect(session.state.screen).toBe("rates");
    events.dispatchEvent(new CustomEvent("fanrow:show", { detail: { screen: "nowhere" } }));
    events.dispatchEvent(new CustomEvent("fanrow:show"));
    expect(session.state.screen).toBe("rates");
    events.dispatchEvent(new CustomEvent("fanrow:check"));
    await settle();
    expect(session.state.screen).toBe("check");
    expect(kinds()).toContain("pressure-negative");
    stop();
    events.dispatchEvent(new CustomEvent("fanrow:show", { detail: { screen: "fit" } }));
    expect(session.state.screen).toBe("check");
  });
});
