import type { ReadWorkbook } from "../../src/reading";
import { type Made, sheet, workbook } from "./books";
import { type Dice, dice } from "./dice";
import { decoys, languages, type Tongue } from "./tongues";

/** A workbook as some firm might keep it, and what stands where in it. */
export interface Invented {
  readonly book: ReadWorkbook;
  /** For each sheet the lines of each role, over all blocks, and the readings. */
  readonly expected: readonly {
    readonly sheet: string;
    readonly lines: Readonly<Record<string, readonly number[]>>;
    readonly readings: number;
  }[];
  readonly turned: boolean;
  readonly about: string;
  /** The texts over its lines, and the row of its first fan where a row a fan is kept. */
  readonly heads: readonly string[];
  readonly first: number | undefined;
}

interface Column {
  readonly role: string;
  readonly heading: string;
  readonly parent: string;
  readonly unit: string;
  readonly block: number;
}

interface Fan {
  readonly dwelling: string;
  readonly room: string;
  readonly duty: string;
  readonly opening: number;
  readonly pressure: number;
  readonly required: number;
  readonly tester: string;
  readonly date: number;
  readonly read: boolean;
}

interface Style {
  readonly tongue: Tongue;
  readonly system: {
    readonly flow: string;
    readonly area: string;
    readonly diameter: string;
    readonly constant: number;
    readonly sizes: readonly number[];
    readonly rates: readonly number[];
    readonly factor: number;
  };
  readonly sign: 1 | -1;
  readonly formulas: boolean;
  readonly constant: number;
  readonly openings: boolean;
  readonly round: boolean;
  readonly unitsIn: "heading" | "row" | "none";
  readonly band: boolean;
  readonly rounded: boolean;
}

/** Areas in the sheet's unit; a diameter in its unit times factor gives the area's length unit. */
const systems = [
  {
    flow: "cfm",
    area: "in²",
    diameter: "in",
    constant: 1.07,
    sizes: [12, 24, 48, 80],
    rates: [50, 100, 20],
    factor: 1,
  },
  {
    flow: "L/s",
    area: "cm²",
    diameter: "mm",
    constant: 0.0783,
    sizes: [60, 120, 240, 480],
    rates: [15, 30, 8],
    factor: 0.1,
  },
  {
    flow: "m³/h",
    area: "cm²",
    diameter: "mm",
    constant: 0.2818,
    sizes: [60, 120, 240, 480],
    rates: [45, 60, 20],
    factor: 0.1,
  },
] as const;

export function invent(seed: number): Invented {
  const d = dice(seed);
  const tongue = d.pick(languages);
  const style: Style = {
    tongue,
    system: tongue.name === "English" ? d.pick(systems) : d.pick(systems.slice(1)),
    sign: d.chance(0.4) ? -1 : 1,
    formulas: d.chance(0.7),
    constant: 0,
    openings: d.chance(0.25),
    round: d.chance(0.2),
    unitsIn: d.pick(["heading", "heading", "heading", "row", "none"]),
    band: d.chance(0.2),
    rounded: d.chance(0.25),
  };
  const own = {
    ...style,
    constant: Number((style.system.constant * (1 + (d.number() - 0.5) * 0.1)).toPrecision(3)),
  };
  const layout = d.pick([
    "rows",
    "rows",
    "rows",
    "grouped",
    "side",
    "columns",
    "cards",
    "sheets",
  ] as const);
  if (layout === "side") return sideBySide(d, own);
  const columns = columnsOf(
    d,
    own,
    layout === "grouped" || layout === "cards" || layout === "sheets",
  );
  const about = `${layout}, ${tongue.name}, ${own.formulas ? "formulas" : "values"}, units in ${own.unitsIn}`;
  const heads = columns.map(({ heading }) => heading);
  if (layout === "columns") return { ...inColumns(d, own, columns), about, heads };
  if (layout === "sheets") return { ...aSheetEach(d, own, columns), about, heads };
  return { ...inRows(d, own, columns, layout), about, heads };
}

function columnsOf(d: Dice, style: Style, dwellingApart: boolean): Column[] {
  const roles: string[] = [];
  if (!dwellingApart) roles.push("dwelling");
  roles.push("room");
  if (d.chance(0.75)) roles.push("duty");
  const amounts = d.shuffle(
    style.openings
      ? ["opening", "area", "pressure"]
      : style.round
        ? ["diameter", "area", "pressure"]
        : ["area", "pressure"],
  );
  roles.push(...amounts, "flow");
  if (d.chance(0.85)) roles.push("required");
  if (roles.includes("required") && d.chance(0.85)) roles.push("verdict");
  const tail = d.shuffle(["tester", "date"].filter(() => d.chance(0.6)));
  roles.push(...tail);
  // Firms put the same fields in many orders; the dwelling mostly leads.
  let ordered = roles;
  if (d.chance(0.35))
    ordered =
      d.chance(0.7) && roles[0] === "dwelling"
        ? ["dwelling", ...d.shuffle(roles.slice(1))]
        : d.shuffle(roles);
  for (const decoy of d.shuffle(decoys(style.tongue)).slice(0, d.whole(0, 3)))
    ordered.splice(d.whole(1, ordered.length), 0, decoy);
  if (d.chance(0.4)) ordered.push("note");
  return ordered.map((role) => column(d, style, role, 0));
}

function column(d: Dice, style: Style, role: string, block: number, prefix = ""): Column {
  const { tongue, system } = style;
  const words = (tongue.headings as Record<string, readonly string[]>)[role];
  const unit =
    role === "flow" || role === "required"
      ? system.flow
      : role === "pressure"
        ? "Pa"
        : role === "area"
          ? system.area
          : role === "diameter"
            ? system.diameter
            : "";
  const name = prefix + (words ? d.pick(words) : role.replace(/^decoy:/, ""));
  const heading =
    unit === "" || style.unitsIn !== "heading"
      ? name
      : d.pick([`${name} (${unit})`, `${name} [${unit}]`, `${name}, ${unit}`, `${name} ${unit}`]);
  return { role, heading, parent: "", unit, block };
}

function fans(d: Dice, style: Style, dwellings: number): Fan[][] {
  const { tongue, system } = style;
  const first = d.whole(1, 300);
  const name = d.pick(tongue.dwellings);
  const [testers, continuous, demand] = [
    d.shuffle(["KM", "JT", "Lo", "Ada", "PW"]).slice(0, d.whole(1, 3)),
    d.pick(tongue.continuous),
    d.pick(tongue.demand),
  ];
  const start = d.whole(44_000, 46_000);
  return Array.from({ length: dwellings }, (_, at) => {
    const dwelling = `${name} ${first + at}`;
    const tester = d.pick(testers);
    const rooms = d.shuffle(tongue.rooms).slice(0, d.whole(2, 4));
    return rooms.map((room): Fan => {
      const always = d.chance(0.25);
      const kitchen = tongue.kitchens.includes(room);
      return {
        dwelling,
        room,
        duty: always ? continuous : demand,
        opening: d.whole(0, 3),
        pressure: style.sign * (Math.round((1.2 + d.number() * 5.5) * 10) / 10),
        required: system.rates[always ? 2 : kitchen ? 1 : 0] as number,
        tester,
        date: start + Math.floor(at / 3),
        read: !d.chance(0.03),
      };
    });
  });
}

/** The cells of one fan; `at` names the cell of a role in formulas. */
function cellsOf(
  d: Dice,
  style: Style,
  columns: readonly Column[],
  fan: Fan,
  at: (role: string) => string,
  marks: readonly [string, string],
): Made[] {
  const { system } = style;
  const area = system.sizes[fan.opening] as number;
  const diameter = Math.round(Math.sqrt((area * 4) / Math.PI) / system.factor);
  const size = style.round ? (Math.PI / 4) * (diameter * system.factor) ** 2 : area;
  const raw = style.constant * size * Math.sqrt(Math.abs(fan.pressure));
  const flow = style.rounded ? Math.round(raw) : raw;
  const root = d
    .seeded(["SQRT(ABS(#))", "ABS(#)^0.5", "ABS(#)^(1/2)"])
    .replace("#", at("pressure"));
  const law = `${style.constant}*${at("area")}*${root}`;
  return columns.map(({ role }): Made => {
    switch (role) {
      case "dwelling":
        return fan.dwelling;
      case "room":
        return fan.room;
      case "duty":
        return fan.duty;
      case "opening":
        return "ABCD"[fan.opening]!;
      case "diameter":
        return diameter;
      case "area":
        return style.round && style.formulas
          ? { f: `PI()/4*(${at("diameter")}*${system.factor})^2`, v: size }
          : style.round
            ? Math.round(size * 10) / 10
            : area;
      case "pressure":
        return fan.read ? (d.chance(0.01) ? `${fan.pressure} Pa` : fan.pressure) : null;
      case "flow": {
        if (!style.formulas)
          return fan.read ? (style.rounded ? flow : Math.round(flow * 10) / 10) : null;
        return { f: style.rounded ? `ROUND(${law},0)` : law, v: fan.read ? flow : 0 };
      }
      case "required":
        return fan.required;
      case "verdict": {
        const word = flow >= fan.required ? marks[0] : marks[1];
        return style.formulas
          ? {
              f: `IF(${at("flow")}>=${at("required")},"${marks[0]}","${marks[1]}")`,
              v: fan.read ? word : marks[1],
            }
          : fan.read
            ? word
            : null;
      }
      case "tester":
        return fan.tester;
      case "date":
        return fan.date;
      case "note":
        return d.chance(0.12)
          ? d.pick(["loud", "grille cleaned", "2x", "siehe Foto", "door shut"])
          : null;
      default:
        return decoyValue(d, role, fan);
    }
  });
}

function decoyValue(d: Dice, role: string, fan: Fan): Made {
  if (/pres|druk|druck/i.test(role)) return Math.round((d.number() * 3 + 0.2) * 10) / 10;
  if (/area|fl[äa]che|superf|surface|opperv/i.test(role))
    return 60 + 5 * (fan.dwelling.length + (fan.date % 9));
  if (/cost|preis|prix|precio|prijs/i.test(role)) return 80 + 10 * d.whole(0, 9);
  if (/mail/i.test(role)) return "site@example.org";
  if (/watt/i.test(role)) return 8 + d.whole(0, 20);
  return d.pick(["K-100", "K-150", "T2"]);
}

const name = (row: number, col: number) => `${String.fromCharCode(65 + col)}${row + 1}`;

function heads(style: Style, columns: readonly Column[]): Made[][] {
  const rows: Made[][] = [columns.map(({ heading }) => heading)];
  if (style.unitsIn === "row")
    rows.push(columns.map(({ unit }) => (unit === "" ? null : `(${unit})`)));
  return rows;
}

function linesOf(columns: readonly Column[]): Record<string, number[]> {
  const lines: Record<string, number[]> = {};
  columns.forEach(({ role }, line) => {
    if (role !== "note" && !role.startsWith("decoy:")) lines[role] = [...(lines[role] ?? []), line];
  });
  return lines;
}

function titles(d: Dice, style: Style): Made[][] {
  const rows: Made[][] = d.chance(0.6) ? [[d.pick(style.tongue.titles)], []] : [];
  if (style.unitsIn === "none" && d.chance(0.5))
    rows.unshift([`${style.system.flow}, Pa, ${style.system.area}`]);
  return rows;
}

function inRows(
  d: Dice,
  style: Style,
  columns: readonly Column[],
  layout: "rows" | "grouped" | "cards",
): Omit<Invented, "about" | "heads"> {
  const rows: Made[][] = titles(d, style);
  const marks = d.pick(style.tongue.verdicts);
  const groups = fans(d, style, layout === "rows" ? d.whole(6, 30) : d.whole(5, 14));
  const at = (role: string) =>
    name(
      rows.length,
      columns.findIndex((entry) => entry.role === role),
    );
  if (layout !== "cards") rows.push(...heads(style, columns));
  const start = rows.length;
  let readings = 0;
  const flow = columns.findIndex(({ role }) => role === "flow");
  for (const group of groups) {
    if (layout === "grouped") rows.push([group[0]!.dwelling]);
    if (layout === "cards")
      rows.push(
        [d.pick(style.tongue.headings.dwelling), group[0]!.dwelling],
        ...heads(style, columns),
      );
    const first = rows.length;
    for (const fan of group) {
      rows.push(cellsOf(d, style, columns, fan, at, marks));
      if (fan.read) readings++;
    }
    if (layout === "grouped" && style.formulas && d.chance(0.9)) {
      const total: Made[] = columns.map(() => null);
      total[0] = style.tongue.total;
      if (flow > 0)
        total[flow] = { f: `SUM(${name(first, flow)}:${name(rows.length - 1, flow)})`, v: 100 };
      rows.push(total);
    }
    if (layout !== "rows") rows.push([]);
  }
  const sheets = [sheet("Data", rows)];
  return {
    book: workbook([...sheets, ...openingsList(style)]),
    expected: [{ sheet: "Data", lines: linesOf(columns), readings }],
    turned: false,
    first: layout === "rows" ? start : undefined,
  };
}

function openingsList(style: Style) {
  if (!style.openings) return [];
  const { headings } = style.tongue;
  return [
    sheet("Box", [
      [headings.opening[0]!, `${headings.area[0]} (${style.system.area})`],
      ...style.system.sizes.map((size, at): Made[] => ["ABCD"[at]!, size]),
    ]),
  ];
}

function aSheetEach(
  d: Dice,
  style: Style,
  columns: readonly Column[],
): Omit<Invented, "about" | "heads"> {
  const marks = d.pick(style.tongue.verdicts);
  const top = titles(d, style);
  const head = heads(style, columns);
  const expected: Invented["expected"][number][] = [];
  const label = d.pick(style.tongue.headings.dwelling);
  const sheets = fans(d, style, d.whole(3, 12)).map((group) => {
    const rows: Made[][] = [...top, [label, group[0]!.dwelling], [], ...head];
    const at = (role: string) =>
      name(
        rows.length,
        columns.findIndex((entry) => entry.role === role),
      );
    for (const fan of group) rows.push(cellsOf(d, style, columns, fan, at, marks));
    expected.push({
      sheet: group[0]!.dwelling,
      lines: linesOf(columns),
      readings: group.filter(({ read }) => read).length,
    });
    return sheet(group[0]!.dwelling, rows);
  });
  return {
    book: workbook([...sheets, ...openingsList(style)]),
    expected,
    turned: false,
    first: undefined,
  };
}

function inColumns(
  d: Dice,
  style: Style,
  columns: readonly Column[],
): Omit<Invented, "about" | "heads"> {
  const lead = titles(d, style);
  const marks = d.pick(style.tongue.verdicts);
  const all = fans(d, style, d.whole(3, 6)).flat().slice(0, 20);
  const lines = columns.map((_, at) => lead.length + at);
  const made = all.map((fan, at) =>
    cellsOf(
      d,
      style,
      columns,
      fan,
      (role) =>
        name(
          lead.length + columns.findIndex((entry) => entry.role === role),
          at + (style.unitsIn === "row" ? 2 : 1),
        ),
      marks,
    ),
  );
  const rows: Made[][] = [
    ...lead,
    ...columns.map(({ heading, unit }, at): Made[] => [
      heading,
      ...(style.unitsIn === "row" ? [unit === "" ? null : unit] : []),
      ...made.map((cells) => cells[at]!),
    ]),
  ];
  const found = linesOf(columns);
  const expected = Object.fromEntries(
    Object.entries(found).map(([role, own]) => [role, own.map((line) => lines[line]!)]),
  );
  return {
    book: workbook([sheet("Data", rows), ...openingsList(style)]),
    expected: [{ sheet: "Data", lines: expected, readings: all.filter(({ read }) => read).length }],
    turned: true,
    first: undefined,
  };
}

/** A row a dwelling; the fans of its rooms side by side, under the rooms' names. */
function sideBySide(d: Dice, style: Style): Invented {
  const count = d.whole(2, 4);
  const rooms = style.tongue.rooms.slice(0, count);
  const own = ["pressure", "area", "flow", ...(d.chance(0.5) ? ["verdict"] : [])];
  const order = d.chance(0.5) ? own : ["area", "pressure", ...own.slice(2)];
  const shared = [
    "dwelling",
    ...(d.chance(0.5) ? ["tester"] : []),
    ...(d.chance(0.5) ? ["date"] : []),
  ];
  const merged = d.chance(0.4);
  const columns = [
    ...shared.map((role) => column(d, { ...style, unitsIn: "heading" }, role, -1)),
    ...rooms.flatMap((room, block) =>
      order.map((role) => ({
        ...column(dice(7), { ...style, unitsIn: "heading" }, role, block, merged ? "" : `${room} `),
        parent: room,
      })),
    ),
  ];
  const rows: Made[][] = titles(d, style);
  const marks = d.pick(style.tongue.verdicts);
  const areas: [number, number, number, number][] = [];
  if (merged) {
    const top: Made[] = columns.map(() => null);
    rooms.forEach((room, block) => {
      const left = shared.length + block * order.length;
      top[left] = room;
      areas.push([rows.length, left, rows.length, left + order.length - 1]);
    });
    rows.push(top);
  }
  rows.push(columns.map(({ heading }) => heading));
  let readings = 0;
  for (const group of fans(d, style, d.whole(8, 24))) {
    const row: Made[] = [];
    const fill = (part: readonly Column[], fan: Fan, block: number) => {
      const at = (role: string) =>
        name(
          rows.length,
          role === "required" ? 0 : shared.length + block * order.length + order.indexOf(role),
        );
      row.push(
        ...cellsOf(d, { ...style, round: false }, part, fan, at, marks).map(
          (cell, i): Made =>
            part[i]!.role === "verdict" && style.formulas
              ? {
                  f: `IF(${at("flow")}>=${fan.required},"${marks[0]}","${marks[1]}")`,
                  v: typeof cell === "object" && cell !== null && "v" in cell ? cell.v : cell,
                }
              : cell,
        ),
      );
    };
    fill(columns.slice(0, shared.length), group[0]!, -1);
    rooms.forEach((_, block) => {
      const fan = group[block];
      const part = columns.filter((entry) => entry.block === block);
      if (!fan?.read) row.push(...part.map(() => null));
      else {
        readings++;
        fill(part, fan, block);
      }
    });
    rows.push(row);
  }
  return {
    book: workbook([sheet("Data", rows, areas)]),
    expected: [{ sheet: "Data", lines: linesOf(columns), readings }],
    turned: false,
    first: undefined,
    heads: columns.map(({ heading }) => heading),
    about: `side by side, ${style.tongue.name}, ${style.formulas ? "formulas" : "values"}, ${merged ? "rooms above" : "rooms in headings"}`,
  };
}
