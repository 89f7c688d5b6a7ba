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
import { printedPage } from "./printed-page";
import { addFindingsByKind } from "./sections/findings";
import { counted } from "./words";

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
  const name = settings.name === "" ? "Job without a name" : settings.name;
  const rows = new PlanRows(columns);
  const all = estimate.totals.at(-1);
  rows.line(title, looks.title);
  rows.line(name, looks.subtitle);
  rows.gap(4);
  rows.fact(
    "Planned",
    `${counted(all?.planned ?? 0, "fan")} in ${counted(all?.dwellings ?? 0, "dwelling")}; nothing is measured yet`,
  );
  rows.fact("Required by", settings.edition ? settings.edition.title : "no edition named");
  estimateNotes(estimate, settings).forEach((note, i) => {
    rows.fact(i === 0 ? "How it comes about" : "", note);
  });
  for (const section of estimateSections(estimate, settings))
    if (section.rows.length > 0) {
      rows.section(section.title);
      rows.table(spansOf(section), section.rows);
    }
  addFindingsByKind(rows, findings);
  rows.section("What this rests on");
  rows.fact(
    "Worked out with",
    `Fanrow ${provenance.version}; ${provenance.rows} rows, codes ${codesText(provenance.codes)}`,
  );
  return {
    name: "Estimate",
    mark: title,
    columns,
    rows: rows.rows,
    merges: rows.merges,
    page: printedPage(job, {
      left: name,
      landscape: true,
      onePage: false,
      titleRows: 2,
      width: columns.length,
      height: rows.rows.length,
    }),
  };
}

/** Texts share the room that the numbers leave; "none required" among numbers takes two columns. */
function spansOf({ columns: own, rows }: EstimateSection): TableColumn[] {
  const numbers = own.map(({ digits }, at) => {
    if (digits === undefined) return 0;
    return rows.some((row) => typeof row[at] === "string") ? 2 : 1;
  });
  const texts = numbers.filter((span) => span === 0).length;
  const left = columns.length - numbers.reduce<number>((sum, span) => sum + span, 0);
  const room = Math.min(widestText, Math.floor(left / texts));
  return own.map(({ title, digits }, at) => ({
    title,
    span: numbers[at] || room,
    look: lookOf[digits ?? -1] ?? (at === 0 ? looks.strongCell : looks.cell),
  }));
}
