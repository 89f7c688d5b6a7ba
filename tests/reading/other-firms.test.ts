import { describe, expect, test } from "vitest";
import {
  type Block,
  fitEntries,
  habitsInWords,
  type ReadWorkbook,
  readWorkbook,
} from "../../src/reading";
import { letters, type Made, sheet, workbook } from "./books";

/** The cells of each role, block by block, as `--fit` tells them. */
function rolesOf(book: ReadWorkbook): Record<string, string>[] {
  return fitEntries(readWorkbook(book)).map(({ roles }) =>
    Object.fromEntries(Object.entries(roles).map(([role, cells]) => [role, cells.join(" ")])),
  );
}

const root = (k: number, area: number, pressure: number) =>
  k * area * Math.sqrt(Math.abs(pressure));

describe("workbooks as other firms keep them", () => {
  test("a card of labels and values for each fan, one below the other", () => {
    const rows: Made[][] = [];
    for (let i = 0; i < 6; i++) {
      const [r, pressure, area] = [rows.length, 2 + i * 0.37, [24, 48][i % 2]!];
      const flow = root(1.07, area, pressure);
      rows.push(
        [`Test card ${i + 1}`],
        ["Dwelling", `Unit ${1 + Math.floor(i / 3)}`],
        ["Room", ["Bath", "Kitchen", "WC"][i % 3]!],
      );
      rows.push(
        ["Box pressure (Pa)", pressure],
        ["Opening (in²)", area],
        ["Flow (cfm)", { f: `1.07*B${r + 5}*SQRT(B${r + 4})`, v: flow }],
        ["Required (cfm)", 50],
        ["Result", flow >= 50 ? "Pass" : "Fail"],
        [],
      );
    }
    const reading = readWorkbook(workbook([sheet("Cards", rows)]));
    expect(reading.blocks.map(({ layout, readings }) => [layout, readings])).toEqual([
      ["cards", 6],
    ]);
    expect(rolesOf(workbook([sheet("Cards", rows)]))[0]).toMatchObject({
      pressure: "B4 B13 B22 B31 B40 B49",
      area: "B5 B14 B23 B32 B41 B50",
      verdict: "B8 B17 B26 B35 B44 B53",
    });
    expect(reading.blocks[0]?.field(4, "dwelling")?.value).toBe("Unit 2");
  });

  test("a flow looked up in a chart by opening and pressure", () => {
    const sizes = { S: 12, M: 24, L: 48 };
    const rows: Made[][] = [["Apartment", "Room", "Slot", "Pa", "Flow cfm", "Min cfm", "OK"]];
    for (let i = 0; i < 24; i++) {
      const [pressure, slot] = [[2, 3, 4, 5, 6][i % 5]!, (["S", "M", "L"] as const)[i % 3]!];
      const flow = Math.round(root(1.07, sizes[slot], pressure));
      rows.push([
        `Apt ${100 + Math.floor(i / 3)}`,
        ["Bath", "Kitchen", "Laundry"][i % 3]!,
        slot,
        pressure,
        {
          f: `INDEX(Chart!$B$2:$D$9,MATCH(D${i + 2},Chart!$A$2:$A$9,0),MATCH(C${i + 2},Chart!$B$1:$D$1,0))`,
          v: flow,
        },
        50,
        flow >= 50 ? "yes" : "no",
      ]);
    }
    const chart: Made[][] = [
      ["Pa", "S", "M", "L"],
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((pa) => [
        pa,
        ...[12, 24, 48].map((area) => Math.round(root(1.07, area, pa))),
      ]),
    ];
    expect(rolesOf(workbook([sheet("Log", rows), sheet("Chart", chart)]))).toEqual([
      {
        dwelling: "A2:A25",
        room: "B2:B25",
        opening: "C2:C25",
        pressure: "D2:D25",
        flow: "E2:E25",
        required: "F2:F25",
        verdict: "G2:G25",
      },
    ]);
  });

  test("no flow at all, Dutch, openings told in a sentence", () => {
    const rows: Made[][] = [
      ["Ventilatiemeting; opening klein = 60 cm2, groot = 240 cm2"],
      [],
      ["Woning", "Ruimte", "Opening", "Kastdruk (Pa)", "Eis (L/s)", "Datum", "Monteur"],
    ];
    for (let i = 0; i < 20; i++)
      rows.push([
        `Woning ${1 + Math.floor(i / 2)}`,
        i % 2 ? "Keuken" : "Badkamer",
        i % 2 ? "groot" : "klein",
        -(1.5 + (i % 7) * 0.6),
        i % 2 ? 21 : 14,
        45_300 + Math.floor(i / 6),
        "PV",
      ]);
    const reading = readWorkbook(workbook([sheet("Meting", rows)]));
    expect(rolesOf(workbook([sheet("Meting", rows)]))).toEqual([
      {
        dwelling: "A4:A23",
        room: "B4:B23",
        opening: "C4:C23",
        pressure: "D4:D23",
        required: "E4:E23",
        date: "F4:F23",
        tester: "G4:G23",
      },
    ]);
    expect(reading.openings.map(({ name, area }) => [name, area])).toEqual([
      ["klein", 60],
      ["groot", 240],
    ]);
  });

  test("three tests of a fan stacked with their mean, French", () => {
    const rows: Made[][] = [
      ["Logement", "Pièce", "Essai", "Dépression Pa", "Section cm²", "Débit m³/h"],
    ];
    for (let i = 0; i < 8; i++) {
      const first = rows.length + 1;
      for (let t = 1; t <= 3; t++) {
        const pressure = 2 + i * 0.3 + t * 0.1;
        rows.push([
          t === 1 ? `Logt ${i + 1}` : null,
          t === 1 ? (i % 2 ? "Cuisine" : "Salle de bains") : null,
          t,
          pressure,
          120,
          { f: `0.2818*E${first + t - 1}*SQRT(D${first + t - 1})`, v: root(0.2818, 120, pressure) },
        ]);
      }
      rows.push([
        null,
        null,
        "Moyenne",
        { f: `AVERAGE(D${first}:D${first + 2})`, v: 3 },
        null,
        { f: `AVERAGE(F${first}:F${first + 2})`, v: 60 },
      ]);
    }
    const [block] = readWorkbook(workbook([sheet("Essais", rows)])).blocks;
    expect(block?.readings).toBe(24);
    expect(block?.field(2, "dwelling")).toMatchObject({ value: "Logt 1", from: "above" });
  });

  test("typed final results that repeat the first flow or that of the retest are no flow", () => {
    const rows: Made[][] = [
      ["Apt", "Room", "Pa", "Hole in²", "cfm", "Req cfm", "Retest Pa", "Retest hole", "Retest cfm"],
    ];
    rows[0]?.push("Final cfm", "Final");
    for (let i = 0; i < 24; i++) {
      const pressure = 2 + i * 0.17;
      const flow = root(1.07, 27, pressure);
      const again = flow < 50 && i % 2 ? [pressure + 2.3, 27, root(1.07, 27, pressure + 2.3)] : [];
      const final = again[2] ?? flow;
      rows.push([
        ...[`Apt ${i >> 1}`, i % 2 ? "Bath" : "Laundry", pressure, 27, flow, 50],
        ...[again[0] ?? null, again[1] ?? null, again[2] ?? null],
        ...[final, final >= 50 ? "PASS" : "FAIL"],
      ]);
    }
    const { blocks } = readWorkbook(workbook([sheet("Fans", rows)]));
    expect(blocks.map(({ roles }) => roles.get("flow")?.heading)).toEqual(["cfm", "Retest cfm"]);
    expect(blocks.map(({ layout }) => layout)).toEqual(["a row a fan", "retests"]);
    expect(blocks.map(({ roles }) => roles.get("required")?.heading)).toEqual([
      "Req cfm",
      "Req cfm",
    ]);
  });

  test.each([
    ["Box", "A", "Box Pa"],
    ["Kasten", "grau 2", "Kasten, Pa"],
    ["Caja", 3, "Caja (Pa)"],
  ])("a column %s with one name in every row tells which box measured", (title, name, box) => {
    const rows: Made[][] = [["Lot", "Room", title, "Hole in²", box, "cfm", "Req cfm"]];
    for (let i = 0; i < 16; i++) {
      const pressure = 2 + i * 0.27;
      rows.push([`Lot ${i >> 1}`, i % 2 ? "Bath" : "WC", name, 27, pressure]);
      rows.at(-1)?.push(root(1.07, 27, pressure), 50);
    }
    const [block] = readWorkbook(workbook([sheet("Fans", rows)])).blocks;
    expect(letters(block?.roles ?? new Map())).toEqual({
      dwelling: "A",
      room: "B",
      box: "C",
      area: "D",
      pressure: "E",
      flow: "F",
      required: "G",
    });
  });

  test("a day and a name in the line over a dwelling's fans are told apart", () => {
    const rows: Made[][] = [["Fan", "Run", "Hole in²", "Pa", "cfm"]];
    for (let home = 1; home < 6; home++) {
      rows.push([`Lot ${home} - Plan C`, null, null, "06/05/2023  Ray"]);
      for (const room of ["Bath", "Laundry", "WC", "Kitchen"]) {
        const pressure = 2 + rows.length * 0.13;
        rows.push([room, "switch", 27, pressure, root(1.07, 27, pressure)]);
      }
    }
    const reading = readWorkbook(workbook([sheet("Fans", rows)]));
    const [block] = reading.blocks;
    expect(block?.field(5, "tester")).toMatchObject({ value: "Ray", from: "above" });
    expect(block?.field(5, "date")).toMatchObject({ value: "06/05/2023", from: "above" });
    const [entry] = fitEntries(reading);
    expect(entry?.roles.tester).toEqual(["D2", "D7", "D12", "D17", "D22"]);
    expect(entry?.because.dwelling).toEqual(["a line above its rows says so"]);
    expect(habitsInWords(block as Block)).toContain(
      "flow = 1.07 × area × √pressure: 100 % of the rows give 1.07",
    );
  });

  test("cards stacked on a sheet under a dwelling's name, with day and tester beside it, Dutch", () => {
    const rows: Made[][] = [];
    for (let home = 1; home < 8; home++) {
      rows.push([`Woning ${home}`, null, "Datum", 45_700 + home, "Door", home % 2 ? "Jan" : "Els"]);
      rows.push(["Ruimte", "Stand", "Gat cm²", "Kastdruk Pa", "Debiet m³/h", "Eis m³/h"]);
      for (const [room, area] of [
        ["Badkamer", 110],
        ["Toilet", 60],
        ["Keuken", 210],
      ] as const) {
        const pressure = 2 + rows.length * 0.11;
        rows.push([room, "continu", area, pressure, root(0.2818, area, pressure), 50]);
      }
      rows.push([]);
    }
    const [block] = readWorkbook(workbook([sheet("Kaarten", rows)])).blocks;
    expect(block?.readings).toBe(21);
    expect(block?.field(4, "dwelling")).toMatchObject({ value: "Woning 2" });
    expect(block?.field(4, "tester")).toMatchObject({ value: "Els" });
  });

  test("a column Caisson with one tag in every row names the box, not the fans", () => {
    const rows: Made[][] = [
      ["Logt", "Pièce", "Section cm²", "Dépression Pa", "Débit m³/h", "Caisson"],
    ];
    for (let i = 0; i < 16; i++) {
      const pressure = 2 + i * 0.27;
      rows.push([`Logt ${i >> 1}`, i % 2 ? "WC" : "Cuisine", 120, pressure]);
      rows.at(-1)?.push(root(0.2818, 120, pressure), "C2");
    }
    const [block] = readWorkbook(workbook([sheet("Essais", rows)])).blocks;
    expect(letters(block?.roles ?? new Map())).toMatchObject({ room: "B", box: "F" });
    expect(block?.roles.has("fan")).toBe(false);
  });

  test("a retest beside each of two fans reads the area of its own fan", () => {
    const titles = ["in2", "Pa", "cfm", "Retest Pa", "Retest cfm"];
    const rows: Made[][] = [
      ["Unit", ...["Bath", "Kitchen"].flatMap((room) => titles.map((each) => `${room} ${each}`))],
    ];
    for (let i = 0; i < 20; i++) {
      const row = i + 2;
      const flow = (f: string, area: number, pressure: number): Made => ({
        f,
        v: root(1.07, area, pressure),
      });
      const fan = (area: number, pressure: number, [a, p, again]: readonly string[]): Made[] => [
        ...[area, pressure, flow(`1.07*${a}${row}*SQRT(${p}${row})`, area, pressure)],
        ...(i % 3
          ? [null, null]
          : [pressure + 2, flow(`1.07*${a}${row}*SQRT(${again}${row})`, area, pressure + 2)]),
      ];
      rows.push([
        `Unit ${i}`,
        ...fan(24, 2 + i * 0.17, ["B", "C", "E"]),
        ...fan(48, 6 - i * 0.13, ["G", "H", "J"]),
      ]);
    }
    const { blocks } = readWorkbook(workbook([sheet("Units", rows)]));
    const lines = blocks.map(({ layout, roles }) => [
      layout,
      letters(roles).pressure,
      letters(roles).area,
    ]);
    expect(lines).toEqual([
      ["fans side by side", "C", "B"],
      ["retests", "E", "B"],
      ["fans side by side", "H", "G"],
      ["retests", "J", "G"],
    ]);
  });

  test("an opening that is called middle, as a mean is, makes no total of its rows", () => {
    const rows: Made[][] = [["Pièce", "Trappe", "Surface cm²", "Dépression Pa", "Débit m³/h"]];
    for (let i = 0; i < 12; i++) {
      const [trappe, area] = i % 2 ? ["petite", 60] : ["moyenne", 140];
      const pressure = 2 + i * 0.3;
      const flow = {
        f: `0.2818*C${i + 2}*SQRT(D${i + 2})`,
        v: root(0.2818, Number(area), pressure),
      };
      rows.push([
        i % 2 ? "WC" : "Salle de bains",
        trappe as string,
        area as number,
        pressure,
        flow,
      ]);
    }
    rows.push([null, "Moyenne", null, { f: "AVERAGE(D2:D13)", v: 3.6 }, null]);
    const [block] = readWorkbook(workbook([sheet("Relevé", rows)])).blocks;
    expect([block?.readings, block?.skipped]).toEqual([12, [13]]);
  });

  test("fans in columns under a title of exhaust, whose cells name no fan", () => {
    const rows: Made[][] = [
      "Afzuiging",
      "Ruimte",
      "Woning",
      "Onderdruk Pa",
      "Opening cm²",
      "dm³/s",
    ].map((label) => [label]);
    for (let i = 0; i < 10; i++) {
      const area = i % 2 ? 60 : 160;
      const pressure = 2 + ((i * 7) % 10) * 0.4;
      const flow = Math.round(0.783 * area * Math.sqrt(pressure)) / 10;
      const cells = [
        null,
        i % 2 ? "Toilet" : "Keuken",
        `nr. ${1 + (i >> 1)}`,
        pressure,
        area,
        flow,
      ];
      for (const [at, cell] of cells.entries()) rows[at]?.push(cell);
    }
    const [block] = readWorkbook(workbook([sheet("Metingen", rows)])).blocks;
    expect([block?.layout, block?.roles.get("dwelling")?.line]).toEqual(["fans in columns", 2]);
    expect(block?.roles.has("fan")).toBe(false);
  });

  test("required rates in a row above the headings of fans side by side", () => {
    const rows: Made[][] = [
      ["Required cfm", null, null, 50, null, null, 100],
      [null, "Bath", null, null, "Kitchen"],
      ["Lot", "Pa", "in2", "cfm", "Pa", "in2", "cfm"],
    ];
    for (let i = 0; i < 8; i++) {
      const [a, b] = [3 + i * 0.2, 4.5 - i * 0.2];
      const y = i + 4;
      rows.push([
        `Lot ${i + 1}`,
        ...[a, 24, { f: `1.07*C${y}*SQRT(B${y})`, v: root(1.07, 24, a) }],
        ...[b, 48, { f: `1.07*F${y}*SQRT(E${y})`, v: root(1.07, 48, b) }],
      ]);
    }
    const { blocks } = readWorkbook(workbook([sheet("Log", rows)]));
    expect(blocks.map((block) => block.field(2, "required")?.value)).toEqual([50, 100]);
  });

  test("rooms over flows alone, read off a powered hood", () => {
    const rows: Made[][] = [
      ["Hood readings, L/s"],
      ["Flat", "Bathroom", "Ensuite", "Kitchen", "WC", "Checked by", "Date"],
    ];
    for (let i = 0; i < 18; i++)
      rows.push([
        `Flat ${i + 1}`,
        14 + (i % 5),
        i % 3 ? 12 + (i % 4) : null,
        28 + (i % 9),
        i % 2 ? 7 + (i % 3) : null,
        "HM",
        45_400 + i,
      ]);
    const { blocks } = readWorkbook(workbook([sheet("Hood", rows)]));
    expect(blocks.map(({ readings, roles }) => [readings, roles.get("flow")?.line])).toEqual([
      [18, 1],
      [12, 2],
      [18, 3],
      [9, 4],
    ]);
    expect(blocks[1]?.field(0, "room")).toMatchObject({ value: "Ensuite", from: "heading" });
  });

  test("a pressure typed in inches of water and converted beside it is read where it was typed", () => {
    const rows: Made[][] = [
      ["Lot", "Fan", "Box in. w.c.", "Box Pa", "Hole", "CFM", "House pressure"],
    ];
    for (let i = 0; i < 16; i++) {
      const [inches, area] = [0.008 + (i % 9) * 0.002, [12, 24][i % 2]!];
      rows.push([
        `Lot ${1 + Math.floor(i / 2)}`,
        i % 2 ? "Kitchen" : "Bath",
        inches,
        { f: `C${i + 2}*249.1`, v: inches * 249.1 },
        area,
        { f: `1.07*E${i + 2}*SQRT(D${i + 2})`, v: root(1.07, area, inches * 249.1) },
        1.2,
      ]);
    }
    expect(rolesOf(workbook([sheet("L", rows)]))).toEqual([
      { dwelling: "A2:A17", room: "B2:B17", pressure: "C2:C17", area: "E2:E17", flow: "F2:F17" },
    ]);
  });
});

describe("what is no test of exhaust fans is left alone", () => {
  test.each<[string, Made[][]]>([
    [
      "a test of a house's envelope",
      [
        ["Envelope test results"],
        ["House", "Fan pressure (Pa)", "House pressure (Pa)", "Ring", "Flow cfm50", "Date"],
        ...Array.from({ length: 15 }, (_, i): Made[] => [
          `House ${i}`,
          120 + i * 7.3,
          50,
          "A",
          1500 + i * 31,
          45_000 + i,
        ]),
      ],
    ],
    [
      "a traverse of a supply duct",
      [
        ["Supply balancing"],
        ["Room", "Velocity pressure Pa", "Duct area m2", "Flow L/s", "Design L/s"],
        ...Array.from({ length: 15 }, (_, i): Made[] => [
          `Office ${i}`,
          10 + i * 2.3,
          0.05,
          { f: `1290*C${i + 3}*SQRT(B${i + 3})`, v: 64.5 * Math.sqrt(10 + i * 2.3) },
          200,
        ]),
      ],
    ],
    [
      "a shop's budget",
      [
        ["Budget"],
        ["Item", "Q1", "Q2", "Year", "Plan", "OK?"],
        ...Array.from({ length: 12 }, (_, i): Made[] => [
          `Item ${i}`,
          200 + i * 7,
          180 + i * 9,
          { f: `SUM(B${i + 3}:C${i + 3})`, v: 380 + i * 16 },
          400,
          i ? "ok" : "over",
        ]),
      ],
    ],
  ])("%s", (_, rows) => {
    const reading = readWorkbook(workbook([sheet("Sheet1", rows)]));
    expect(reading.blocks).toEqual([]);
    expect(reading.noFans).toBe(true);
  });

  test("a formula that calls a formula is read past", () => {
    const rows: Made[][] = [["Unit", "Room", "Pa", "Hole (in²)", "CFM", "Check"]];
    for (let i = 0; i < 8; i++) {
      const [pressure, r] = [2 + i * 0.37, i + 2];
      rows.push([
        `Unit ${i}`,
        "Bath",
        pressure,
        24,
        { f: `1.07*D${r}*SQRT(C${r})`, v: root(1.07, 24, pressure) },
        { f: `LAMBDA(x,x+1)(C${r})`, v: pressure + 1 },
      ]);
    }
    expect(rolesOf(workbook([sheet("Tests", rows)]))[0]).toMatchObject({ flow: "E2:E9" });
  });

  test("an old sheet of pressures without openings is told as not checked, with why", () => {
    const fans: Made[][] = [["Lot", "Fan", "Box pressure (Pa)", "Hole (sq in)", "Flow (cfm)"]];
    const old: Made[][] = [["Lot", "Fan", "Box pressure (Pa)", "Result"]];
    for (let i = 0; i < 12; i++) {
      const pressure = 2 + i * 0.37;
      const flow = { f: `1.07*D${i + 2}*SQRT(C${i + 2})`, v: root(1.07, 24, pressure) };
      fans.push([`Lot ${i}`, "Bath", pressure, 24, flow]);
      old.push([`Lot ${i}`, "Bath", pressure, "pass"]);
    }
    const { blocks, notRead } = readWorkbook(
      workbook([sheet("Fans", fans), sheet("Fans (old)", old)]),
    );
    expect(blocks.map((block) => block.sheet)).toEqual(["Fans"]);
    expect(notRead.map(({ because }) => because)).toEqual([
      "Sheet Fans (old): 12 readings not checked, because there is no flow, and no opening beside a pressure",
    ]);
  });

  test("a verdict word is learnt from two rows, and asked about where it was typed once", () => {
    const rows = (nonsense: number) => [
      ["Lot", "Fan", "Box pressure (Pa)", "Hole (sq in)", "Flow (cfm)", "Required (cfm)", "Result"],
      ...Array.from({ length: 12 }, (_, i): Made[] => {
        const pressure = 4 + i * 0.37;
        const flow = { f: `1.07*D${i + 2}*SQRT(C${i + 2})`, v: root(1.07, 24, pressure) };
        return [`Lot ${i}`, "Bath", pressure, 24, flow, 50, i < nonsense ? "zorbl" : "pass"];
      }),
    ];
    const habits = (nonsense: number) =>
      readWorkbook(workbook([sheet("Fans", rows(nonsense))])).blocks[0]!.habits;
    expect(habits(2)).toMatchObject({ pass: ["pass", "zorbl"], unknown: [] });
    expect(habits(1)).toMatchObject({
      ...{ pass: ["pass"], fail: [] },
      unknown: [{ role: "verdict", word: "zorbl" }],
    });
  });
});
