import { describe, expect, it } from "vitest";
import { checkJob, type Finding, type FurtherCheck, isFault } from "../../src/job";
import { fanReadings } from "../../src/pane/model/readings-view";
import { fanFacts } from "../../src/records/fan-facts";
import { grid, jobFile, type TestCell, today } from "./grids";

type Row = [
  home: string,
  room: string,
  opening: string,
  area: number,
  pressure: number,
  flow: number,
  required: number,
  verdict: string,
];

const pressures = [4.1, 2.9, 5.3, 3.6, 2.2, 6.1, 4.8, 3.1, 5.7, 2.6, 4.4, 3.9, 5.1, 2.4, 3.3, 4.6];
const heads = ["Lot", "Room", "Slot", "Open in2", "Box Pa", "cfm", "Min cfm", "Result"];

/** A firm's book of sixteen fans, sound but for what `change` makes of it. */
function found(
  change: (rows: Row[]) => void = () => {},
  withList = false,
  isTold: (finding: Finding) => boolean = isFault,
  further?: FurtherCheck,
): string[] {
  const rows = pressures.map((pressure, i): Row => {
    const [room, slot, area, required] =
      i % 2 ? (["Bath", "small", 24, 50] as const) : (["Kitchen", "large", 48, 100] as const);
    const flow = Math.round(10.7 * area * Math.sqrt(pressure)) / 10;
    const word = flow >= required ? "ok" : "short";
    return [`Lot ${1 + (i >> 1)}`, room, slot, area, pressure, flow, required, word];
  });
  change(rows);
  const list = grid("Slots", [
    ["Slot", "Area (in2)"],
    ["small", 24],
    ["large", 48],
  ]);
  const { findings } = checkJob(
    jobFile(grid("Log", [heads, ...rows]), ...(withList ? [list] : [])),
    today,
    further,
  );
  return findings.filter(isTold).map(({ kind, sheet, cell }) => `${kind} ${sheet}!${cell}`);
}

const at = (rows: Row[], i: number) => rows[i] as Row;

describe("the checks of a firm's own sheet", () => {
  it("find nothing in a sound one", () => {
    expect(found()).toEqual([]);
    expect(found(undefined, true)).toEqual([]);
  });

  it("tell a verdict that its flow and required rate contradict", () => {
    const told = found((rows) => {
      const row = at(rows, 2);
      row[7] = row[7] === "ok" ? "short" : "ok";
    });
    expect(told).toEqual(["verdict-differs Log!H4"]);
  });

  it("tell a rate unlike that of other fans of the same room, and no consequence of it", () => {
    const told = found((rows) => {
      at(rows, 4)[6] = 60;
    });
    expect(told).toContain("required-differs Log!G6");
    expect(told.every((each) => /[GH]6$/.test(each))).toBe(true);
  });

  it("tell an opening that stands in no list, and an area that its opening does not have", () => {
    expect(
      found((rows) => {
        at(rows, 3)[2] = "medium";
      }, true),
    ).toEqual(["opening-unknown Log!C5"]);
    const told = found((rows) => {
      const row = at(rows, 5);
      [row[3], row[5]] = [36, Math.round(10.7 * 36 * Math.sqrt(row[4])) / 10];
      row[7] = row[5] >= row[6] ? "ok" : "short";
    }, true);
    expect(told).toEqual(["area-not-of-sizes Log!D7"]);
  });

  it("tell a fan that passes on a reading outside the window", () => {
    const told = found((rows) => {
      const row = at(rows, 6);
      [row[4], row[5], row[7]] = [11, Math.round(10.7 * 48 * Math.sqrt(11)) / 10, "ok"];
    });
    expect(told).toEqual(["passed-outside Log!E8"]);
  });

  it("tell such a pass once where it was typed over the formula of its column", () => {
    const typedOver: FurtherCheck = (_file, findings) => {
      const [first] = findings as [Finding];
      return [{ ...first, kind: "formula-typed-over", cell: "H8" }];
    };
    const passes = (rows: Row[]) => {
      const row = at(rows, 6);
      [row[4], row[5], row[7]] = [11, Math.round(10.7 * 48 * Math.sqrt(11)) / 10, "ok"];
    };
    expect(found(passes, false, isFault, typedOver)).toEqual(["passed-outside Log!E8"]);
  });

  it("tell no fan short by a flow that rests on an area no opening has", () => {
    const small = (rows: Row[]) => {
      const row = at(rows, 5);
      [row[3], row[5], row[7]] = [4.4, Math.round(10.7 * 4.4 * Math.sqrt(row[4])) / 10, "short"];
    };
    expect(found(small, true, ({ row }) => row === 6)).toEqual(["area-not-of-sizes Log!D7"]);
  });

  it("tell a flow that does not follow in the units of its own sheet", () => {
    const heads = ["Wohnung", "Raum", "Fläche cm²", "Kasten Pa", "m³/h", "Soll m³/h"];
    const rows = pressures.map((pressure, i) => {
      const [room, area, need] = i % 2 ? ["Bad", 110, 40] : ["Küche", 210, 60];
      const flow = Math.round(2.818 * Number(area) * Math.sqrt(pressure)) / 10;
      return [`WE ${1 + (i >> 1)}`, room, area, pressure, i === 3 ? 77 : flow, need] as TestCell[];
    });
    const { findings } = checkJob(jobFile(grid("Messung", [heads, ...rows])), today);
    const told = findings.find(({ kind }) => kind === "value-differs");
    // 0.2818 · 110 · √3.6
    expect(told).toMatchObject({ cell: "E5", what: "m³/h is 77 but the row gives 58.8" });
    expect(told?.mend).toContain("Type 58.8");
  });

  it("tell a pass where nothing was read", () => {
    const told = found((rows) => {
      const row = at(rows, 7) as unknown as (string | null)[];
      [row[4], row[5], row[7]] = [null, null, "ok"];
    });
    expect(told).toContain("passed-unread Log!E9");
  });

  it("take pressures read against the room as they are, and one of the other sign as a slip", () => {
    expect(
      found((rows) => {
        for (const row of rows) row[4] = -row[4];
      }),
    ).toEqual([]);
    const told = found((rows) => {
      for (const row of rows) row[4] = -row[4];
      at(rows, 8)[4] *= -1;
    });
    expect(told).toEqual(["pressure-negative Log!E10"]);
  });

  it("read a pressure typed as a text with its own sign", () => {
    const told = found((rows) => {
      for (const row of rows as unknown as string[][]) row[4] = `-${row[4]}`.replace(".", ",");
      (at(rows, 8) as unknown as string[])[4] = "~5,7";
    });
    expect(told).toContain("pressure-negative Log!E10");
  });

  it.each([
    ["ok", "short"],
    // Words of no language mean what they agree with.
    ["zup", "wem"],
  ])(
    "judge the mean of several tests where its required rate stands alone: %s, %s",
    (ok, short) => {
      const heads = [
        "Apt",
        "Room",
        "Test",
        "Box Pa",
        "Opening in2",
        "Flow cfm",
        "Required",
        "Result",
      ];
      const rows: TestCell[][] = [];
      for (let fan = 0; fan < 10; fan++) {
        const flows = [0.1, 0.2, 0.3].map((more) => 1.07 * 27 * Math.sqrt(2 + fan * 0.3 + more));
        flows.forEach((flow, test) => {
          const [apt, room] =
            test === 0 ? [`Apt ${fan}`, fan % 2 ? "Kitchen" : "Bath"] : [null, null];
          rows.push([apt, room, test + 1, (flow / 1.07 / 27) ** 2, 27, flow, null, null]);
        });
        const mean = flows.reduce((sum, flow) => sum + flow, 0) / 3;
        const isShort = mean < 55;
        // The second fan is short and says so not; the last meets its rate and is called short.
        const word = isShort === (fan !== 1 && fan !== 7) ? short : ok;
        rows.push([null, null, "Average", null, null, mean, 55, fan === 7 ? short : word]);
      }
      const {
        findings: told,
        job,
        summary,
      } = checkJob(jobFile(grid("Tests", [heads, ...rows])), today);
      const of = (kind: string) => told.filter((each) => each.kind === kind);
      expect(of("verdict-differs").flatMap(({ cells }) => cells.map(({ cell }) => cell))).toEqual([
        "H9",
        "H33",
      ]);
      expect(of("flow-short").map(({ cell, about }) => [cell, about])).toEqual([
        ["F5", "Apt 0, Bath (mean)"],
        ["F13", "Apt 2, Bath (mean)"],
        ["F17", "Apt 3, Kitchen (mean)"],
        ["F21", "Apt 4, Bath (mean)"],
      ]);
      expect(told.filter(isFault)).toHaveLength(2);
      expect(summary).toMatchObject({ fans: 10, measured: 10 });
      const first = fanFacts(job).slice(0, 4);
      expect(first.map(({ replacedAs }) => replacedAs)).toEqual([
        ...Array(3).fill("part of a mean"),
        undefined,
      ]);
      expect(first[3]).toMatchObject({ tag: "mean", room: "Bath", required: 55, verdict: "short" });
      expect(fanReadings(job)[3]).toMatchObject({ cell: "F5", verdict: "short", required: 55 });
    },
  );

  it("take a sheet a dwelling with the same rooms for other fans, and count all of them", () => {
    const heads = ["Room", "Open in2", "Box Pa", "cfm", "Min cfm"];
    const homes = [3, 4, 5, 6].map((pressure) =>
      grid(`Flat ${pressure}`, [
        heads,
        ...[24, 48, 36].map((area, at) => {
          const flow = Math.round(10.7 * area * Math.sqrt(pressure)) / 10;
          return [["Bath", "Kitchen", "Laundry"][at] as string, area, pressure, flow, 20];
        }),
      ]),
    );
    const { findings, summary } = checkJob(jobFile(...homes), today);
    expect(findings.map(({ kind }) => kind)).toEqual([]);
    expect(summary).toMatchObject({ fans: 12, measured: 12, dwellings: 4, openings: 0 });
  });

  it("see no fan where a word of ours stands over something else", () => {
    const rows = [11, 12, 13, 14].map((cost) => [cost, 7 * cost, 3, 10 * cost]);
    const heads = ["Unit Cost", "Area", "Pressure washing", "Total"];
    const { isJob, findings } = checkJob(jobFile(grid("Budget", [heads, ...rows])), today);
    expect([isJob, findings]).toEqual([false, []]);
  });

  it("take a letter that all rows share for the opening's name and no verdict", () => {
    const told = found((rows) => {
      for (const row of rows) row[2] = "A";
    });
    expect(told.filter((each) => each.startsWith("verdict"))).toEqual([]);
  });
});
