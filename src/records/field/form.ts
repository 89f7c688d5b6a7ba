import { kept } from "../../cells";
import { type Job, plainName, unitOf } from "../../job";
import { looks } from "../looks";
import type { Look, SheetPlan } from "../plan";
import { PlanRows, type TableColumn } from "../plan-rows";
import { printedSheet } from "../printed-page";
import { figure, nameOf } from "../words";
import { firstOpening } from "./first-opening";

/** Fan, room, duty, open first, needs, rated, opened, three readings, note. */
const columns = [12, 15, 12, 19, 8, 8, 11, 10, 10, 10, 16];
const title = "Form for the readings";
const stateOfHouse =
  "Windows and outer doors shut □  inner doors as in use □  other exhaust off □  gusts _____  baseline _____ Pa  tester _________  day _________  time _____";
/** Room to write in, points. */
const writingHeight = 22;
/** Points of a page between its margins, of the lower of the two papers. */
const pageHeight = 498;

const write: Look = { ...looks.cell, line: "around" };

/**
 * A form to write on: the dwellings in the order of their sheet, which is the way the tester walks,
 * each fan with the opening to begin with and room for what is read.
 */
export function readingForm(job: Job): SheetPlan {
  const { settings } = job;
  const flow = unitOf("flow", settings.system);
  const rows = new PlanRows(columns, title, nameOf(job));
  const { fans: facts } = job;
  const text = (key: string) => (i: number) => facts?.table.text(key, i) ?? "";
  const above0 = (value = Number.NaN) => (value > 0 ? value : null);
  const tag = (i: number) =>
    [text("tag")(i), facts?.which(i) ?? ""].filter((word) => word !== "").join(", ");
  // A little in, so that it stands off the number before it.
  const written = (title: string) => [`\u00A0\u00A0${title}`, 1, write, () => null] as const;
  const heads: readonly TableColumn<number>[] = [
    ["Fan", 1, looks.strongCell, tag],
    ["Room", 1, looks.cell, (i) => text("room")(i) || text("roomKind")(i)],
    ["Duty", 1, looks.cell, text("duty")],
    ["Open first", 1, looks.cell, (i) => openFirst(job, i)],
    [`Needs (${flow})`, 1, looks.tenth, (i) => above0(facts?.requiredNumber(i))],
    [`Rated (${flow})`, 1, looks.whole, (i) => above0(facts?.table.number("rated", i))],
    ...["Opened", "Pa", "Pa", "Pa", "Note"].map(written),
  ];
  rows.heads(heads);
  const headed = rows.height;
  const breaksBefore: number[] = [];
  let top = 0;
  for (const { name, fans } of walk(job)) {
    const [before, from] = [rows.height, rows.rows.length];
    rows.gap(4);
    rows.line(name === "" ? "Fans of no dwelling" : name, looks.section);
    rows.add([{ span: columns.length, value: stateOfHouse, look: looks.small }], writingHeight);
    for (const i of fans) rows.row(heads, i, writingHeight);
    // A dwelling stands on one page, its name and state with its fans.
    if (before > headed && rows.height - top > pageHeight) {
      breaksBefore.push(from);
      top = before - headed;
    }
  }
  return printedSheet(job, rows, {
    name: "Form",
    mark: title,
    left: settings.name,
    landscape: true,
    onePage: false,
    titleRows: 3,
    breaksBefore,
  });
}

/** The dwellings as they are listed, then those that only fans name, each with its fan rows. */
function walk({ fans, tables }: Job): { name: string; fans: number[] }[] {
  const stops = new Map<string, { name: string; fans: number[] }>();
  const stopAt = (name: string) => kept(stops, plainName(name), () => ({ name, fans: [] }));
  for (const name of tables.dwellings?.texts("dwelling") ?? []) stopAt(name);
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const stop = stopAt(fans?.table.text("dwelling", i) ?? "");
    if (!fans?.isAbsent(i)) stop.fans.push(i);
  }
  return [...stops.values()].filter((stop) => stop.fans.length > 0);
}

/** The box and opening to begin with, and the pressure to expect; "" where none is known. */
function openFirst(job: Job, i: number): string {
  const first = firstOpening(job, i);
  return first ? `${first.box} ${first.label}, ${figure(first.pressure)} Pa` : "";
}
