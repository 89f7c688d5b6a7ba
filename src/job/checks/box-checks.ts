import { kept } from "../../cells";
import { splitLabels } from "../../rules";
import type { Job } from "../read";
import { count, listed } from "../words";
import { aboutRow } from "./about";
import type { Check, CheckContext } from "./check";

/** Boxes whose check is too old, or missing, for the readings taken with them. */
export const checkBoxDates: Check = (job, report, { today, byRow }) => {
  const { fans, boxes, settings } = job;
  if (!fans || !boxes?.table.has("checked")) return;
  const { table } = boxes;
  const about = aboutRow(table);
  const uses = new Map<number, number[]>();
  for (const [i, own] of rowsOfOpenings(byRow).entries())
    for (const r of own) kept(uses, r, () => []).push(i);
  for (const [r, rows] of [...uses].sort(([a], [b]) => a - b)) {
    const checked = table.number("checked", r);
    const readings = count(rows.length, "fan");
    if (table.gap("checked", r) === "blank") {
      report.at("box-unchecked", table, "checked", r, about(r), {
        what: "no check against a reference is recorded",
        effect: `The flows of ${readings} read with this opening rest on its sizes alone.`,
        mend: "Check the box against a reference instrument and enter the date.",
      });
      continue;
    }
    const late = rows.filter((i) => {
      const date = fans.table.number("date", i);
      // A date that lies ahead has a finding of its own.
      if (date > today + 1) return false;
      const days = date - checked;
      return days > settings.interval || days < 0;
    });
    if (late.length === 0) continue;
    const cells = late.slice(0, 3).map((i) => fans.table.where(i));
    report.at("box-overdue", table, "checked", r, about(r), {
      what: `${late.length} of ${readings} were read outside the ${settings.interval} days after its check (${listed(cells)}${late.length > 3 ? " …" : ""})`,
      effect: "A reviewer will not take these flows as proved.",
      mend: "Check the box again against a reference, or correct the dates.",
    });
  }
};

/** Of each fan the rows of the Boxes sheet that list its openings. */
export const rowsOfOpenings = (byRow: CheckContext["byRow"]) =>
  byRow("rows of the openings in use", "fans", openingRows);

function openingRows({ fans, boxes }: Job): (readonly number[])[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => {
    const labels = splitLabels(fans?.table.text("openings", i).toUpperCase() ?? "");
    const rows = boxes?.rows(fans?.table.text("box", i) ?? "") ?? [];
    return rows.filter((r) => labels.includes(boxes?.table.text("opening", r).toUpperCase() ?? ""));
  });
}
