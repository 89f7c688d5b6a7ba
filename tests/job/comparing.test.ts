import { describe, expect, it } from "vitest";
import { columnLetters } from "../../src/cells";
import type { Change, Grid } from "../../src/job";
import { compareJobs } from "./compare";
import {
  boxes,
  dwellings,
  fanHeadings,
  grid,
  jobFile,
  settings,
  soundFan,
  type TestCell,
  today,
} from "./grids";

type Fan = Partial<Record<string, TestCell>>;

const flowOf = (n: number, constant = 1.07, value = 54): TestCell => ({
  formula: `${constant}*H${n}*SQRT(I${n})`,
  value,
});

function fans(list: readonly Fan[], headings: readonly string[] = fanHeadings): Grid {
  return grid("Fans", [
    [...headings],
    ...list.map((fan, i) => {
      const cells: Fan = { ...soundFan, "Flow (cfm)": flowOf(i + 2), Fan: `B${i + 1}`, ...fan };
      return headings.map((heading) => cells[heading] ?? null);
    }),
  ]);
}

const job = (list: readonly Fan[], ...others: Grid[]) =>
  jobFile(settings, boxes, dwellings, fans(list), ...others);
const lines = (changes: readonly Change[]) =>
  changes
    .filter(({ kind }) => !kind.startsWith("finding"))
    .map(({ kind, sheet, cell, about, field, before, after }) =>
      [kind, `${sheet}!${cell}`, about, field, before, after].join("|"),
    );

describe("two states of a job", () => {
  const three = [{}, {}, {}];

  it("that are the same show no change", () => {
    expect(compareJobs(job(three), job(three), { today })).toEqual([]);
  });

  it("show what was typed, row by row, with what follows from it", () => {
    const after = [{}, { "Box pressure (Pa)": 5, "Flow (cfm)": flowOf(3, 1.07, 57.4) }, {}];
    expect(lines(compareJobs(job(three), job(after), { today }))).toEqual([
      "typed|Fans!I3|Lot 1, B2|Box pressure (Pa)|4.5|5",
      "result|Fans!J3|Lot 1, B2|Flow (cfm)|54|57.4",
    ]);
  });

  it("show rows added and removed, and match the others wherever they moved", () => {
    const before = [{}, { Fan: "gone" }, { Fan: "B3" }];
    const after = [{}, { Fan: "B3", "Flow (cfm)": flowOf(3) }, { Fan: "new" }];
    expect(lines(compareJobs(job(before), job(after), { today }))).toEqual([
      "row added|Fans!A4|Lot 1, new|||",
      "row removed|Fans!A3|Lot 1, gone|||",
    ]);
  });

  it("show a formula that changed in many rows once", () => {
    const after = three.map((_, i) => ({ "Flow (cfm)": flowOf(i + 2, 1.1) }));
    const changes = compareJobs(job(three), job(after), { today });
    const [formula] = changes.filter(({ kind }) => kind === "formula");
    expect(formula).toMatchObject({
      cell: "J2",
      before: "=1.07*H2*SQRT(I2)",
      after: "=1.1*H2*SQRT(I2)",
      rows: 3,
    });
    expect(changes.filter(({ kind }) => kind === "formula")).toHaveLength(1);
  });

  it("show a value typed over a formula", () => {
    expect(lines(compareJobs(job(three), job([{}, {}, { "Flow (cfm)": 54 }]), { today }))).toEqual([
      "formula|Fans!J4|Lot 1, B3|Flow (cfm)|=1.07*H4*SQRT(I4)|54",
    ]);
  });

  it("show settings, the edition and constants apart", () => {
    const later = grid("Job", [
      ["Setting", "Value"],
      ["Edition", "62.2-2016"],
      ["Units", "ip"],
      ["Highest pressure (Pa)", 9],
      ["Flow constant", 1.1],
    ]);
    const after = jobFile(later, boxes, dwellings, fans(three));
    expect(lines(compareJobs(job(three), after, { today }))).toEqual([
      "edition|Job!B2||Edition|IRC-2021|62.2-2016",
      "constant|Job!B5||Flow constant||1.1",
      "setting|Job!B4||Highest pressure (Pa)||9",
    ]);
  });

  it("show sheets added and removed", () => {
    const extra = (name: string) => grid(name, [["Anything"]]);
    expect(
      lines(compareJobs(job(three, extra("Old")), job(three, extra("New")), { today })),
    ).toEqual(["sheet added|New!||||", "sheet removed|Old!||||"]);
  });

  it("do not mind columns in another order", () => {
    const turned = jobFile(settings, boxes, dwellings, fans([{}], [...fanHeadings].reverse()));
    const plain = [{ "Flow (cfm)": 54.5 }];
    const straight = jobFile(settings, boxes, dwellings, fans(plain));
    const other = jobFile(settings, boxes, dwellings, fans(plain, [...fanHeadings].reverse()));
    expect(lines(compareJobs(straight, other, { today }))).toEqual([]);
    expect(lines(compareJobs(straight, turned, { today }))).not.toEqual([]);
  });

  it("show findings that are new and those that are gone", () => {
    const before = job([{}, { Tester: null }, {}]);
    const after = job([{}, {}, { Date: null }]);
    const changes = compareJobs(before, after, { today }).filter(({ kind }) =>
      kind.startsWith("finding"),
    );
    expect(changes.map(({ kind, field, about }) => `${kind}: ${field}, ${about}`)).toEqual([
      "finding new: test date missing, Lot 1, B3",
      "finding gone: tester missing, Lot 1, B2",
    ]);
  });

  it("show what was typed in a column of no field, wherever its row has moved", () => {
    const colours = (list: readonly Fan[]) =>
      jobFile(settings, boxes, dwellings, fans(list, [...fanHeadings, "Colour of cover"]));
    const fan = (name: string, colour: string) => ({ Fan: name, "Colour of cover": colour });
    const before = [fan("gone", "white"), fan("B2", "white"), fan("B3", "grey")];
    const after = [fan("B2", "white"), fan("B3", "cream")];
    const column = columnLetters(fanHeadings.length);
    expect(lines(compareJobs(colours(before), colours(after), { today }))).toEqual([
      "row removed|Fans!A2|Lot 1, gone|||",
      `typed|Fans!${column}3|Lot 1, B3||grey|cream`,
    ]);
  });

  it("name the heading of its own block where fans stand side by side", () => {
    const book = (kitchen: number) =>
      jobFile(
        grid("Homes", [
          ["Lot", "Bath in2", "Bath Pa", "Bath cfm", "Kitchen in2", "Kitchen Pa", "Kitchen cfm"],
          ...[2.5, 3.5, 4.5, 5.5, 3.1, 2.8, 4.1, 5.2, 2.2, 6.1, 4.9, 3.8].map((pressure, i) => {
            const flow = (area: number) => Math.round(10.7 * area * Math.sqrt(pressure + 1)) / 10;
            const other = i === 4 ? kitchen : pressure + 1;
            return [`Lot ${i}`, 24, pressure + 1, flow(24), 48, other, flow(48)];
          }),
        ]),
      );
    expect(lines(compareJobs(book(4.1), book(4.2), { today }))).toEqual([
      "typed|Homes!F6|Lot 4, Kitchen|Kitchen Pa|4.1|4.2",
    ]);
  });

  it("match the fans of a firm by their rooms, and one whose room alone was corrected", () => {
    const book = (rooms: readonly string[], day = 45_900) =>
      jobFile(
        grid("Log", [
          ["Lot", "Room", "Hole in2", "Pa", "cfm", "Date", "By"],
          ...rooms.map((room, i) => {
            const pressure = 2 + [...room].length * 0.3 + (i < 12 ? 0 : 1);
            const flow = Math.round(10.7 * 24 * Math.sqrt(pressure)) / 10;
            return [
              `Lot ${i % 4}`,
              room,
              24,
              pressure,
              flow,
              i === 3 ? day : 45_900,
              i < 1 ? "A" : "B",
            ];
          }),
        ]),
      );
    const rooms = ["Bath", "Main bath", "WC", "Bath", "Laundry", "?? room", "Kitchen", "Kitchen"];
    const mended = rooms.map((room) => (room === "?? room" ? "WC bath" : room));
    const found = lines(
      compareJobs(book(rooms), book([...mended, "Hall bath"], 45_901), { today }),
    );
    expect(found).toEqual([
      "row added|Log!A10|Lot 0, Hall bath|||",
      "typed|Log!F5|Lot 3, Bath|Date|2025-08-31|2025-09-01",
      "typed|Log!B7|Lot 1, WC bath|Room|?? room|WC bath",
    ]);
  });

  it("tell what several fans of a row share once", () => {
    const book = (tester: string) =>
      jobFile(
        grid("Homes", [
          [
            "Lot",
            "By",
            "Bath in2",
            "Bath Pa",
            "Bath cfm",
            "Kitchen in2",
            "Kitchen Pa",
            "Kitchen cfm",
          ],
          ...[2.5, 3.5, 4.5, 5.5, 3.1, 2.8, 4.1, 5.2, 2.2, 6.1, 4.9, 3.8].map((pressure, i) => {
            const flow = (area: number) => Math.round(10.7 * area * Math.sqrt(pressure)) / 10;
            const by = i === 4 ? tester : "KL";
            return [`Lot ${i}`, by, 24, pressure, flow(24), 48, pressure, flow(48)];
          }),
        ]),
      );
    expect(lines(compareJobs(book("KL"), book("RT"), { today }))).toEqual([
      "typed|Homes!B6|Lot 4, Bath|By|KL|RT",
    ]);
  });
});
