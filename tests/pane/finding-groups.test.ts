import { describe, expect, it } from "vitest";
import type { Finding, FindingKind, Severity } from "../../src/job";
import {
  everything,
  filterFindings,
  firstOf,
  groupFindings,
} from "../../src/pane/model/finding-groups";

const finding = (
  kind: FindingKind,
  severity: Severity,
  row: number,
  about = `Fan ${row}`,
): Finding => ({
  kind,
  severity,
  sheet: "Fans",
  cell: `K${row + 1}`,
  row,
  cells: [{ sheet: "Fans", cell: `K${row + 1}` }],
  about,
  what: "16.2 Pa is above the window",
  effect: "reads low",
  mend: "Open B",
});

const list = [
  finding("tester-missing", "missing", 2),
  finding("pressure-above", "wrong", 2),
  finding("pressure-above", "wrong", 5),
  finding("box-overdue", "doubtful", 7),
];

describe("the list of findings", () => {
  it("keeps the order of the sheet when grouped by row, and names the row's worst severity", () => {
    const groups = groupFindings(list, "row");
    expect(groups.map(({ title, place, worst, total }) => [title, place, worst, total])).toEqual([
      ["Fan 2", "Fans, row 3", "wrong", 2],
      ["Fan 5", "Fans, row 6", "wrong", 1],
      ["Fan 7", "Fans, row 8", "doubtful", 1],
    ]);
  });

  it("follows the catalogue of kinds when grouped by kind", () => {
    expect(groupFindings(list, "kind").map(({ title, total }) => [title, total])).toEqual([
      ["pressure above the window", 2],
      ["box check overdue", 1],
      ["tester missing", 1],
    ]);
  });

  it("tells results of the fans by kind after the rows, and what is the same for them once", () => {
    const short = [3, 1].map((row) => finding("flow-short", "result", row));
    const groups = groupFindings([...short, ...list], "row");
    expect(groups.at(-1)).toMatchObject({
      title: "flow short of the required rate",
      total: 2,
      shared: { effect: "reads low", mend: "Open B" },
    });
    expect(groups.slice(0, -1).every(({ shared }) => shared === undefined)).toBe(true);
    const other = { ...(short[1] as Finding), mend: "Open C" };
    const apart = groupFindings([short[0] as Finding, other], "row");
    expect(apart[0]?.shared).toBeUndefined();
  });

  it("shows all severities when none is chosen, and only the chosen ones otherwise", () => {
    expect(filterFindings(list, everything)).toHaveLength(4);
    const filter = { severities: ["doubtful", "missing"] as const, search: "" };
    expect(filterFindings(list, filter).map(({ kind }) => kind)).toEqual([
      "tester-missing",
      "box-overdue",
    ]);
  });

  it("finds every word of a search in any part of a finding, whatever its case", () => {
    const found = filterFindings(list, { severities: [], search: "ABOVE k6" });
    expect(found.map(({ row }) => row)).toEqual([5]);
    expect(filterFindings(list, { severities: [], search: "above k99" })).toEqual([]);
  });

  it("cuts a page inside a group and still tells the group's size", () => {
    const page = firstOf(groupFindings(list, "kind"), 1);
    expect(page).toHaveLength(1);
    expect(page[0]?.findings).toHaveLength(1);
    expect(page[0]?.total).toBe(2);
  });

  it("names a missing sheet's group by the sheet where no row is meant", () => {
    const [group] = groupFindings(
      [{ ...finding("sheet-missing", "missing", -1, ""), cell: "" }],
      "row",
    );
    expect([group?.title, group?.place]).toEqual(["Fans", ""]);
  });
});
