import { type Job, plainName, unitOf } from "../../job";
import { looks } from "../looks";
import { sheetNameOf } from "../names";
import type { Look, SheetPlan } from "../plan";
import { PlanRows } from "../plan-rows";
import { printedPage } from "../printed-page";
import { figure } from "../words";
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
  const rows = new PlanRows(columns);
  rows.line(title, looks.title);
  rows.line(settings.name === "" ? "Job without a name" : settings.name, looks.subtitle);
  const heads: readonly [string, Look][] = [
    ["Fan", looks.strongCell],
    ["Room", looks.cell],
    ["Duty", looks.cell],
    ["Open first", looks.cell],
    [`Needs (${flow})`, looks.tenth],
    [`Rated (${flow})`, looks.whole],
    ["Opened", write],
    ["Pa", write],
    ["Pa", write],
    ["Pa", write],
    ["Note", write],
  ];
  rows.heads(heads.map(([title, look]) => ({ span: 1, title, look })));
  const headed = rows.height;
  const breaksBefore: number[] = [];
  let top = 0;
  for (const { name, fans } of walk(job)) {
    const [before, from] = [rows.height, rows.rows.length];
    rows.gap(4);
    rows.line(name === "" ? "Fans of no dwelling" : name, looks.section);
    rows.add([{ span: columns.length, value: stateOfHouse, look: looks.small }], writingHeight);
    for (const i of fans)
      rows.add(
        fanLine(job, i).map((value, at) => ({
          span: 1,
          value,
          look: heads[at]?.[1] ?? write,
        })),
        writingHeight,
      );
    // A dwelling stands on one page, its name and state with its fans.
    if (before > headed && rows.height - top > pageHeight) {
      breaksBefore.push(from);
      top = before - headed;
    }
  }
  return {
    name: sheetNameOf("Form"),
    mark: title,
    columns,
    rows: rows.rows,
    merges: rows.merges,
    page: printedPage(job, {
      left: settings.name,
      landscape: true,
      onePage: false,
      titleRows: 3,
      breaksBefore,
      width: columns.length,
      height: rows.rows.length,
    }),
  };
}

/** The dwellings as they are listed, then those that only fans name, each with its fan rows. */
function walk({ fans, tables }: Job): { name: string; fans: number[] }[] {
  const stops = new Map<string, { name: string; fans: number[] }>();
  for (const name of tables.dwellings?.texts("dwelling") ?? [])
    if (!stops.has(plainName(name))) stops.set(plainName(name), { name, fans: [] });
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const name = fans?.table.text("dwelling", i) ?? "";
    const stop = stops.get(plainName(name)) ?? { name, fans: [] };
    stops.set(plainName(name), stop);
    if (!fans?.isAbsent(i)) stop.fans.push(i);
  }
  return [...stops.values()].filter((stop) => stop.fans.length > 0);
}

function fanLine(job: Job, i: number): (string | number | null)[] {
  const { fans } = job;
  if (!fans) return [];
  const { table } = fans;
  const required = fans.requiredNumber(i);
  const rated = table.number("rated", i);
  return [
    [table.text("tag", i), fans.which(i)].filter((word) => word !== "").join(", "),
    table.text("room", i) || table.text("roomKind", i),
    table.text("duty", i),
    openFirst(job, i),
    required > 0 ? required : null,
    rated > 0 ? rated : null,
    ...[null, null, null, null, null],
  ];
}

/** The box and opening to begin with, and the pressure to expect; "" where none is known. */
function openFirst(job: Job, i: number): string {
  const first = firstOpening(job, i);
  return first ? `${first.box} ${first.label}, ${figure(first.pressure)} Pa` : "";
}
