import { grouped } from "../cells";
import {
  codesText,
  type Estimate,
  type EstimateSection,
  estimateNotes,
  estimateSections,
  type JobCheck,
  provenanceOf,
} from "../job";
import { looks } from "./looks";
import type { Look, SheetPlan } from "./plan";
import { PlanRows, type TableColumn } from "./plan-rows";
import { fitsOnePage, printedSheet } from "./printed-page";
import { addFindingsByKind } from "./sections/findings";
import { counted, nameOf } from "./words";

/** A page held across: the widest table has nine columns. */
const columns = Array.from({ length: 14 }, () => 9.3);
const widestText = 3;
const title = "Estimate of fans";

const lookOf: Readonly<Record<number, Look>> = {
  0: { ...looks.whole, format: "#,##0_)" },
  1: looks.tenth,
  2: { ...looks.hundredth, format: "#,##0.00_)" },
};

/** The record of a job in which fans are planned and none is measured: what to buy, bring and charge. */
export function estimateRecord({ job, findings }: JobCheck, estimate: Estimate): SheetPlan {
  const { settings } = job;
  const provenance = provenanceOf(job);
  const rows = new PlanRows(columns, title, nameOf(job));
  const all = estimate.totals.at(-1);
  rows.gap(4);
  rows.fact(
    "Planned",
    `${counted(all?.planned ?? 0, "fan")} in ${counted(all?.dwellings ?? 0, "dwelling")}; nothing is measured yet`,
  );
  rows.fact("Required by", settings.edition ? settings.edition.title : "no edition named");
  estimateNotes(estimate, settings).forEach((note, i) => {
    rows.fact(i === 0 ? "How it comes about" : "", note);
  });
  let dwellingsAt = 0;
  for (const section of estimateSections(estimate, settings)) {
    const shown = section.key === "dwellings" ? alikeInOne(section) : section;
    if (shown.rows.length === 0) continue;
    if (shown.key === "dwellings") dwellingsAt = rows.next;
    rows.section(shown.title);
    rows.table(shown.rows, columnsOf(shown));
  }
  addFindingsByKind(rows, findings);
  rows.section("What this rests on");
  rows.fact(
    "Worked out with",
    `Fanrow ${provenance.version}; ${provenance.rows} rows, codes ${codesText(provenance.codes)}`,
  );
  const onePage = fitsOnePage(rows, true);
  return printedSheet(job, rows, {
    name: "Estimate",
    mark: title,
    left: nameOf(job),
    landscape: true,
    onePage,
    ...(onePage || dwellingsAt === 0 ? {} : { breaksBefore: [dwellingsAt] }),
    titleRows: 2,
  });
}

/** Dwellings named in a row of the sheet, which can be only so high. */
const mostNamed = 60;

/** Dwellings of the same numbers in one row that counts and names them, where that saves rows. */
function alikeInOne(section: EstimateSection): EstimateSection {
  const { columns, rows } = section;
  const alike = grouped(rows, (row) => JSON.stringify(row.slice(1)));
  if (2 * alike.size > rows.length) return section;
  return {
    ...section,
    title: "Dwellings, with the numbers of each one",
    columns: [{ title: "Number", digits: 0 }, ...columns.slice(1), { title: "Dwellings" }],
    rows: [...alike.values()].flatMap((own) => {
      const names = own.map(([name]) => name);
      const numbers = [own.length, ...(own[0]?.slice(1) ?? [])];
      const lines = Math.ceil(names.length / mostNamed);
      return Array.from({ length: lines }, (_, i) => [
        ...(i === 0 ? numbers : numbers.map(() => null)),
        names.slice(i * mostNamed, (i + 1) * mostNamed).join(", "),
      ]);
    }),
  };
}

/** Texts share the room that the numbers leave; "none required" among numbers takes two columns. */
function columnsOf({
  columns: own,
  rows,
}: EstimateSection): TableColumn<EstimateSection["rows"][number]>[] {
  const numbers = own.map(({ digits }, at) => {
    if (digits === undefined) return 0;
    return rows.some((row) => typeof row[at] === "string") ? 2 : 1;
  });
  const texts = numbers.filter((span) => span === 0).length;
  const left = columns.length - numbers.reduce<number>((sum, span) => sum + span, 0);
  const room =
    own.findIndex(({ digits }) => digits === undefined) === own.length - 1
      ? left
      : Math.min(widestText, Math.floor(left / texts));
  return own.map(({ title, digits }, at) => [
    title,
    numbers[at] || room,
    lookOf[digits ?? -1] ?? (at === 0 ? looks.strongCell : looks.cell),
    (row) => row[at] ?? null,
  ]);
}
