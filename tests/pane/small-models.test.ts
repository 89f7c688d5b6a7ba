import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import type { CellValue } from "../../src/cells";
import { checkJob } from "../../src/job";
import { announceChange, announceCheck } from "../../src/pane/model/announce";
import { cautionsLeft } from "../../src/pane/model/cautions";
import { callText, stillNeeded } from "../../src/pane/model/function-list";
import { pickTheme } from "../../src/pane/model/theme";
import { isWaiting } from "../../src/pane/model/waiting";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, gridOf, jobSheet } from "./job-file";

const unread = goodFan.map((cell, col) => (col === 7 || col === 8 ? null : cell));
const file = fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(unread));
const check = checkJob(file, 46000);

describe("what a check is announced as", () => {
  it("counts fans, dwellings and findings", () => {
    expect(announceCheck(check)).toMatch(/^Checked 1 fan in 1 dwelling: /);
  });

  it("stays silent when an edit changed no finding, and counts what came and went otherwise", () => {
    expect(announceChange(check, check)).toBe("");
    expect(check.findings.length).toBeGreaterThan(0);
    const without = { ...check, findings: check.findings.slice(1) };
    expect(announceChange(check, without)).toMatch(/^1 cleared\. Now /);
    expect(announceChange(without, check)).toMatch(/^1 new\. Now /);
  });
});

describe("a workbook read after an edit", () => {
  it("is waited for while a function in it has not answered", () => {
    const holding = (value: CellValue) => fileOf(gridOf("Fans", [["Flow"], [value], [3]]));
    expect(isWaiting(holding({ error: "#BUSY!" }))).toBe(true);
    expect(isWaiting(holding({ error: "#N/A" }))).toBe(false);
  });
});

describe("the theme", () => {
  const browser = { forcedColours: false, moreContrast: false, dark: false };

  it("is high contrast wherever that is asked for", () => {
    expect(pickTheme({ isDarkTheme: false }, { ...browser, forcedColours: true })).toBe("contrast");
    expect(pickTheme(undefined, { ...browser, moreContrast: true })).toBe("contrast");
  });

  it("is the host's before the browser's, by its flag or by its background", () => {
    expect(pickTheme({ isDarkTheme: true }, browser)).toBe("dark");
    expect(pickTheme({ bodyBackgroundColor: "#262626" }, browser)).toBe("dark");
    expect(pickTheme({ bodyBackgroundColor: "#F3F2F1" }, { ...browser, dark: true })).toBe("light");
    expect(pickTheme({ bodyBackgroundColor: "Window" }, { ...browser, dark: true })).toBe("dark");
  });
});

describe("the insertion of a function", () => {
  const rate = worksheetFunctions.find((entry) => entry.id === "ROOM_RATE");
  if (!rate) throw new Error("no ROOM_RATE in the metadata");

  it("keeps references and numbers as they are and puts words in quotes", () => {
    expect(callText(rate, ["Job!$B$3", "D3", "on demand", "960"])).toBe(
      'FANROW.ROOM_RATE(Job!$B$3,D3,"on demand",960)',
    );
    expect(callText(rate, ["IRC-2021", "Fans!D2:D40", 'a "b"'])).toBe(
      'FANROW.ROOM_RATE("IRC-2021",Fans!D2:D40,"a ""b""")',
    );
    expect(callText(rate, ["'My job'!B3", "A+C", '"done"'])).toBe(
      'FANROW.ROOM_RATE(\'My job\'!B3,"A+C","done")',
    );
  });

  it("leaves out blank arguments at the end and keeps the place of those between", () => {
    expect(callText(rate, ["B3", "D3", "E3", "", "si"])).toBe('FANROW.ROOM_RATE(B3,D3,E3,,"si")');
    expect(callText(rate, ["B3", "", "", "", ""])).toBe("FANROW.ROOM_RATE(B3)");
  });

  it("names the arguments that are still needed", () => {
    expect(stillNeeded(rate, ["B3", " "])).toEqual(["room", "duty"]);
  });
});

describe("the cautions", () => {
  it("come until they have been put away", () => {
    expect(cautionsLeft([]).length).toBeGreaterThan(cautionsLeft(["ladder"]).length);
    expect(cautionsLeft(["ladder"]).map(({ key }) => key)).not.toContain("ladder");
  });
});
