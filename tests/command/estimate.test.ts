import { existsSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";
import { Workbook } from "../../src/workbook";

/*
 * An invented subdivision of 250 lots, from the lists that an estimator keeps to an order list. What
 * is expected is worked out here by itself: 62.2-2019 asks 0.03 × floor area + 7.5 × (bedrooms + 1)
 * of a dwelling (eq. 4.1a, from memory), 50 cfm of a bathroom and 100 cfm of a hood on demand (table
 * 5.1, from memory), nothing of a toilet or a laundry.
 */
const plans = {
  Kestrel: { floor: 1320, bedrooms: 2, baths: 1, halves: 1 },
  Merlin: { floor: 1780, bedrooms: 3, baths: 2, halves: 0 },
  Harrier: { floor: 2960, bedrooms: 4, baths: 3, halves: 1 },
  Osprey: { floor: 3480, bedrooms: 5, baths: 4, halves: 1 },
};
type Plan = keyof typeof plans;
const names = Object.keys(plans) as Plan[];
const lots = Array.from({ length: 250 }, (_, i) => ({
  lot: `Lot ${i + 1}`,
  plan: names[(i * 7 + Math.floor(i / 9)) % names.length] as Plan,
  phase: 1 + Math.floor(i / 84),
}));
const fans = [
  ["Quiet 50", 50, 88, "bath"],
  ["Quiet 80", 80, 96.5, "bath"],
  ["Quiet 110", 110, 121, "bath"],
  ["Quiet 200", 200, 182, "bath"],
  ["Hood 160", 160, 210, "range hood"],
] as const;
const duct = { kind: "smooth", diameter: 6, length: 14, each: 4.4 };

/** One row a lot, rooms as numbers under their names. */
const countedLots = () =>
  [
    "Lot,Plan,Phase,Cond. floor area (sq ft),Beds,Full baths,Half baths,Laundries,Range hood,Exhaust fans",
    ...lots.map(({ lot, plan, phase }) => {
      const { floor, bedrooms, baths, halves } = plans[plan];
      return [lot, plan, phase, floor, bedrooms, baths, halves, 1, 1, baths + halves + 2].join();
    }),
  ].join("\n");

/** A list of lots, and one of plans with a row a room, its duct and how its fan runs. */
const shortLots = () =>
  [
    "Homesite;House type;Release",
    ...lots.map(({ lot, plan, phase }) => [lot, plan, phase].join(";")),
  ].join("\n");
const planRooms = () =>
  [
    "Plans of the site;;;;;;;;",
    "House type;Living area, ft²;BR;Space;Runs;Duct;Dia. (in);Run (ft);Elbows",
    ...names.flatMap((plan) => {
      const { floor, bedrooms, baths, halves } = plans[plan];
      const own = `${duct.kind};${duct.diameter};${duct.length};1`;
      const rooms = [
        ...Array.from(
          { length: baths },
          (_, i) => `Bath ${i + 1};${i === 0 ? "cont" : "switch"};${own}`,
        ),
        ...Array.from({ length: halves }, () => `Powder;switch;;;;`),
        "Laundry;switch;;;;",
        `Range hood;switch;${own}`,
      ];
      return rooms.map((room, i) => `${i === 0 ? `${plan};${floor};${bedrooms}` : ";;"};${room}`);
    }),
  ].join("\n");
const catalogue = () =>
  [
    "Model,Rated (cfm),For,Cost",
    ...fans.map(([model, rated, cost, use]) => [model, rated, use, cost].join()),
    `${duct.kind} ${duct.diameter},,,${duct.each}`,
  ].join("\n");

const bought = (asked: number, use: string) =>
  fans.filter(([, rated, ,]) => rated >= asked * 1.1 - 1e-9).find(([, , , own]) => own === use);
const fansOf = (plan: Plan) => {
  const { floor, bedrooms, baths } = plans[plan];
  const whole = Math.max(0.03 * floor + 7.5 * (bedrooms + 1), 0);
  return [
    bought(whole, "bath"),
    ...Array.from({ length: baths - 1 }, () => bought(50, "bath")),
    bought(100, "range hood"),
  ].flatMap((fan) => (fan ? [fan] : []));
};
const count = (of: (lot: (typeof lots)[number]) => number) =>
  lots.reduce((sum, lot) => sum + of(lot), 0);

interface Section {
  readonly key: string;
  readonly rows: readonly (readonly (string | number | null)[])[];
}
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "fanrow-estimate-"));
  const files = {
    counted: countedLots(),
    short: shortLots(),
    plans: planRooms(),
    fans: catalogue(),
  };
  for (const [name, text] of Object.entries(files))
    writeFileSync(join(folder, `${name}.csv`), `${text}\n`);
});

async function call(...args: string[]) {
  let [out, notes] = ["", ""];
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    note: (text) => {
      notes += text;
    },
    ...{ width: 110, isTerminal: false, colour: false, today: new Date(2026, 10, 25) },
  });
  return { code, out, notes };
}
const at = (name: string) => join(folder, name);
const rowsOf = (out: string, key: string) =>
  (JSON.parse(out).sections as Section[]).find((section) => section.key === key)?.rows ?? [];

describe.each([
  ["one row a lot", ["counted.csv"], 0],
  ["lots and plans", ["short.csv", "plans.csv"], 1],
])("250 lots kept as %s", (title, files, ducts) => {
  const book = `${files[0]}.xlsx`;

  it("become an order list whose quantities and costs are those of the lots", async () => {
    const { code, out } = await call(
      ...["--estimate", at(book), "--edition", "62.2-2019", "--json"],
      ...[...files, "fans.csv"].map(at),
    );
    expect(code, title).toBe(0);
    const quantities = fans
      .map(([model, rated, cost]) => {
        const number = count(({ plan }) => fansOf(plan).filter(([own]) => own === model).length);
        return [model, rated, number, cost, number * cost];
      })
      .filter(([, , number]) => (number as number) > 0);
    expect(rowsOf(out, "fans")).toEqual(quantities);
    const runs = ducts * count(({ plan }) => plans[plan].baths + 1);
    expect(rowsOf(out, "ducts")).toEqual(
      ducts
        ? [
            [
              "smooth 6",
              runs,
              0,
              runs * duct.length,
              duct.each,
              expect.closeTo(runs * duct.length * duct.each, 6),
            ],
          ]
        : [],
    );
    expect(
      rowsOf(out, "rates")
        .filter((row) => row[4] === "none required")
        .map(([room, , , rooms]) => [room, rooms])
        .sort(),
    ).toEqual([
      ["toilet", count(({ plan }) => plans[plan].halves)],
      ["utility", 250],
    ]);
  });

  it("add up by plan and by phase with hours and margin once the Job sheet says them", async () => {
    const { bytes, settings } = await priced(at(book));
    writeFileSync(at(`priced-${book}`), bytes);
    const { out } = await call("--order", "--json", at(`priced-${book}`));
    const cost = ({ plan }: (typeof lots)[number]) => {
      const own = fansOf(plan);
      const materials = own.reduce((sum, [, , each]) => sum + each, 0);
      const inDucts = ducts * (plans[plan].baths + 1) * duct.length * duct.each;
      return materials + inDucts + (own.length * settings.fan + settings.dwelling) * settings.rate;
    };
    const totals = rowsOf(out, "totals");
    const groups = [
      ...names.map((name) => ["plan", name, lots.filter(({ plan }) => plan === name)] as const),
      ...[1, 2, 3].map(
        (n) => ["phase", String(n), lots.filter(({ phase }) => phase === n)] as const,
      ),
      ["all", "all dwellings", lots] as const,
    ];
    expect(totals).toHaveLength(groups.length);
    for (const [by, name, own] of groups) {
      const total = totals.find((row) => row[0] === by && row[1] === name);
      const sum = own.reduce((all, lot) => all + cost(lot), 0);
      expect(total?.[2], `${by} ${name}`).toBe(own.length);
      expect(total?.[7], `${by} ${name}`).toBeCloseTo(sum, 4);
      expect(total?.[8], `${by} ${name}`).toBeCloseTo(sum / (1 - settings.margin / 100), 4);
    }
  });

  it("have no fault and no error value in the workbook that is made of them", async () => {
    const { code, out } = await call("--json", at(book));
    expect(JSON.parse(out).files[0].findings).toEqual([]);
    expect(code).toBe(0);
  });
});

/** The estimate with costs of hours and a margin typed, and recalculated by being made anew. */
async function priced(file: string) {
  const settings = { fan: 1.5, dwelling: 2, rate: 60, margin: 20 };
  const { readFileSync } = await import("node:fs");
  const { SheetModel } = await import("../../src/sheet");
  const { worksheetFunctions } = await import("../../functions");
  const workbook = Workbook.open(readFileSync(file));
  const model = new SheetModel(workbook, worksheetFunctions);
  const typed: Readonly<Record<string, number>> = {
    "Hours for a fan": settings.fan,
    "Hours for a dwelling": settings.dwelling,
    "Cost of an hour": settings.rate,
    "Margin on the price (%)": settings.margin,
  };
  const job = workbook.sheet("Job");
  for (let row = 0; row < 60; row++) {
    const value = typed[String(job?.cell(row, 0)?.value)];
    if (value !== undefined) model.set("Job", row, 1, value);
  }
  return { bytes: workbook.save(), settings };
}

describe("a list of lots", () => {
  it("is taken as lots, not as fans", async () => {
    const { code, out } = await call(at("counted.csv"));
    expect(out).toContain("A list of 250 lots, no readings of fans");
    expect(code).toBe(4);
  });

  it("stands under another edition beside its own, toilets with a rate there", async () => {
    const { out } = await call("--order", "--under", "IRC-2021", "--json", at("counted.csv.xlsx"));
    const toilets = rowsOf(out, "rates").find(([room]) => room === "toilet");
    // IRC 2021, table M1505.4.4: 50 cfm on demand in bathrooms and toilet rooms.
    expect(toilets?.slice(4)).toEqual(["none required", "none required", 50, 50]);
  });

  it("is known by no more than the headings that a refusal names, which are those of our Dwellings sheet too", async () => {
    const { notes } = await call("--estimate", at("none.xlsx"), at("fans.csv"));
    const headings = /headings such as (.*)/.exec(notes)?.[1]?.replaceAll(", ", ",");
    writeFileSync(at("named.csv"), `${headings}\n1,Avocet,1,1800,3,2\n2,Teal,1,2200,4,3\n`);
    const { out } = await call(
      "--estimate",
      at("named.xlsx"),
      "--edition",
      "IRC-2021",
      at("named.csv"),
    );
    expect(out).toContain("2 dwellings, 5 fans planned; IRC-2021");
  });

  it("in German with a row a room is planned in metric units, fans of a list in cfm among them", async () => {
    const rows = Array.from(
      { length: 3 },
      (_, i) => `Los ${i + 1};Typ A;BA 1;165,5;3;Badezimmer;Bad;Dauerbetrieb;ja`,
    );
    writeFileSync(
      at("lose.csv"),
      Buffer.from(
        `Los;Haustyp;Bauabschnitt;Wohnfläche (m²);Schlafzimmer;Raum;Raumart;Betrieb;Ganze Wohnung\n${rows.join("\n")}\n`,
        "latin1",
      ),
    );
    const { out } = await call(
      ...["--estimate", at("lose.xlsx"), "--edition", "62.2-2019", "--json"],
      ...["lose.csv", "fans.csv"].map(at),
    );
    // 0.15 × 165.5 + 3.5 × (3 + 1) = 38.825 L/s (62.2, eq. 4.1b, from memory): 110 cfm is 51.9 L/s.
    const [rate] = rowsOf(out, "rates");
    expect(rate?.slice(0, 4)).toEqual(["bathroom", "continuous", "the dwelling too", 3]);
    expect(rate?.[4]).toBeCloseTo(38.825, 6);
    const [fan] = rowsOf(out, "fans");
    expect([fan?.[0], fan?.[2]]).toEqual(["Quiet 110", 3]);
    // 1 cfm is 0.028316846592 m³ a minute (by definition of the inch), given to four digits.
    expect(fan?.[1]).toBeCloseTo((110 * 0.028316846592 * 1000) / 60, 2);
  });

  it.each([
    [
      "# Beds,Bath fans,Conditioned sqft,Building",
      "Unit #,Plan name,Building,Conditioned sqft,# Beds,Bath fans,Laundry exhaust\nA-1,Studio,A,520,1,1,0\nA-2,2BR,A,980,2,2,1\n",
      ["bathroom", "continuous", "the dwelling too", 2, 30.6, 51.9],
      "columns that were not used: Building",
    ],
    [
      "Nombre de chambres",
      "Parcelle;Type;Tranche;Surface habitable (m²);Nombre de chambres;Salles de bains;WC\nP1;T3;1;68,5;2;1;1\nP2;T4;1;92,0;3;1;1\n",
      // 0.15 × 68.5 + 3.5 × 3 and 0.15 × 92 + 3.5 × 4 (62.2, eq. 4.1b, from memory).
      ["bathroom", "continuous", "the dwelling too", 2, 20.775, 27.8],
      "no fan is said to run continuously",
    ],
  ])("under headings that count, as %s, are not taken for rooms", async (_, text, rate, told) => {
    writeFileSync(at("counts.csv"), text);
    const { out, notes } = await call(
      ...["--estimate", at("counts.xlsx"), "--replace", "--edition", "62.2-2019", "--json"],
      at("counts.csv"),
    );
    const [first] = rowsOf(out, "rates");
    expect(
      first?.map((cell) => (typeof cell === "number" ? Number(cell.toFixed(6)) : cell)),
    ).toEqual(rate);
    expect(notes).toContain(told);
    expect(notes).not.toContain("rooms of no known kind");
  });

  it.each([
    [
      "Fan,Rated flow (cfm),Cost\nA 80,80,92\nHood 200,200,210\n",
      [
        ["A 80", 80, 12, 92],
        ["Hood 200", 200, 12, 210],
      ],
    ],
    [
      "Bezeichnung;Luftmenge (m³/h);Preis\nL 150;150;75,50 €\nDunsthaube;400;98,00 €\nSumme;;173,50 €\n",
      [
        ["L 150", 88.29, 12, 75.5],
        ["Dunsthaube", 235.4, 12, 98],
      ],
    ],
    [
      'Description,Airflow,Price each\n"Bath fan, 80",80,$92.00\n"Range hood, 200",200,"$1,210.00"\nTotals,,\n',
      [
        ["Bath fan, 80", 80, 12, 92],
        ["Range hood, 200", 200, 12, 1210],
      ],
    ],
  ] as const)(
    "that count the units of a plan are priced from a catalogue in an estimator's own words: %s",
    async (text, bought) => {
      writeFileSync(
        at("units.csv"),
        "Unit type,Units,Area ft2,Bedrooms,1/2 Bath,Range hood\nT1,4,700,1,1,1\n\nT2,8,700,1,1,1\nTotal,12,,,,\n",
      );
      writeFileSync(at("offer.csv"), text);
      const { out } = await call(
        ...["--estimate", at("units.xlsx"), "--replace", "--edition", "IRC-2021", "--json"],
        ...["units.csv", "offer.csv"].map(at),
      );
      expect(rowsOf(out, "fans").map((row) => row.slice(0, 4))).toEqual(bought);
      expect(rowsOf(out, "rates").map(([room]) => room)).toContain("toilet");
    },
  );

  it("of which none has a room are refused before anything is written", async () => {
    writeFileSync(at("bare.csv"), "Lot,Plan,Floor area,Bedrooms\n1,A,1800,3\n2,A,1800,3\n");
    const { code, notes } = await call("--estimate", at("bare.xlsx"), at("bare.csv"));
    expect([code, existsSync(at("bare.xlsx"))]).toEqual([2, false]);
    expect(notes).toContain("None of the 2 lots lists a room with a fan: give them columns");
  });

  it("whose ducts are not allowed for their fans says which would be, in the schedule's own headings", async () => {
    writeFileSync(
      at("ducts.csv"),
      `Lot,Plan,Floor area,Bedrooms,Room,Room kind,Duty,For the whole dwelling,Duct kind,Duct diameter (in),Duct length (ft),Elbows
Lot 1,A,1800,3,Bath,bathroom,on demand,no,flex,4,12,1
Lot 1,A,1800,3,Kitchen,kitchen hood,on demand,no,smooth,6,14,1
`,
    );
    const { out } = await call(
      ...["--estimate", at("ducts.xlsx"), "--edition", "IRC-2021"],
      ...["ducts.csv", "fans.csv"].map(at),
    );
    // IRC 2021, table M1504.2 (read): at 80 cfm flex 4 in may be 4 ft, flex 5 in 81 ft; an elbow takes 15.
    expect(out).toContain("1 of flex 4 do not pass for fans of 80 cfm: no length of it may be");
    expect(out).toContain("flex 5 would do");
    expect(out).not.toContain("of smooth 6 do not pass");
  });

  it("says of which file nothing was taken, and under another edition which fans are too small", async () => {
    writeFileSync(at("few.csv"), "Lot,Floor area,Bedrooms,Kitchens\nL1,1500,3,1\nL2,1500,3,1\n");
    writeFileSync(at("odd.csv"), "Colour,Finish\nwhite,matt\n");
    writeFileSync(at("small.csv"), "Model,Rated flow,Cost\nK110,110,70\n");
    const made = await call(
      ...["--estimate", at("few.xlsx"), "--edition", "IRC-2021"],
      ...["few.csv", "odd.csv", "small.csv"].map(at),
    );
    expect(made.notes).toContain("odd.csv: nothing was taken from it");
    expect(made.notes).not.toContain("small.csv: nothing");
    const { out } = await call("--order", "--under", "62.2-2016", at("few.xlsx"));
    // 62.2-2016, table 5.1 (from memory): 300 cfm of a kitchen that is no hood, unless it is enclosed.
    expect(out).toContain("Under 62.2-2016: 2 fans cannot be chosen");
  });

  it("asks for headings where a file holds no lots, and for a name that ends in .xlsx", async () => {
    const none = await call("--estimate", at("x.xlsx"), at("fans.csv"));
    expect([none.code, none.notes]).toEqual([2, expect.stringContaining("no list of lots")]);
    const wrong = await call("--estimate", at("x.csv"), at("counted.csv"));
    expect(wrong.notes).toContain("ends in .xlsx");
  });
});
