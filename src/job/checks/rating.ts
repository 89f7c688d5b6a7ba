import { shown } from "../../cells";
import { unitOf } from "../columns";
import { restoredFormula } from "../mends";
import { eachFan } from "./each";

/** A measured flow outside these shares of the rating wants a look (common practice). */
const usualShare = { least: 0.4, most: 1.25 };

/** The flow against the fan's rating: copied from it, or far from it. */
export const checkRating = eachFan((fans, { settings }) => {
  if (!fans.table.has("rated")) return undefined;
  const { table } = fans;
  const unit = unitOf("flow", settings.system);
  return (i, say) => {
    const rated = table.number("rated", i);
    const stored = table.number("flow", i);
    const flow = fans.flow[i] as number;
    if (!(rated > 0)) return;
    if (stored === rated && table.formula("flow", i) === null && !(Math.abs(flow - rated) < 0.5))
      say("flow-is-rating", "flow", {
        what: `the flow is just the rating, ${shown(rated)} ${unit}`,
        effect: Number.isNaN(flow)
          ? "Nothing was measured: fans on site seldom move their rating."
          : `The reading gives ${shown(flow)} ${unit}.`,
        mend: "Restore the formula of the column; measure the fan if it has no reading.",
        apply: restoredFormula(table, "flow", i),
      });
    else if (flow < usualShare.least * rated || flow > usualShare.most * rated)
      say("flow-unlike-rating", "flow", {
        what: `${shown(flow)} ${unit} is ${shown((100 * flow) / rated)} % of the rated ${shown(rated)} ${unit}`,
        effect: "Either the fan is badly hindered or an opening, a reading or the rating is wrong.",
        mend: "Compare openings, reading and nameplate with the field notes.",
      });
  };
});
