import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { cellName, isSameValue } from "../../src/cells";
import type { WorkbookHost } from "../../src/desk/host";
import { excelHost } from "../../src/pane/session/excel-host";
import { Session } from "../../src/pane/session/session";
import { settled } from "../desk-host/desk";
import { answerKey } from "../excel/demo";
import { demoHost, typedAt } from "../excel/hosts";
import { HandClock } from "./fake-host";

// The pane's own session over the real client library and the host: what the browser tests click.
let host: WorkbookHost;
let clock: HandClock;
let session: Session;

const places = () =>
  (session.state.check?.findings ?? []).map(({ sheet, cell }) => `${sheet}!${cell}`).sort();
const at = (place: string) => {
  const found = session.state.check?.findings.find(
    ({ sheet, cell }) => `${sheet}!${cell}` === place,
  );
  if (!found) throw new Error(`nothing was found at ${place}`);
  return found;
};

/** Lets events arrive, the pause after an edit pass, and the work that follows end. */
async function settle(): Promise<void> {
  await settled();
  clock.turn();
  await session.select("Fans", "A1");
}

beforeEach(async () => {
  host = demoHost();
  clock = new HandClock();
  session = new Session(excelHost, clock);
  await session.open();
  await session.check();
});

afterEach(() => session.close());

describe("the pane's session over the real client library", () => {
  it("finds every planted fault and nothing else", () => {
    expect(session.state.problem).toBe("");
    expect(places()).toEqual(
      answerKey()
        .map(({ sheet, cell }) => `${sheet}!${cell}`)
        .sort(),
    );
  });

  it("applies a mend, sees the row turn sound, and takes it back", async () => {
    await session.apply(at("Fans!K9"));
    await settle();
    expect(typedAt(host, "Fans", "K9")).toBe("4.1");
    expect(places()).not.toContain("Fans!K9");
    await session.undo();
    await settle();
    expect(typedAt(host, "Fans", "K9")).toBe("-4.1");
    expect(places()).toContain("Fans!K9");
  });

  it("writes no mend over what was typed since, whether a check came in between or not", async () => {
    const stale = at("Fans!K9");
    host.userEnters("Fans", 8, 10, "5");
    await session.apply(stale);
    expect(session.state.problem).toContain("K9 on Fans was changed since the check");
    await settle();
    await session.apply(stale);
    expect(session.state.problem).toContain("Fans!K9 was changed since");
    expect(typedAt(host, "Fans", "K9")).toBe("5");
    // Another edit leaves the findings as they are, and their mends with them.
    const kept = at("Fans!R70");
    host.userEnters("Fans", 8, 10, "6");
    await settle();
    await session.apply(kept);
    expect(session.state.problem).toBe("");
    expect(typedAt(host, "Fans", "R70")).toMatch(/^=FANROW\.ROOM_RATE\(/);
  });

  it("reads the workbook in at most 5 round trips after 300 edits in one burst", async () => {
    const before = host.requestCount;
    for (let row = 0; row < 300; row++) host.userEnters("Fans", row + 120, 20, "seen");
    // All of the burst has been told before the pause ends, however busy the machine.
    await settled();
    const lastRead = () => {
      clock.turn();
      const { sheets = [] } = session.state.check?.job.file ?? {};
      return sheets.find(({ name }) => name === "Fans")?.value(419, 20);
    };
    await expect.poll(lastRead, { timeout: 20_000 }).toBe("seen");
    expect(host.requestCount - before).toBeLessThanOrEqual(5);
  });

  it("restores a formula that was typed over", async () => {
    await session.apply(at("Fans!R70"));
    await settle();
    expect(typedAt(host, "Fans", "R70")).toMatch(/^=FANROW\.ROOM_RATE\(/);
    expect(places()).not.toContain("Fans!R70");
  });

  it("checks a reading again as a user types it", async () => {
    for (const col of [10, 11, 12]) host.userEnters("Fans", 1, col, "9.4");
    // What follows from the edits may be told while they are checked.
    await expect
      .poll(async () => {
        await settle();
        return at("Fans!K2").kind;
      })
      .toBe("pressure-above");
  });

  it("sees what edits in one pause do to other rows and sheets", async () => {
    host.userEnters("Fans", 60, 15, "=P3");
    await settle();
    host.userEnters("Boxes", 2, 6, "1");
    host.userEnters("Fans", 2, 15, "7");
    await expect
      .poll(async () => {
        await settle();
        return at("Fans!P61").what;
      })
      .toMatch(/^Flow \(cfm\) is 7 but/);
    for (const grid of session.state.check?.job.file.sheets ?? [])
      for (let row = 0; row < grid.rowCount; row++)
        for (let col = 0; col < grid.colCount; col++) {
          const [read, held] = [grid.value(row, col), host.value(grid.name, row, col)];
          expect(isSameValue(read, held), `${grid.name}!${cellName(row, col)}`).toBe(true);
        }
  });

  it("writes the findings and keeps a fit in the workbook", async () => {
    await session.writeFindings();
    await session.saveFit([{ sheet: "Fans", heading: "Note", field: "" }]);
    expect(session.state.problem).toBe("");
    expect(host.sheets.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Findings", "Fit"]),
    );
    expect(session.state.check?.job.fit.sheets.fans?.[0]?.columns.has("note")).toBe(false);
  });

  it("says in plain words what the host refuses", async () => {
    host.beginEdit();
    await session.apply(at("Fans!K9"));
    expect(session.state.problem).toMatch(/editing/);
    host.endEdit();
  });
});
