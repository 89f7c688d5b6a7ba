import { describe, expect, it } from "vitest";
import { leastTested, samplings } from "../../src/editions";
import { checkJob, provenanceOf } from "../../src/job";
import { boxes, fanHeadings, grid, jobFile, soundFan, today } from "./grids";

const names = ["Lot 1", "Lot 2", "Lot 3", "Lot 4", "Lot 5", "Lot 6", "Lot 7", "Lot 8"];
const dwellings = grid("Dwellings", [
  ["Dwelling", "Floor area (ft²)", "Bedrooms"],
  ...names.map((name) => [name, 1400, 2]),
]);

/** Eight dwellings of which the first alone is tested, with this setting and these cells of its fan. */
function check(
  setting: string,
  value: string | number,
  cells: Readonly<Record<string, number>> = {},
) {
  const settings = grid("Job", [
    ["Setting", "Value"],
    ["Edition", "IRC-2021"],
    ["Units", "ip"],
    [setting, value],
  ]);
  const headings = [...new Set([...fanHeadings, ...Object.keys(cells)])];
  const row: Readonly<Record<string, unknown>> = { ...soundFan, ...cells };
  const fans = grid("Fans", [headings, headings.map((key) => (row[key] ?? null) as string)]);
  return checkJob(jobFile(settings, dwellings, boxes, fans), today);
}
const whatOf = (kind: string, ...of: Parameters<typeof check>) =>
  check(...of).findings.flatMap((finding) => (finding.kind === kind ? [finding.what] : []));

describe("a sample of a group of dwellings", () => {
  const rule = (id: string) => samplings.find((each) => each.id === id) as (typeof samplings)[0];

  // RESNET standards, 607.1 (read): of 100 dwellings 10 come first, and 18 are 20 % of the other 90.
  it("is a fifth of the dwellings beyond the first ten, rounded up, and all below twelve", () => {
    const resnet = rule("RESNET chapter 6");
    expect([100, 12, 11].map((group) => leastTested(resnet, group))).toEqual([28, 11, 11]);
  });

  // From memory: groups of seven at most.
  it("is one of each seven in California", () => {
    expect([7, 8, 14].map((group) => leastTested(rule("California RA2"), group))).toEqual([
      1, 2, 2,
    ]);
  });

  it("is told once where it is too small, and dwellings without a fan no more", () => {
    expect(whatOf("sample-small", "Sampling", "California RA2")).toEqual([
      expect.stringContaining("1 of 8 dwellings are tested; 2 are asked for"),
    ]);
    expect(whatOf("dwelling-empty", "Sampling", "California RA2")).toEqual([]);
    expect(whatOf("dwelling-empty", "Job name", "Row")).toHaveLength(7);
    expect(whatOf("sample-small", "Sampling", "weatherization monitoring")).toEqual([]);
  });

  it("says something of the others where one of it falls short", () => {
    const weak = { "Box pressure (Pa)": 2.5, "Flow (cfm)": 1.07 * 24 * Math.sqrt(2.5) };
    expect(whatOf("sample-failed", "Sampling", "California RA2", weak)).toEqual([
      "of 1 dwellings tested 1 falls short: Lot 1",
    ]);
  });

  it("goes by a rule that is known", () => {
    expect(whatOf("setting-wrong", "Sampling", "one in nine")).toHaveLength(1);
  });
});

describe("a reviewer's second test", () => {
  // Bands from memory: agreement below 10 %, then grades 1, 2 and 3 up to 15 %, 25 % and beyond.
  const flow = soundFan["Flow (cfm)"] as number;
  it.each([
    [1.09, undefined],
    [0.91, undefined],
    [1.15, "1"],
    [1.2, "2"],
    [0.7, "3"],
  ])("%d times the reviewer's flow: band %s", (ratio, grade) => {
    const [what] = whatOf("review-apart", "Job name", "Row", {
      "Reviewer's flow (cfm)": flow / ratio,
    });
    expect(what?.match(/band (\d)/)?.[1]).toBe(grade);
  });
});

describe("the day from which an edition is in force", () => {
  // Days are counted from 1899-12-30: 45292 is 2024-01-01, 46500 is 2027-04-23, 42000 is 2014-12-27.
  it("stands with the edition in what the results rest on", () => {
    expect(provenanceOf(check("Edition in force from", 45292).job).inForce).toBe("2024-01-01");
    expect(whatOf("edition-day", "Edition in force from", 45292)).toEqual([]);
  });

  it("is doubted where readings are older, or where the edition is younger", () => {
    expect(whatOf("edition-day", "Edition in force from", 46500)[0]).toContain(
      "1 fan was read before",
    );
    expect(whatOf("edition-day", "Edition in force from", 42000)[0]).toContain(
      "before that edition was printed",
    );
    // Of the IRC's years that are known here 2015 is the latest that was printed by the end of 2014.
    const { findings } = check("Edition in force from", 42000);
    expect(findings.find(({ kind }) => kind === "edition-day")?.effect).toContain("IRC-2015");
  });
});
