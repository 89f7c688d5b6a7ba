import { isSameNumber, shown } from "../../cells";
import { restoredFormula } from "../mends";
import { constantInUse } from "../read";
import type { Check } from "./check";

/** The constant of a fan row against that of its box. */
export const checkConstants: Check = (job, report) => {
  const { fans } = job;
  if (!fans?.table.has("constant")) return;
  for (let i = 0; i < fans.length; i++) {
    const stored = fans.table.number("constant", i);
    const own = constantInUse(job, fans.table.text("box", i));
    if (!(stored > 0) || isSameNumber(stored, own)) continue;
    report.at("constant-differs", fans.table, "constant", i, fans.label(i), {
      what: `the constant is ${stored}; the box has ${own}`,
      effect: `The flow comes out ${shown((100 * stored) / own)} % of what the box gives.`,
      mend: `Use ${own}, or record on the Boxes sheet why the box has another constant.`,
      apply: restoredFormula(fans.table, "constant", i),
    });
  }
};
