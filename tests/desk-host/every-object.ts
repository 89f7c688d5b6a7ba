import { worksheetFunctions } from "../../functions";
import { Listeners } from "../../src/desk/host/change";
import { HostChart } from "../../src/desk/host/charts/host-chart";
import { Events } from "../../src/desk/host/events";
import { HostRange } from "../../src/desk/host/host-range";
import { makeDesk } from "../../src/desk/host/objects/catalog";
import { OpenBook } from "../../src/desk/host/open-book";
import type { Served } from "../../src/desk/host/wire/served";
import { Workbook } from "../../src/workbook";

const oneSeries = {
  name: "a",
  x: "Data!A1:A2",
  y: "Data!B1:B2",
  marker: "circle",
  line: "none",
  color: undefined,
} as const;

function desk() {
  const workbook = Workbook.create();
  workbook.addSheet("Data", { rows: [] });
  const events = new Events(() => {});
  const listeners = new Listeners();
  const source = { workbook, fileName: "a.xlsx", functions: worksheetFunctions, model: {} };
  return makeDesk(new OpenBook({ ...source, events, listeners }));
}

/** One object of every class, and of those below it. */
export function everyObject(): Map<string, Served> {
  const made = desk();
  const { book } = made;
  const tab = book.tab("Data");
  const cell = book.corner(tab);
  const named = book.names.add("Limit", "=5", null);
  const mark = book.marks.add(cell);
  const chart = new HostChart("Chart 1", null);
  chart.series.push({ ...oneSeries });
  const table = { name: "T", sheet: "Data", ref: "A1:B3", columns: [], headerRow: true };
  const found = new Map<string, Served>();
  const visit = (served: Served | null) => {
    if (served === null || found.has(served.members.className)) return;
    found.set(served.members.className, served);
    for (const item of served.members.items?.(served.self) ?? []) visit(item);
    for (const link of Object.values(served.members.links ?? {})) visit(link(served.self));
  };
  visit(made.workbook());
  visit(made.worksheet(tab));
  visit(made.range(new HostRange(tab, { top: 0, left: 0, bottom: 1, right: 1 })));
  visit(made.areas(cell));
  visit(made.chart({ tab, chart }));
  visit(made.name(named));
  visit(made.table({ ...table, totalsRow: false }));
  visit(made.mark({ tab, mark }));
  return found;
}
