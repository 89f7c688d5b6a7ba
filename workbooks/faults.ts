import { cellName } from "../src/cells";
import { columnIndex, type FindingKind, firstRow, formulasOf, plainPlan } from "../src/job";
import { type JobRows, type Row, sizeOf } from "../src/new-job";
import { serial } from "./job-rows";

/** One planted fault: where the check should point, as what, and what was done. */
export interface Planted {
  readonly sheet: string;
  readonly cell: string;
  readonly kind: FindingKind;
  readonly planted: string;
}

/** Plants the faults of the demo job and returns the answer key. */
export function plantFaults(rows: JobRows): Planted[] {
  const key: Planted[] = [];
  const plant = (
    sheet: "fans" | "boxes" | "dwellings",
    i: number,
    field: string,
    kind: FindingKind,
    planted: string,
    change: (row: Row) => void,
  ) => {
    const row = rows[sheet][i];
    if (!row) throw new Error(`no row ${i} on ${sheet}`);
    change(row);
    const layout = plainPlan[sheet];
    const cell = cellName(firstRow + i, columnIndex(layout, field));
    key.push({ sheet: layout.title, cell, kind, planted });
  };
  const fan = (i: number, field: string, kind: FindingKind, planted: string, change: Row) =>
    plant("fans", i, field, kind, planted, (row) => Object.assign(row, change));
  const find = (wanted: (row: Row, i: number) => boolean, from: number) => {
    const i = rows.fans.findIndex((row, at) => at >= from && wanted(row, at));
    if (i < 0) throw new Error(`no fan row for a fault from row ${from}`);
    return i;
  };
  const demand = (row: Row) => row.roomKind === "bathroom" && row.duty === "on demand";
  const readings = (
    a: number | string | null,
    b: number | string | null,
    c: number | string | null,
  ) => ({
    reading1: a,
    reading2: b,
    reading3: c,
  });

  // Readings
  fan(1, "reading1", "pressure-above", "a smaller opening was used", {
    openings: "A",
    ...readings(16.2, 16.4, 16.1),
  });
  fan(4, "reading1", "pressure-below", "a larger opening was used", {
    openings: "D",
    ...readings(0.5, 0.6, 0.5),
  });
  fan(7, "reading1", "pressure-negative", "hoses swapped", readings(-4.1, -4, -4.2));
  fan(9, "reading1", "pressure-blank", "not measured", readings(null, null, null));
  fan(11, "reading2", "number-as-text", "unit typed with the number", { reading2: "4.1 Pa" });
  const inches = find(demand, 12);
  fan(inches, "reading1", "pressure-unit", "read in inches of water", {
    ...scaled(rows.fans[inches] as Row, 1 / 249.089, 3),
  });
  const hecto = find(demand, inches + 1);
  fan(hecto, "reading1", "pressure-unit", "read in hectopascal", {
    ...scaled(rows.fans[hecto] as Row, 0.01, 3),
  });
  fan(20, "reading1", "readings-apart", "one reading in a gust", {
    reading3: (rows.fans[20]?.reading1 as number) + 2.6,
  });
  const block = 24;
  const first = rows.fans[block] as Row;
  for (let i = block + 1; i < block + 5; i++)
    Object.assign(rows.fans[i] as Row, readings(4.4, 4.3, 4.4));
  Object.assign(first, readings(4.4, 4.3, 4.4));
  fan(block + 1, "reading1", "pressure-repeated", "five rows copied down", {});

  // Openings and boxes
  fan(31, "openings", "opening-unknown", "label mistyped", { openings: "F" });
  const two = find((row) => String(row.openings).includes("+"), 32);
  const [, second] = String(rows.fans[two]?.openings).split("+");
  fan(two, "area", "opening-uncounted", "one of two openings counted", {
    area: areaOfLabel(rows, String(rows.fans[two]?.box), String(second)),
  });
  const metric = find((row) => !String(row.openings).includes("+"), two + 1);
  const one = rows.fans[metric] as Row;
  fan(metric, "area", "area-unit", "area typed in cm²", {
    area: round2(6.4516 * areaOfLabel(rows, String(one.box), String(one.openings))),
  });
  const size = find((row) => /^[AB]$/.test(String(row.openings)), metric + 1);
  const sized = rows.fans[size] as Row;
  fan(size, "area", "area-is-size", "diameter typed as the area", {
    area: sizeOfLabel(rows, String(sized.box), String(sized.openings)),
  });
  fan(size + 2, "box", "box-unknown", "box mistyped", { box: "Box 7" });
  fan(size + 4, "constant", "constant-differs", "constant typed over", { constant: 1.17 });
  plant("boxes", 10, "area", "area-not-of-sizes", "area typed from an older box", (row) =>
    Object.assign(row, { area: 52.5 }),
  );
  plant("boxes", 1, "checked", "box-overdue", "check older than a year", (row) =>
    Object.assign(row, { checked: serial("2025-08-20") }),
  );
  plant("boxes", 13, "checked", "box-unchecked", "no check recorded", (row) =>
    Object.assign(row, { checked: null }),
  );
  rows.boxes.push({ ...(rows.boxes[3] as Row), size1: 6.25 });
  plant(
    "boxes",
    rows.boxes.length - 1,
    "opening",
    "opening-repeated",
    "label used twice",
    () => {},
  );

  // Identity
  const tail = size + 6;
  fan(tail, "tag", "fan-repeated", "tag of the row above", {
    tag: rows.fans[tail - 1]?.tag as string,
    dwelling: rows.fans[tail - 1]?.dwelling as string,
  });
  const strayed = find(demand, tail + 2);
  fan(strayed, "dwelling", "dwelling-unknown", "lot mistyped", { dwelling: "Lot 62" });
  const room = find(demand, strayed + 2);
  fan(room, "roomKind", "room-unknown", "room kind mistyped", { roomKind: "bathrm" });
  fan(room + 2, "duty", "duty-missing", "duty left out", { duty: null });
  rows.dwellings.push({ dwelling: "Lot 27", plan: "Alder", floor: 1180, bedrooms: 2 });
  plant(
    "dwellings",
    rows.dwellings.length - 1,
    "dwelling",
    "dwelling-empty",
    "no fan listed",
    () => {},
  );
  plant("dwellings", 17, "bedrooms", "dwelling-size", "bedrooms left out", (row) =>
    Object.assign(row, { bedrooms: null }),
  );

  // Rates
  const short = find(demand, room + 4);
  fan(short, "flow", "flow-short", "a weak fan", scaled(rows.fans[short] as Row, 0.42, 1));
  const weak = find((row) => row.duty === "continuous" && Number(row.rated) >= 130, short + 1);
  const home = rows.dwellings.findIndex((row) => row.dwelling === rows.fans[weak]?.dwelling);
  Object.assign(rows.fans[weak] as Row, scaled(rows.fans[weak] as Row, 0.48, 1));
  plant("dwellings", home, "provided", "dwelling-short", "a weak continuous fan", () => {});
  const copied = find(demand, weak + 1);
  fan(copied, "flow", "flow-is-rating", "rating copied into the flow", {
    flow: rows.fans[copied]?.rated as number,
  });
  const label = find(demand, copied + 1);
  fan(label, "flow", "flow-unlike-rating", "a zero too many in the rating", {
    rated: 10 * (rows.fans[label]?.rated as number),
  });

  // Formulas
  const hoodRow = find((row) => row.roomKind === "kitchen hood", label + 1);
  fan(hoodRow, "required", "formula-typed-over", "required rate typed", { required: 50 });
  const other = find(demand, hoodRow + 1);
  fan(other, "flow", "value-differs", "formula points one row up", {
    flow: {
      formula: formulasOf("fans", firstRow + other - 1, sizeOf(rows), plainPlan).flow as string,
    },
  });
  fan(other + 2, "status", "cell-error", "the cell it needs was deleted", {
    status: { formula: "FANROW.RANGE_STATUS(#REF!,1,8)" },
  });

  // Who and when
  fan(other + 3, "tester", "tester-missing", "tester left out", { tester: null });
  fan(other + 4, "date", "date-missing", "date left out", { date: null });
  fan(other + 5, "date", "date-wrong", "date typed as words", { date: "14 Oct" });
  fan(other + 6, "date", "date-wrong", "year mistyped", { date: serial("2062-10-14") });
  return key;
}

/** The stored value of one flow, changed in the file while its formula stays: planted last. */
export function staleFlow(rows: JobRows, key: Planted[]): { row: number; factor: number } {
  const taken = new Set(key.filter(({ sheet }) => sheet === "Fans").map(({ cell }) => rowOf(cell)));
  const row = rows.fans.findLastIndex(
    (fan, i) => fan.roomKind === "bathroom" && fan.duty === "on demand" && !taken.has(firstRow + i),
  );
  const layout = plainPlan.fans;
  if (row < 0) throw new Error("no fan row for the stale value");
  key.push({
    sheet: layout.title,
    cell: cellName(firstRow + row, columnIndex(layout, "flow")),
    kind: "value-stale",
    planted: "stored flow changed outside the spreadsheet",
  });
  return { row: firstRow + row, factor: 1.2 };
}

function rowOf(cell: string): number {
  return Number(/\d+$/.exec(cell)?.[0]) - 1;
}

function scaled(row: Row, factor: number, digits: number): Row {
  const keys = ["reading1", "reading2", "reading3"];
  return Object.fromEntries(
    keys.map((key) => [key, Number(((row[key] as number) * factor).toFixed(digits))]),
  );
}

function opening(rows: JobRows, box: string, label: string): Row {
  const found = rows.boxes.find((row) => row.box === box && row.opening === label);
  if (!found) throw new Error(`no opening ${label} in ${box}`);
  return found;
}

function sizeOfLabel(rows: JobRows, box: string, label: string): number {
  return opening(rows, box, label).size1 as number;
}

function areaOfLabel(rows: JobRows, box: string, label: string): number {
  const { size1, size2 } = opening(rows, box, label) as { size1: number; size2: number | null };
  return round2(size2 ? size1 * size2 : (Math.PI / 4) * size1 ** 2);
}

function round2(value: number): number {
  return Math.round(100 * value) / 100;
}
