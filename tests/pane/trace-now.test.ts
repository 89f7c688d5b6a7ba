import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { WorkbookHost } from "../../src/desk/host";
import { type TraceView, traceView } from "../../src/pane/model/trace-view";
import { spotAt } from "../../src/pane/model/trace-walk";
import { excelHost } from "../../src/pane/session/excel-host";
import { Session } from "../../src/pane/session/session";
import { settled } from "../desk-host/desk";
import { demoHost } from "../excel/hosts";
import { HandClock } from "./fake-host";

// Over the real client library: what the workbook says of a cell between two checks.
let host: WorkbookHost;
let session: Session;
const flow = { sheet: "Fans", row: 1, col: 15 };

async function view(): Promise<TraceView> {
  const job = session.state.check?.job;
  if (!job) throw new Error("nothing was checked");
  const now = await session.now(flow);
  if (!now) throw new Error("the workbook did not say");
  return traceView(job, flow, now) as TraceView;
}

beforeEach(async () => {
  host = demoHost();
  session = new Session(excelHost, new HandClock());
  await session.open();
  await session.check();
});

// A session left open would answer the edits of the tests after it.
afterEach(() => session.close());

describe("what a cell of the open workbook holds at this moment", () => {
  it("is what was read, as long as nobody has typed, with the text that the sheet shows", async () => {
    expect(await view()).toMatchObject({
      isChanged: false,
      stored: expect.stringMatching(/shown as 97\.4\.$/),
    });
  });

  it("has changed where a reading behind it was typed since, and no check came yet", async () => {
    for (const col of [10, 11, 12]) host.userEnters("Fans", 1, col, "2");
    await settled();
    const changed = await view();
    // 1.07 · 42 · √2, by hand.
    expect(changed).toMatchObject({ isChanged: true, value: "63.5548 cfm" });
    await session.check();
    expect(await view()).toMatchObject({ isChanged: false, value: "63.5548 cfm" });
  });

  it("is not known while a cell is being edited, which is no problem of the session's", async () => {
    host.beginEdit();
    expect(await session.now(flow)).toBeUndefined();
    expect(session.state.problem).toBe("");
    host.endEdit();
    expect(await session.now(flow)).toMatchObject({ text: "97.4" });
  });

  it("is not known of a sheet that is gone", async () => {
    expect(await session.now({ ...flow, sheet: "Letters" })).toBeUndefined();
  });

  it("is asked for by the address of the selection", async () => {
    host.select("Fans", "P2");
    await settled();
    const { selection } = session.state;
    expect(selection && spotAt(selection.sheet, selection.cell)).toEqual(flow);
  });
});
