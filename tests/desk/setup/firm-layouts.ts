import { Workbook } from "../../../src/workbook";

/** A firm's workbook with one slip, and what a story does with it. All of them are invented. */
export interface FirmLayout {
  readonly name: string;
  readonly sheet: string;
  readonly bytes: () => Uint8Array;
  /** The cell of the slip: a verdict that its own flow and rate contradict. */
  readonly slip: string;
  /** The line to take a role away from, as the Fit screen calls it. */
  readonly corrects: { readonly role: string; readonly line: string };
}

type Line = readonly (string | number | null)[];

function bookOf(sheets: Readonly<Record<string, readonly Line[]>>): () => Uint8Array {
  return () => {
    const workbook = Workbook.create();
    for (const [name, lines] of Object.entries(sheets))
      workbook.addSheet(name, {
        rows: lines.map((line) => line.map((value) => ({ value: value ?? "" }))),
      });
    return workbook.save();
  };
}

/** Flow through an opening by the trade's 1.07 (cfm, in², Pa), or in L/s and m³/h with cm². */
const constants = { cfm: 1.07, "L/s": 0.07827, "m³/h": 0.2818 } as const;
const flow = (unit: keyof typeof constants, area: number, pressure: number) =>
  Math.round(constants[unit] * area * Math.sqrt(Math.abs(pressure)) * 10) / 10;

const pressures = [4.1, 2.9, 5.3, 3.6, 2.2, 6.1, 4.8, 3.1, 5.7, 2.6, 4.4, 3.9];
const slip = 4;

const german = pressures.map((pressure, i) => {
  const area = i % 2 ? 95 : 176.7;
  const required = i % 2 ? 40 : 60;
  const given = flow("m³/h", area, pressure);
  const word = i === slip ? "n.i.O." : given >= required ? "i.O." : "n.i.O.";
  const duty = i % 4 === 1 ? "Pendel" : "Dauer";
  const room = i % 2 ? "Bad" : "Küche";
  return [`WE ${1 + (i >> 1)}`, room, duty, area, -pressure, given, required, word, "Kr"];
});

const sideBySide = pressures.map((pressure, i) => {
  const other = pressures[(i + 5) % pressures.length] as number;
  const [bath, kitchen] = [flow("cfm", 24, pressure), flow("cfm", 48, other)];
  const ok = (given: number, least: number) => (given >= least ? "ok" : "short");
  return [
    `Lot ${i + 1}`,
    ...[24, pressure, bath, 50, i === slip ? "ok" : ok(bath, 50)],
    ...[48, other, kitchen, 100, ok(kitchen, 100)],
    "calm",
  ];
});

const french = pressures.flatMap((pressure, i): Line[] => {
  const area = i % 2 ? 90 : 160;
  const given = flow("L/s", area, pressure);
  const [room, required] = i % 2 ? ["salle de bains", 14] : ["cuisine", 25];
  const word = i === slip + 1 ? "non" : given >= required ? "oui" : "non";
  const row = [room, area, pressure, given, required, word, "sec"] as const;
  return i % 3 === 0 ? [[`Logement ${1 + i / 3}`], row] : [row];
});

const dutch = Object.fromEntries(
  [0, 1, 2].map((home) => [
    `Woning ${home + 1}`,
    [
      ["Ruimte", "Opening (cm²)", "Druk (Pa)", "Debiet (m³/h)", "Eis (m³/h)", "Oordeel", "Weer"],
      ...pressures.slice(home * 4, home * 4 + 4).map((pressure, i) => {
        const area = i % 2 ? 100 : 180;
        const given = flow("m³/h", area, pressure);
        const required = i % 2 ? 50 : 75;
        const meets = home * 4 + i !== slip && given >= required;
        const word = meets ? "goed" : "fout";
        return [i % 2 ? "badkamer" : "keuken", area, pressure, given, required, word, "droog"];
      }),
    ],
  ]),
);

const spanish: Line[] = (() => {
  const rows = pressures.map((pressure, i) => {
    const area = i % 2 ? 24 : 48;
    const given = flow("cfm", area, pressure);
    const required = i % 2 ? 50 : 100;
    const word = i === slip ? "cumple" : given >= required ? "cumple" : "no cumple";
    const home = `Vivienda ${1 + (i >> 1)}`;
    return [home, i % 2 ? "baño" : "cocina", area, pressure, given, required, word, "seco"];
  });
  const heads = [
    ...["Vivienda", "Local", "Abertura (in²)", "Presión (Pa)", "Caudal (cfm)"],
    ...["Exigido (cfm)", "Resultado", "Tiempo"],
  ];
  return heads.map((head, at) => [head, ...rows.map((row) => row[at] as string | number)]);
})();

export const firmLayouts: readonly FirmLayout[] = [
  {
    name: "a German list with the gauge's own sign",
    sheet: "Messung",
    bytes: bookOf({
      Messung: [
        ["Wohnung", "Raum", "Betrieb", "Loch [cm²]", "Kasten [Pa]", "Volumenstrom [m³/h]"].concat([
          "Soll [m³/h]",
          "Ergebnis",
          "Prüfer",
        ]),
        ...german,
      ],
    }),
    slip: `H${slip + 2}`,
    corrects: { role: "tester", line: "Prüfer" },
  },
  {
    name: "an English book with fans side by side",
    sheet: "Lots",
    bytes: bookOf({
      Lots: [
        ["Lot"].concat(
          ...["Bath", "Kitchen"].map((room) =>
            ["in2", "Pa", "cfm", "Min cfm", "Result"].map((what) => `${room} ${what}`),
          ),
          "Weather",
        ),
        ...sideBySide,
      ],
    }),
    slip: `F${slip + 2}`,
    corrects: { role: "required", line: "Bath Min cfm" },
  },
  {
    name: "a French list grouped under dwellings",
    sheet: "Relevé",
    bytes: bookOf({
      Relevé: [
        [
          "Pièce",
          "Ouverture (cm²)",
          "Pression (Pa)",
          "Débit (L/s)",
          "Requis (L/s)",
          "Conforme",
        ].concat("Temps"),
        ...french,
      ],
    }),
    slip: `F${slip + 5}`,
    corrects: { role: "required", line: "Requis (L/s)" },
  },
  {
    name: "a Dutch book with a sheet a dwelling",
    sheet: "Woning 2",
    bytes: bookOf(dutch),
    slip: "F2",
    corrects: { role: "required", line: "Eis (m³/h)" },
  },
  {
    name: "a Spanish sheet with fans in columns",
    sheet: "Hoja",
    bytes: bookOf({ Hoja: spanish }),
    slip: `${String.fromCharCode(66 + slip)}7`,
    corrects: { role: "required", line: "Exigido (cfm)" },
  },
];
