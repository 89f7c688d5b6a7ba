import { describe, expect, it } from "vitest";
import metadata from "../../functions/functions.json";
import { checkJob } from "../../src/job";
import { announceChange, announceCheck } from "../../src/pane/model/announce";
import { cautionsLeft } from "../../src/pane/model/cautions";
import { callText, readFunctionList, stillNeeded } from "../../src/pane/model/function-list";
import { isWaiting, rowsToRead } from "../../src/pane/model/rows-to-read";
import { pickTheme } from "../../src/pane/model/theme";
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

describe("what is read again after an edit", () => {
  const { job } = check;
  const edit = (sheet: string, firstRow: number, lastRow = firstRow) => ({
    sheet,
    firstRow,
    lastRow,
  });

  it("is the edited rows, joined, where no other sheet looks at them", () => {
    expect(rowsToRead(job, [edit("Fans", 1), edit("Fans", 4)])).toEqual([edit("Fans", 1, 4)]);
  });

  it("is the whole workbook after an edit of a heading, a setting or an unknown sheet", () => {
    for (const sheet of [edit("Fans", 0), edit("Job", 1), edit("New", 5)])
      expect(rowsToRead(job, [sheet])).toBe("all");
  });

  it("is nothing after an edit of the Findings sheet", () => {
    expect(rowsToRead(job, [edit("Findings", 3)])).toBe("none");
  });

  it("takes in every sheet whose formulas look at an edited one, at any remove", () => {
    const fans = fanSheet(
      goodFan.map((cell, col) => (col === 6 ? { value: 48, formula: "Boxes!G2" } : cell)),
    );
    const homes = gridOf("Dwellings", [
      ["Dwelling", "Floor area (ft²)", "Bedrooms", "Continuous flow (cfm)"],
      ["Lot 1", 1600, 3, { value: 0, formula: "SUMIFS('Fans'!G:G,'Fans'!A:A,A2)" }],
    ]);
    const linked = checkJob(fileOf(jobSheet, homes, boxSheet, fans), 46000).job;
    expect(rowsToRead(linked, [edit("Boxes", 1)])).toEqual([
      edit("Boxes", 1),
      edit("Fans", 0, 1),
      edit("Dwellings", 0, 1),
    ]);
    expect(rowsToRead(linked, [edit("Dwellings", 1)])).toEqual([edit("Dwellings", 1)]);
  });

  it("is waited for while a function among the rows has not answered", () => {
    const busy = fileOf(gridOf("Fans", [["Flow"], [{ error: "#BUSY!" }], [3]]));
    expect(isWaiting(busy, [edit("Fans", 0, 1)])).toBe(true);
    expect(isWaiting(busy, [edit("Fans", 2)])).toBe(false);
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
  const list = readFunctionList(metadata);
  const rate = list.find((entry) => entry.name === "FANROW.ROOM_RATE");
  if (!rate) throw new Error("no ROOM_RATE in the metadata");

  it("explains every argument of every function", () => {
    expect(list.length).toBeGreaterThan(10);
    for (const entry of list)
      for (const argument of entry.arguments)
        expect(argument.description, `${entry.name} ${argument.name}`).not.toBe("");
  });

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

  it("refuses a list that is none", () => {
    expect(() => readFunctionList({})).toThrow(/not readable/);
  });
});

describe("the cautions", () => {
  it("come until they have been put away", () => {
    expect(cautionsLeft([]).length).toBeGreaterThan(cautionsLeft(["ladder"]).length);
    expect(cautionsLeft(["ladder"]).map(({ key }) => key)).not.toContain("ladder");
  });
});
