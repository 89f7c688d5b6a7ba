import { describe, expect, it } from "vitest";
import { type FitChoice, firmFileOf, readFirmFile, readJob } from "../../src/job";
import { grid, jobFile } from "./grids";

const pressures = [4.1, 2.9, 5.3, 3.6, 2.2, 6.1, 4.8, 3.1, 5.7, 2.6, 4.4, 3.9];
const log = (name: string) =>
  grid(name, [
    ["Lot", "Room", "Mode", "Open in2", "Box Pa", "cfm", "By"],
    ...pressures.map((pressure, i) => [
      `Lot ${1 + (i >> 1)}`,
      i % 2 ? "Bath" : "Kitchen",
      i % 3 ? "always" : "pull cord",
      24,
      pressure,
      Math.round(256.8 * Math.sqrt(pressure)) / 10,
      i % 4 ? "Al" : "Bo",
    ]),
  ]);
const answers: FitChoice[] = [
  { sheet: "Log", heading: "By", field: "note" },
  { sheet: "", heading: "", field: "duty", word: "pull cord", means: "on demand" },
];

describe("a firm's answers", () => {
  it("come back from the file as they went, for sheets of any name", () => {
    const text = firmFileOf(answers, new Set());
    expect(JSON.parse(text).fanrow).toBe("answers of a firm, 1");
    expect(readFirmFile(text)).toEqual([{ ...answers[0], sheet: "" }, answers[1]]);
  });

  it("are taken by another workbook, after those that it keeps itself", () => {
    const firm = readFirmFile(firmFileOf(answers, new Set()));
    const { blocks } = readJob({ ...jobFile(log("May")), answers: firm }).firm?.reading ?? {};
    expect(blocks?.[0]?.roles.get("note")?.heading).toBe("By");
    expect(blocks?.[0]?.habits.duties.get("pull cord")).toBe("on demand");
    const own = grid("Fit", [
      ["Sheet", "Heading", "Field", "Word", "Means"],
      ["May", "By", "Tester", null, null],
      [null, null, "Duty", "pull cord", "continuous"],
    ]);
    const kept = readJob({ ...jobFile(log("May"), own), answers: firm }).firm?.reading.blocks[0];
    expect(kept?.roles.get("tester")?.heading).toBe("By");
    expect(kept?.habits.duties.get("pull cord")).toBe("continuous");
  });

  it("tell of a sheet as a whole that it holds no fans", () => {
    const none = readJob({
      ...jobFile(log("May")),
      answers: [{ sheet: "May", heading: "", field: "" }],
    });
    expect(none.fans).toBeUndefined();
    expect(none.noFans).toMatch(/you said that it holds no fans/);
  });

  it("turn the sign of all pressures", () => {
    const sign = { sheet: "", heading: "", field: "pressure", word: "sign", means: "box" };
    const { fans } = readJob({ ...jobFile(log("May")), answers: [sign] });
    expect(fans?.table.number("pressure", 0)).toBe(-4.1);
  });

  it.each([
    ["no JSON", "{", /its text is no JSON/],
    ["another JSON", "[]", /does not begin with/],
    [
      "an empty answer",
      JSON.stringify({ fanrow: "answers of a firm, 1", answers: [{}] }),
      /answer 1/,
    ],
  ])("are refused with the reason where the file is %s", (_, text, why) => {
    expect(() => readFirmFile(text)).toThrow(why);
  });
});
