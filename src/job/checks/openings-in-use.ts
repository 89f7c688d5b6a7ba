import { shown } from "../../cells";
import { OpeningsError, openingsNamed } from "../../rules";
import { convert } from "../../units";
import { unitOf } from "../columns";
import { restoredFormula } from "../mends";
import { listed } from "../words";
import type { Check } from "./check";

/** Areas are compared to this share: sizes are typed to hundredths of an inch. */
const near = (a: number, b: number, share = 0.005) => Math.abs(a - b) <= share * Math.abs(b);

/** The box and the openings of each fan row, and whether its area is theirs. */
export const checkOpeningsInUse: Check = (job, report) => {
  const { fans, boxes, settings } = job;
  if (!fans || !boxes) return;
  const { table } = fans;
  const unit = unitOf("opening", settings.system);
  for (let i = 0; i < fans.length; i++) {
    const box = table.text("box", i);
    const label = table.text("openings", i);
    const measured = !Number.isNaN(fans.pressure[i]);
    if (fans.isByInstrument(i)) continue;
    if (box === "" && label === "" && (!measured || fans.isAbsent(i))) continue;
    const openings = boxes.openings(box);
    if (!openings) {
      report.at("box-unknown", table, "box", i, fans.label(i), {
        what:
          box === "" ? "no box is named" : `box "${box}" is not on the ${boxes.table.name} sheet`,
        cause: box.toUpperCase(),
        effect: "The area of the openings and the proof of the box cannot be traced.",
        mend: `Name one of ${listed(boxes.names)}, or list the box with its openings.`,
      });
      continue;
    }
    try {
      checkArea(i, openingsNamed(label, openings));
    } catch (error) {
      if (!(error instanceof OpeningsError)) throw error;
      report.at("opening-unknown", table, "openings", i, fans.label(i), {
        what: error.message,
        cause: `${box} ${label}`.toUpperCase(),
        effect: "The open area, and with it the flow, is unknown.",
        mend: `Type the labels that were open, joined by +. ${box} has ${listed([...new Set(openings.map((opening) => opening.label))])}.`,
      });
    }
  }

  function checkArea(i: number, used: { label: string; area: number }[]): void {
    const stored = table.number("area", i);
    const total = used.reduce((sum, opening) => sum + opening.area, 0);
    if (!(stored > 0) || near(stored, total)) return;
    const about = fans?.label(i) ?? "";
    const label = table.text("openings", i);
    const share = `The flow comes out ${shown((100 * stored) / total)} % of the true flow.`;
    const single = used.find((opening) => near(stored, opening.area));
    const apply = restoredFormula(table, "area", i);
    const place = `${label} has ${shown(total)} ${unit}`;
    if (used.length > 1 && single)
      report.at("opening-uncounted", table, "area", i, about, {
        what: `${label} are open but the area is that of ${single.label} alone (${shown(stored)} ${unit})`,
        effect: share,
        mend: `Use the area of all open ones: ${shown(total)} ${unit}.`,
        apply,
      });
    else if (
      near(stored, convert(total, "in²", "cm²")) ||
      near(stored, convert(total, "cm²", "in²"))
    )
      report.at("area-unit", table, "area", i, about, {
        what: `${shown(stored)} is the area in ${stored > total ? "cm²" : "in²"}; ${place}`,
        effect: share,
        mend: `Type ${shown(total)} ${unit}, or look the area up from the ${boxes?.table.name} sheet.`,
        apply,
      });
    else if (used.some((opening) => isSizeOf(opening.label, i, stored)))
      report.at("area-is-size", table, "area", i, about, {
        what: `${shown(stored)} is the diameter of the opening, not its area; ${place}`,
        effect: share,
        mend: `Type ${shown(total)} ${unit}, or look the area up from the ${boxes?.table.name} sheet.`,
        apply,
      });
    else
      report.at("area-not-of-openings", table, "area", i, about, {
        what: `the area is ${shown(stored)} ${unit} but ${place}`,
        effect: share,
        mend: `Correct the openings in use or the area: ${shown(total)} ${unit} for ${label}.`,
        apply,
      });
  }

  function isSizeOf(label: string, i: number, stored: number): boolean {
    const row = boxes
      ?.rows(table.text("box", i))
      .find((r) => boxes.table.text("opening", r).toLowerCase() === label.toLowerCase());
    return row !== undefined && near(stored, boxes?.table.number("size1", row) ?? Number.NaN, 1e-6);
  }
};
