import { Workbook } from "../../../src/workbook";

/** A firm's own sheet with headings of its own, and a sheet of notes beside it. Invented. */
export function firmWorkbook(): Uint8Array {
  const workbook = Workbook.create();
  const heading = workbook.addStyle({ bold: true, fill: "FFE699" });
  const day = workbook.addStyle({ numberFormat: "d mmm yyyy" });
  const head = ["Apt", "Location", "Hole (sq in)", "dP (Pa)", "CFM", "Tested"];
  const rows = [
    ["4A", "bath", 18, 6.25],
    ["4B", "bath", 18, 4],
  ];
  workbook.addSheet("Tests", {
    frozenRows: 1,
    columnWidths: [8, 14, 14, 10, 10, 14],
    rows: [
      head.map((value) => ({ value, style: heading })),
      ...rows.map((row, i) => [
        ...row.map((value) => ({ value })),
        { formula: `_xldudf_FANROW_FLOW(C${i + 2},D${i + 2})`, value: 0 },
        { value: 46_100, style: day },
      ]),
    ],
  });
  workbook.addSheet("Notes", { rows: [[{ value: "Keys are with the caretaker." }]] });
  return workbook.save();
}

/** One sheet of 20,000 rows and 22 columns; the last column doubles the first. */
export function largeWorkbook(rows = 20_000, columns = 22): Uint8Array {
  const workbook = Workbook.create();
  const head = Array.from({ length: columns }, (_, col) => ({ value: `Heading ${col + 1}` }));
  const body = Array.from({ length: rows - 1 }, (_, row) => [
    ...Array.from({ length: columns - 1 }, (_, col) => ({ value: row * columns + col })),
    { formula: `A${row + 2}*2`, value: row * columns * 2 },
  ]);
  workbook.addSheet("Large", { frozenRows: 1, rows: [head, ...body] });
  return workbook.save();
}
