import { isSameNumber, shown } from "../../cells";
import { restoredFormula } from "../mends";
import { constantInUse } from "../read";
import { eachFan } from "./each";

/** The constant of a fan row against that of its box. */
export const checkConstants = eachFan((fans, job) => {
  if (!fans.table.has("constant")) return undefined;
  return (i, say) => {
    const stored = fans.table.number("constant", i);
    const own = constantInUse(job, fans.table.text("box", i));
    if (!(stored > 0) || isSameNumber(stored, own)) return;
    say("constant-differs", "constant", {
      what: `the constant is ${stored}; the box has ${own}`,
      effect: `The flow comes out ${shown((100 * stored) / own)} % of what the box gives.`,
      mend: `Use ${own}, or record on the Boxes sheet why the box has another constant.`,
      apply: restoredFormula(fans.table, "constant", i),
    });
  };
});
