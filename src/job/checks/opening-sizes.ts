import { oneValue } from "../../algebra";
import { shown } from "../../cells";
import { rectArea, roundArea } from "../../formulas";
import { convert } from "../../units";
import { unitOf } from "../columns";
import type { Table } from "../read";
import { eachRow } from "./each";

/** Each opening of the Boxes sheet: listed once, and its area that of its sizes. */
export const checkOpeningSizes = eachRow("boxes", (table, job) => {
  const unit = unitOf("opening", job.settings.system);
  const seen = new Map<string, number>();
  return (i, say) => {
    const key = `${table.text("box", i)}\u0000${table.text("opening", i)}`.toUpperCase();
    const first = seen.get(key);
    if (first === undefined) seen.set(key, i);
    else
      say("opening-repeated", "opening", {
        what: `this opening is already listed in ${table.where(first, i)}`,
        effect: "Which of the two areas counts is unclear; the first is taken.",
        mend: "Give it a label of its own, or remove one of the rows.",
      });
    const stored = table.number("area", i);
    const expected = areaFromSizes(table, i);
    if (!(stored > 0) || expected === undefined || close(stored, expected)) return;
    const words = {
      effect: `Every flow read with it comes out ${shown((100 * stored) / expected)} % of the true flow.`,
      mend: `Its sizes give ${shown(expected)} ${unit}: correct the area or the sizes.`,
    };
    const [low, high] = [convert(expected, "cm²", "in²"), convert(expected, "in²", "cm²")];
    if (close(stored, low) || close(stored, high))
      say("area-unit", "area", {
        what: `${shown(stored)} is the area in ${close(stored, high) ? "cm²" : "in²"}, not in ${unit}`,
        ...words,
      });
    else if (stored === table.number("size1", i))
      say("area-is-size", "area", {
        what: `${shown(stored)} is the diameter, not the area`,
        ...words,
      });
    else
      say("area-not-of-sizes", "area", {
        what: `the area is ${shown(stored)} ${unit} where its sizes give ${shown(expected)} ${unit}`,
        ...words,
      });
  };
});

/** Half a per cent: a size typed to the nearest sixteenth moves a 6 in hole by 1 %. */
const close = (a: number, b: number) => Math.abs(a - b) <= 0.005 * b;

/** Area of one row's openings from shape, sizes and count; undefined where sizes are missing. */
function areaFromSizes(table: Table, i: number): number | undefined {
  const d = table.number("size1", i);
  const h = table.number("size2", i);
  const count = table.gap("count", i) ? 1 : table.number("count", i);
  const shape = table.text("shape", i).toLowerCase();
  if (!(d > 0)) return undefined;
  if (/^(round|circ|hole|dia)/.test(shape)) return count * oneValue(roundArea, { d });
  return h > 0 ? count * oneValue(rectArea, { w: d, h }) : undefined;
}
