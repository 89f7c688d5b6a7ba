import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";

const folder = mkdtempSync(join(tmpdir(), "fanrow-fit-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(...args: string[]) {
  let text = "";
  const print = (part: string) => {
    text += part;
  };
  const around = { out: print, note: print, width: 120, isTerminal: false, colour: false };
  const code = await run(args, { ...around, today: new Date("2026-11-25T12:00:00Z") });
  return { code, text };
}

/** An invented list as a German firm may keep it: own headings, decimal commas, gauge's own sign. */
function germanList(): string {
  const lines = ["Wohnung;Raum;Betrieb;Blende cm²;Druck Pa;Volumenstrom m³/h;Soll m³/h;Ergebnis"];
  for (let i = 0; i < 14; i++) {
    const pressure = 2 + ((i * 7) % 9) / 2;
    const area = i % 3 === 0 ? 180 : 120;
    // m³/h = 3.6 · 0.0782726 · cm² · √Pa: the trade's 1.07 in these units.
    const flow = 3.6 * 0.0782726 * area * Math.sqrt(pressure);
    const asked = i % 2 === 0 ? 45 : 60;
    const cells = [
      ...[`Whg ${1 + (i >> 1)}`, i % 2 === 0 ? "Bad" : "Küche", "Bedarf", String(area)],
      ...[
        (-pressure).toFixed(1),
        flow.toFixed(1),
        String(asked),
        flow >= asked ? "i.O." : "n.i.O.",
      ],
    ];
    lines.push(cells.join(";").replaceAll(".", ",").replaceAll("i,O,", "i.O."));
  }
  return lines.join("\n");
}

describe("--fit", () => {
  const file = join(folder, "messung.csv");
  writeFileSync(file, germanList());

  it("tells which cells of a firm's own list were taken for what, and why, and no findings", async () => {
    const { code, text } = await call("--fit", file);
    expect(code).toBe(0);
    expect(text).toMatch(/Sheet messung: 14 readings/);
    expect(text).toMatch(/pressure\s+E2:E15\s+Pa/);
    expect(text).toMatch(/flow\s+F2:F15/);
    expect(text).toMatch(/required\s+G2:G15/);
    expect(text).not.toContain("→");
  });

  it("goes with a check that takes the gauge's sign for the firm's habit", async () => {
    const { text } = await call("--json", file);
    const [{ findings, fit }] = JSON.parse(text).files;
    expect(fit[0].habits.sign.value).toBe("box");
    expect(findings.filter((each: { kind: string }) => each.kind === "pressure-negative")).toEqual(
      [],
    );
  });

  it("reads each file with a firm's answers, and says what is wrong with any other file", async () => {
    const firm = join(folder, "firm.json");
    const answers = [
      { Heading: "Soll m³/h" },
      { Field: "Box pressure", Word: "sign", Means: "room" },
    ];
    writeFileSync(firm, JSON.stringify({ fanrow: "answers of a firm, 1", answers }));
    const { text } = await call("--json", "--firm", firm, file);
    const [{ fit }] = JSON.parse(text).files;
    expect(fit[0].habits.sign.value).toBe("room");
    expect(fit[0].roles.required).toBeUndefined();
    const refused = await call("--firm", file, file);
    expect(refused.code).toBe(2);
    expect(refused.text).toMatch(
      /messung\.csv: is no file of a firm's answers: its text is no JSON/,
    );
  });
});

describe("results of a list whose headings are the trade's and ours but for the opening", () => {
  it("are found and listed in the order of the sheet, also where several say the same", async () => {
    const file = join(folder, "short.csv");
    const lines = ["Lot,Fan,Box pressure (Pa),Hole (sq in),Flow (cfm),Required (cfm)"];
    for (let i = 0; i < 12; i++) {
      const pressure = [2, 3, 4][i % 3] as number;
      const flow = (1.07 * 16 * Math.sqrt(pressure)).toFixed(1);
      lines.push(`Lot ${i + 1},Bath,${pressure},16,${flow},50`);
    }
    writeFileSync(file, lines.join("\n"));
    const { text } = await call(file);
    const told = [...text.matchAll(/!E(\d+) .* is short of the required/g)].map(([, row]) =>
      Number(row),
    );
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told).toHaveLength(12);
  });
});
