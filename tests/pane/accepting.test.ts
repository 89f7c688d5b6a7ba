import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/job";
import { Session } from "../../src/pane/session/session";
import { FakeHost, HandClock } from "./fake-host";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, gridOf, jobSheet } from "./job-file";

/** A fan without a tester, checked. */
async function checked() {
  const host = new FakeHost(
    fileOf(jobSheet, boxSheet, dwellingSheet, fanSheet(goodFan.with(9, null))),
  );
  const session = new Session(host, new HandClock());
  await session.check();
  const finding = session.state.check?.findings.find(({ kind }) => kind === "tester-missing");
  return { host, session, finding: finding as Finding };
}

describe("accepting in the pane", () => {
  it("asks the host to keep the finding with its reason, then reads again and checks", async () => {
    const { host, session, finding } = await checked();
    await session.accept(finding, "read by a trainee", "QT");
    expect(host.asked).toContain(`accept Fans!${finding.cell}: read by a trainee`);
    expect(host.asked.at(-1)).toBe("read again");
    expect(session.state).toMatchObject({
      problem: "",
      message: `Accepted: Fans!${finding.cell}.`,
    });
  });

  it("takes an acceptance back", async () => {
    const { host, session, finding } = await checked();
    await session.withdraw(finding);
    expect(host.asked).toContain(`withdraw Fans!${finding.cell}`);
    expect(session.state.message).toBe(`Open again: Fans!${finding.cell}.`);
  });

  it("tells formulas that depart from those beside them", async () => {
    const rows = Array.from({ length: 6 }, (_, i) => [
      i,
      { formula: `A${i + 1}*${i === 4 ? 3 : 2}`, value: 0 },
    ]);
    const file = fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(goodFan), gridOf("Own", rows));
    const session = new Session(new FakeHost(file), new HandClock());
    await session.check();
    expect(session.state.check?.findings.map(({ kind, cell }) => `${cell} ${kind}`)).toContain(
      "B5 formula-other-constant",
    );
  });
});
