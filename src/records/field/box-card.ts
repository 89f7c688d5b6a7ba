import { oneValue } from "../../algebra";
import { isoDay } from "../../cells";
import { flowFromPressure, pressureFromFlow } from "../../formulas";
import {
  boxProofs,
  constantInUse,
  expectedOpening,
  type Job,
  type Opening,
  unitOf,
} from "../../job";
import { looks } from "../looks";
import type { Look, SheetPlan } from "../plan";
import { PlanRows, type TableColumn } from "../plan-rows";
import { printedSheet } from "../printed-page";
import { figure } from "../words";
import { type OpeningSet, usefulSets } from "./opening-sets";

/** Pressures of the card, Pa: the usual window by halves. */
const pressures = Array.from({ length: 15 }, (_, i) => 1 + i / 2);
/** Flows asked for most often, beside the job's own rates. */
const usualRates = { ip: [20, 50, 80, 100], si: [10, 15, 25, 30, 50] } as const;
/** Rated flows for which the card names the opening to begin with. */
const ratedFlows = {
  ip: [30, 50, 70, 80, 90, 110, 130, 150, 200, 250, 300, 400],
  si: [15, 25, 30, 40, 50, 60, 70, 80, 100, 120, 150, 200],
} as const;
/** The last digit that a tester reads off, Pa. */
const shownTenths = 10;

const bold: Look = { ...looks.tenth, bold: true };

/**
 * The card of one box, to print and stick on it: the flow at each pressure through each useful set
 * of openings, the pressure from which a rate is met, and the opening to begin with.
 */
export function boxCard(job: Job, box: string): SheetPlan | { readonly problem: string } {
  const { settings, boxes } = job;
  const openings = boxes?.openings(box) ?? [];
  const labels = openings.map(({ label }) => label);
  const twice = labels.find((label, i) => labels.indexOf(label) < i);
  if (twice !== undefined)
    return {
      problem: `${box} lists opening ${twice} twice: give each opening a label of its own, then make its card.`,
    };
  if (openings.length === 0)
    return { problem: `${box} has no opening with an area: measure its openings first.` };
  const constant = constantInUse(job, box);
  const sets = usefulSets(openings, constant, settings);
  const columns = [12, ...sets.map(() => 9)];
  const mark = `Card of ${/^box\b/i.test(box) ? box : `box ${box}`}`;
  const rows = new PlanRows(
    columns,
    mark,
    `flow = ${figure(constant, 4)} × area (${unitOf("opening", settings.system)}) × √pressure (Pa). Use readings from ${figure(settings.low)} to ${figure(settings.high)} Pa.`,
  );
  rows.line(proofLine(job, box), looks.text);
  addFlows(rows, job, sets, constant);
  addLeastPressures(rows, job, sets, constant);
  addFirstOpenings(rows, job, openings, constant);
  rows.gap();
  rows.line(
    "Seat the box flat on the ceiling over the whole grille, fan on, hose on the box, and wait until the reading stands. Above the window open more, below it open less. Level ground under the ladder, hands off live parts, no tape left on a running fan.",
    looks.note,
  );
  return printedSheet(job, rows, {
    name: `Card ${box}`,
    mark,
    left: settings.name,
    landscape: false,
    onePage: true,
    titleRows: 0,
  });
}

function proofLine(job: Job, box: string): string {
  const own = [...boxProofs(job).values()].find((entry) => entry.box === box);
  const days = own?.rows.map((row) => job.tables.pairs?.number("date", row) ?? Number.NaN) ?? [];
  const last = Math.max(...days.filter((day) => day > 0));
  if (!own || !Number.isFinite(last)) return "Proved on ____________ against ____________";
  return `Pairs read up to ${isoDay(last, job.file.dateOffset)}: ${own.proof.verdict}, against ±${figure(own.proof.requirement)} %.`;
}

function addFlows(rows: PlanRows, job: Job, sets: readonly OpeningSet[], K: number): void {
  const { system, low, high } = job.settings;
  rows.section(`Flow (${unitOf("flow", system)}) at each pressure, by what is open`);
  // First the areas themselves, then a row for each pressure.
  rows.table(
    [undefined, ...pressures.filter((P) => P >= low && P <= high)],
    [
      ["Pressure (Pa)", 1, bold, (P) => P ?? unitOf("opening", system)],
      ...bySet(sets, (A, P: number | undefined) =>
        P === undefined ? Number(figure(A, 2)) : oneValue(flowFromPressure, { K, A, P }),
      ),
    ],
  );
}

/** The flows a job asks of its rooms, beside the usual ones, each once. */
function ratesOf({ fans, settings }: Job): number[] {
  const asked = Array.from({ length: fans?.length ?? 0 }, (_, i) => fans?.requiredNumber(i) ?? 0);
  const all = [...usualRates[settings.system], ...asked.filter((rate) => rate > 0)];
  return [...new Set(all.map((rate) => Number(figure(rate))))].sort((a, b) => a - b).slice(0, 12);
}

function addLeastPressures(rows: PlanRows, job: Job, sets: readonly OpeningSet[], K: number): void {
  const { low, high, system } = job.settings;
  rows.section("Lowest pressure (Pa) that meets a rate");
  rows.line('"any": every reading inside the window meets it. "–": none does.', looks.note);
  rows.table(ratesOf(job), [
    [`Rate (${unitOf("flow", system)})`, 1, bold, (Q) => Q],
    ...bySet(sets, (A, Q: number) => {
      // Upwards: at a pressure rounded down the fan would still be short.
      const exact = oneValue(pressureFromFlow, { Q, K, A });
      const least = Math.ceil(exact * shownTenths - 1e-9) / shownTenths;
      if (least > high) return "–";
      return least <= low ? "any" : least;
    }),
  ]);
}

/** A column for each set of openings, by its area. */
function bySet<Row>(
  sets: readonly OpeningSet[],
  cell: (area: number, row: Row) => string | number,
): TableColumn<Row>[] {
  return sets.map(({ label, area }) => [label, 1, looks.tenth, (row) => cell(area, row)]);
}

function addFirstOpenings(rows: PlanRows, job: Job, box: readonly Opening[], K: number): void {
  const { settings } = job;
  const flows = ratedFlows[settings.system].flatMap((rated) => {
    const first = expectedOpening(rated, K, box, settings);
    return first?.inWindow ? [{ rated, first }] : [];
  });
  rows.section("Which to open first");
  const unit = unitOf("flow", settings.system);
  if (flows.length === 0) rows.line("No usual fan falls into the window of this box.", looks.text);
  for (let i = 0; i < flows.length; i += 3)
    rows.line(
      flows
        .slice(i, i + 3)
        .map(
          ({ rated, first }) =>
            `${rated} ${unit}: ${first.label} (about ${figure(first.pressure)} Pa)`,
        )
        .join("      "),
      looks.text,
    );
}
