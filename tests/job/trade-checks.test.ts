import { describe, expect, it } from "vitest";
import { checkJob } from "../../src/job";
import { holeError } from "../../src/rules";
import {
  boxes,
  type FanCells,
  grid,
  jobFile,
  jobUnder,
  jobWith,
  settings,
  soundFan,
  today,
} from "./grids";

type Cells = Readonly<Record<string, string | number | null>>;

const whatOf = (kind: string, file: Parameters<typeof checkJob>[0]) =>
  checkJob(file, today).findings.filter((finding) => finding.kind === kind);

describe("a note beside a reading", () => {
  const said = (Note: string) => whatOf("note-says", jobWith({ Note })).map(({ what }) => what);

  it.each([
    ["Gusty outside", 'The note says "Gusty".'],
    ["small leak at the corner", 'The note says "leak".'],
    ["taped over the second slot", 'The note says "taped over".'],
    ["window open in hall", 'The note says "window open".'],
    ["grille off", 'The note says "grille off".'],
  ])("%s: is read", (note, what) => {
    const [found = ""] = said(note);
    expect(found.toLowerCase().replace(/\.$/, "")).toBe(what.toLowerCase().replace(/\.$/, ""));
  });

  it.each(["no leak", "no wind", "fan by the window", "tested twice", ""])(
    "%s: says nothing",
    (note) => {
      expect(said(note)).toEqual([]);
    },
  );

  it("is not read where nothing was measured", () => {
    const blank: FanCells = {
      "Box pressure (Pa)": null,
      "Flow (cfm)": null,
      Note: "windy, not read",
    };
    expect(whatOf("note-says", jobWith(blank))).toEqual([]);
  });
});

describe("a dwelling without a continuous fan", () => {
  const job = (provided: boolean, duty = "on demand") => {
    const headings = [
      "Dwelling",
      "Floor area (ft²)",
      "Bedrooms",
      ...(provided ? ["Continuous flow (cfm)"] : []),
    ];
    const { findings } = checkJob(
      jobFile(
        settings,
        grid("Dwellings", [headings, ["Lot 1", 1400, 2], ["Lot 2", 1400, 2]]),
        boxes,
        grid("Fans", [
          Object.keys(soundFan),
          Object.values({ ...soundFan, Duty: duty }),
          Object.values({ ...soundFan, Dwelling: "Lot 2" }),
        ]),
      ),
      today,
    );
    return findings.filter(({ kind }) => kind === "whole-house-missing");
  };

  it("is told once for all dwellings, where the sheet adds up continuous flows", () => {
    const found = job(true);
    expect(found).toHaveLength(1);
    expect(found[0]?.cells).toHaveLength(2);
  });

  it("is told of the one dwelling that has none", () => {
    expect(job(true, "continuous").flatMap(({ cells }) => cells)).toEqual([
      { sheet: "Dwellings", cell: "D3" },
    ]);
  });

  it("is nobody's question on a sheet of room fans alone", () => {
    expect(job(false)).toEqual([]);
  });
});

// Reader-Harris and Gallagher carried on to a hole in a plenum (extrapolated, recomputed): 1.07
// reads 6.3, 3.4 and 2.3 % low through a 1 in hole at 1, 4 and 8 Pa; within 0.7 % through 6 in.
describe("the usual constant through small holes", () => {
  it.each([
    [1, 1, -6.3],
    [1, 4, -3.4],
    [1, 8, -2.3],
    [2, 1, -3.4],
    [3, 4, -0.7],
    [6, 1, -0.7],
    [6, 8, 0.6],
  ])("%d in at %d Pa reads %d %% off", (inches, pressure, percent) => {
    expect(100 * holeError(inches * 0.0254, pressure, 1.07)).toBeCloseTo(percent, 1);
  });

  const found = (diameter: number, constant: number | null) => {
    const box = grid("Boxes", [
      [
        "Box",
        "Opening",
        "Shape",
        "Diameter or width (in)",
        "Height (in)",
        "Holes",
        "Area (in²)",
        "Constant",
      ],
      ["One", "A", "round", diameter, null, 30, 30 * (Math.PI / 4) * diameter ** 2, constant],
    ]);
    return whatOf("hole-small", jobFile(settings, box)).length;
  };

  it("is doubted for holes of 1 in and smaller, unless the box has proved its own", () => {
    expect([found(1, 1.07), found(0.75, null), found(1.5, 1.07), found(1, 1.12)]).toEqual([
      1, 1, 0, 0,
    ]);
  });
});

// Read: IRC 2021 M1503.6, above 400 cfm beside an appliance that is neither direct-vent nor
// mechanical-draft.
describe("a large hood", () => {
  const found = (rated: number, appliance: string | null, ducts = "IRC-2021") => {
    const { findings } = checkJob(
      jobFile(
        grid("Job", [
          ["Setting", "Value"],
          ["Edition", "IRC-2021"],
          ["Duct table", ducts],
          ["Units", "ip"],
        ]),
        grid("Dwellings", [
          ["Dwelling", "Floor area (ft²)", "Bedrooms", "Open-flue appliance"],
          ["Lot 1", 1400, 2, appliance],
        ]),
        boxes,
        grid("Fans", [
          Object.keys(soundFan),
          Object.values({ ...soundFan, "Room kind": "kitchen hood", "Rated flow (cfm)": rated }),
        ]),
      ),
      today,
    );
    return findings.map(({ kind }) => kind).filter((kind) => kind.startsWith("makeup"));
  };

  it("asks whether an open-flue appliance is there, where that decides on makeup air", () => {
    expect(found(600, null)).toEqual(["makeup-unsaid"]);
    expect(found(600, "yes")).toEqual(["makeup-air"]);
    expect(found(600, "no")).toEqual([]);
    expect(found(400, null)).toEqual([]);
    expect(found(600, null, "IRC-2015")).toEqual(["makeup-air"]);
  });
});

describe("words that neither alarm nor mislead", () => {
  it("never say of a number that it is above or below one that looks the same", () => {
    const high = jobWith({ "Box pressure (Pa)": 8.04, "Flow (cfm)": null });
    expect(whatOf("pressure-above", high)[0]?.what).toContain("8.04 Pa is above the 8 Pa window");
    const low = jobWith({ "Box pressure (Pa)": 0.9996, "Flow (cfm)": null });
    expect(whatOf("pressure-below", low)[0]?.what).toContain("0.9996 Pa is below the 1 Pa window");
  });

  it("say of a flow that is enough above the window that the box only lowers it", () => {
    const at = (pressure: number, flow: number) =>
      whatOf("pressure-above", jobWith({ "Box pressure (Pa)": pressure, "Flow (cfm)": flow }))[0];
    expect(at(8.2, 73.5)?.effect).toContain(
      "73.5 cfm already meets 50, and the box only lowers it",
    );
    const small: FanCells = {
      "Openings in use": "A",
      "Open area (in²)": 12,
      "Box pressure (Pa)": 9,
      "Flow (cfm)": 38.5,
    };
    expect(whatOf("pressure-above", jobWith(small))[0]?.effect).toContain("reads low");
    const unknown = jobWith({ ...small, "Openings in use": "Z", "Open area (in²)": null });
    for (const { effect } of whatOf("pressure-above", unknown)) expect(effect).not.toContain("NaN");
  });

  it("say of a decimal comma that a point is wanted", () => {
    const [told] = whatOf("number-as-text", jobWith({ "Box pressure (Pa)": "3,4" }));
    expect(told?.mend).toBe("Type 3.4, with a point before the decimals.");
  });

  it("call a room without a rate none required, a result and no fault", () => {
    const [found] = whatOf("rate-none", jobWith({ "Room kind": "utility" }));
    expect(found).toMatchObject({ severity: "result" });
    expect(found?.what).toMatch(/asks no exhaust rate of a utility: none required/i);
  });
});

describe("a flow that is short by a little", () => {
  it("is shown with enough digits to tell it from its rate", () => {
    // 24 in² at 3.788 Pa and 1.07 is 49.981 cfm.
    const [found] = whatOf(
      "flow-short",
      jobWith({ "Box pressure (Pa)": 3.788, "Flow (cfm)": 49.98 }),
    );
    expect(found?.what).toMatch(/49\.98 cfm is short of the required 50 cfm by 0\.02/);
  });
});

describe("a kitchen that its row describes", () => {
  const kitchen = (cells: Cells, edition = "62.2-2016") =>
    checkJob(jobUnder(edition, { ...soundFan, ...kitchenCells, ...cells }), today);
  const kitchenCells: Cells = {
    "Room kind": "kitchen",
    "Room volume (ft³)": 960,
    "Enclosed kitchen": null,
    Cooking: null,
    "Openings in use": "C",
    "Open area (in²)": 48,
    "Flow (cfm)": 102.72,
    Required: null,
  };
  const kinds = (cells: Cells, edition?: string) =>
    kitchen(cells, edition)
      .findings.map(({ kind }) => kind)
      .filter((kind) => kind === "room-unsaid" || kind === "flow-short");

  it("asks whether it is enclosed only where the answer turns the verdict", () => {
    // 5 air changes an hour of 960 ft³ are 80 cfm; an open kitchen needs 300.
    expect(kinds({})).toEqual(["room-unsaid"]);
    expect(kinds({ "Enclosed kitchen": "yes" })).toEqual([]);
    expect(kinds({ "Enclosed kitchen": "no" })).toEqual(["flow-short"]);
    expect(kinds({ "Room volume (ft³)": 3600 })).toEqual(["flow-short"]);
  });

  it("asks what it cooks with where hoods go by that", () => {
    // California: over electric cooking in 1,400 ft² 110 cfm, over fuel 250.
    const hood = { "Room kind": "kitchen hood", "Openings in use": "B+C", "Open area (in²)": 72 };
    const cells = { ...hood, "Flow (cfm)": 154.08 };
    expect(kinds(cells, "CA-2022")).toEqual(["room-unsaid"]);
    expect(kinds({ ...cells, Cooking: "electric" }, "CA-2022")).toEqual([]);
    expect(kinds({ ...cells, Cooking: "gas" }, "CA-2022")).toEqual(["flow-short"]);
  });
});

describe("walls of a box", () => {
  const walls = (thickness: number) => {
    const [head = [], ...rows] = [
      ["Box", "Opening", "Shape", "Diameter or width (in)", "Wall thickness (in)", "Area (in²)"],
      ["One", "B", "round", 5.528, thickness, 24],
    ];
    const file = jobWith({});
    const sheets = file.sheets.filter(({ name }) => name !== "Boxes");
    return whatOf("wall-thick", jobFile(...sheets, grid("Boxes", [head, ...rows]))).length;
  };

  // A handbook's short tube passes 0.82 ÷ 0.61 of a sharp hole; a tenth of the hole is still sharp.
  it("are doubted where they are thicker than a tenth of the hole", () => {
    expect([0.06, 0.5, 0.6, 9].map(walls)).toEqual([0, 0, 1, 1]);
  });
});
