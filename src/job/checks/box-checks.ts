import { kept } from "../../cells";
import { splitLabels } from "../../rules";
import { listed } from "../words";
import { aboutRow } from "./about";
import type { Check } from "./check";

/** Boxes whose check is too old, or missing, for the readings taken with them. */
export const checkBoxDates: Check = (job, report, { today }) => {
  const { fans, boxes, settings } = job;
  if (!fans || !boxes?.table.has("checked")) return;
  const { table } = boxes;
  const about = aboutRow(table);
  const uses = new Map<number, number[]>();
  for (let i = 0; i < fans.length; i++) {
    const labels = splitLabels(fans.table.text("openings", i).toUpperCase());
    for (const r of boxes.rows(fans.table.text("box", i)))
      if (labels.includes(table.text("opening", r).toUpperCase())) kept(uses, r, () => []).push(i);
  }
  for (const [r, rows] of [...uses].sort(([a], [b]) => a - b)) {
    const checked = table.number("checked", r);
    const readings = `${rows.length} fan${rows.length === 1 ? "" : "s"}`;
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
