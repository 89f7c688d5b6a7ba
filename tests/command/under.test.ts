import { describe, expect, it } from "vitest";
import { run } from "../../src/command";

async function call(...args: string[]) {
  let [out, notes] = ["", ""];
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    note: (text) => {
      notes += text;
    },
    width: 110,
    isTerminal: false,
    colour: false,
    today: new Date(2026, 10, 25),
  });
  return { code, out, notes };
}

const demo = "workbooks/alder-terrace.xlsx";

describe("--under", () => {
  it("tells rates up and down and the verdicts that turn, and leaves the exit status at 0", async () => {
    const { code, out } = await call("--under", "oregon", demo);
    expect(code).toBe(0);
    expect(out).toContain("IRC-2021 → OR-2023");
    expect(out).toMatch(/up {5}bathroom on demand \(38\): 50 → 80 cfm \(listed\)/);
    expect(out).toMatch(/turn short \(24\): Lot 01, B2; /);
    expect(out).toMatch(/same {3}bathroom continuous/);
  });

  it("prints the same as JSON", async () => {
    const { out } = await call("--under", "62.2-2022", "--json", demo);
    const told = JSON.parse(out);
    expect(told).toMatchObject({ format: 1, edition: "IRC-2021", other: "62.2-2022" });
    expect(told.rows.at(-1)).toMatchObject({ what: "whole dwelling", change: "up" });
  });

  it("says which editions there are where it knows none of the name, and takes one file", async () => {
    expect(await call("--under", "IRC-1999", demo)).toMatchObject({
      code: 2,
      notes: expect.stringContaining("use one of IRC-2012, IRC-2015"),
    });
    expect((await call("--under", "OR-2023", demo, demo)).code).toBe(2);
    expect((await call("--under", "OR-2023", "--csv", demo)).code).toBe(2);
  });
});
