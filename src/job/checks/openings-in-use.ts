import { shown } from "../../cells";
import { OpeningsError, openingsNamed, splitLabels } from "../../rules";
import { convert } from "../../units";
import { unitOf } from "../columns";
import { restoredFormula } from "../mends";
import { listed } from "../words";
import { eachFan, type Say } from "./each";

/** Areas are compared to this share: sizes are typed to hundredths of an inch. */
const near = (a: number, b: number, share = 0.005) => Math.abs(a - b) <= share * Math.abs(b);

/** The box and the openings of each fan row, and whether its area is theirs. */
export const checkOpeningsInUse = eachFan((fans, { boxes, settings }) => {
  if (!boxes) return undefined;
  const { table } = fans;
  const unit = unitOf("opening", settings.system);
  return (i, say) => {
    const box = table.text("box", i);
    const label = table.text("openings", i);
    const measured = !Number.isNaN(fans.pressure[i]);
    if (fans.isByInstrument(i)) return;
    if (box === "" && label === "" && (!measured || fans.isAbsent(i))) return;
    const openings = boxes.openings(box);
    if (!openings)
      return say("box-unknown", "box", {
        what:
          box === "" ? "no box is named" : `box "${box}" is not on the ${boxes.table.name} sheet`,
        cause: box.toUpperCase(),
        effect: "The area of the openings and the proof of the box cannot be traced.",
        mend: `Name one of ${listed(boxes.names)}, or list the box with its openings.`,
      });
    try {
      checkArea(i, openingsNamed(label, openings), say);
    } catch (error) {
      if (!(error instanceof OpeningsError)) throw error;
      if (isUnstored(box, label)) return;
      say("opening-unknown", "openings", {
        what: error.message,
        cause: `${box} ${label}`.toUpperCase(),
        effect: "The open area, and with it the flow, is unknown.",
        mend: `Type the labels that were open, joined by +. ${box} has ${listed([...new Set(openings.map((opening) => opening.label))])}.`,
      });
    }
  };

  /** Whether all openings are listed, and one's area has a formula without a stored value, which is told of. */
  function isUnstored(box: string, label: string): boolean {
    const own = splitLabels(label).map((each) => rowOf(box, each));
    const lacks = (r: number) =>
      boxes?.table.raw("area", r) === null && boxes.table.hasFormula("area", r);
    return own.every((r) => r !== undefined) && own.some((r) => r !== undefined && lacks(r));
  }

  function checkArea(i: number, used: { label: string; area: number }[], say: Say): void {
    const stored = table.number("area", i);
    const total = used.reduce((sum, opening) => sum + opening.area, 0);
    if (!(stored > 0) || near(stored, total)) return;
    const label = table.text("openings", i);
    const share = `The flow comes out ${shown((100 * stored) / total)} % of the true flow.`;
    const single = used.find((opening) => near(stored, opening.area));
    const apply = restoredFormula(table, "area", i);
    const place = `${label} has ${shown(total)} ${unit}`;
    if (used.length > 1 && single)
      say("opening-uncounted", "area", {
        what: `${label} are open but the area is that of ${single.label} alone (${shown(stored)} ${unit})`,
        effect: share,
        mend: `Use the area of all open ones: ${shown(total)} ${unit}.`,
        apply,
      });
    else if (
      near(stored, convert(total, "in²", "cm²")) ||
      near(stored, convert(total, "cm²", "in²"))
    )
      say("area-unit", "area", {
        what: `${shown(stored)} is the area in ${stored > total ? "cm²" : "in²"}; ${place}`,
        effect: share,
        mend: `Type ${shown(total)} ${unit}, or look the area up from the ${boxes?.table.name} sheet.`,
        apply,
      });
    else if (used.some((opening) => isSizeOf(opening.label, i, stored)))
      say("area-is-size", "area", {
        what: `${shown(stored)} is the diameter of the opening, not its area; ${place}`,
        effect: share,
        mend: `Type ${shown(total)} ${unit}, or look the area up from the ${boxes?.table.name} sheet.`,
        apply,
      });
    else
      say("area-not-of-openings", "area", {
        what: `the area is ${shown(stored)} ${unit} but ${place}`,
        effect: share,
        mend: `Correct the openings in use or the area: ${shown(total)} ${unit} for ${label}.`,
        apply,
      });
  }

  function rowOf(box: string, label: string): number | undefined {
    const own = label.toLowerCase();
    return boxes?.rows(box).find((r) => boxes.table.text("opening", r).toLowerCase() === own);
  }

  function isSizeOf(label: string, i: number, stored: number): boolean {
    const row = rowOf(table.text("box", i), label);
    return row !== undefined && near(stored, boxes?.table.number("size1", row) ?? Number.NaN, 1e-6);
  }
});
