import { shown } from "../../cells";
import { unitOf } from "../columns";
import { factsOf } from "../facts";
import { asSentence } from "../words";
import { eachFan } from "./each";

/** A fan that the box holds back by more than this share wants the flow without the box (common practice). */
const noticeable = 0.05;

/** Rows with a second opening: whether the two readings fit one fan. */
export const checkTwoOpenings = eachFan((fans, job) => {
  const facts = factsOf(job).fans;
  if (!facts || !fans.table.has("pressure2")) return undefined;
  const { table } = fans;
  const unit = unitOf("flow", job.settings.system);
  return (i, say) => {
    const [pressure, area] = [fans.pressure[i] as number, fans.area[i] as number];
    const [pressure2, area2] = [table.number("pressure2", i), facts.secondArea(i)];
    if (!(pressure > 0 && area > 0 && pressure2 > 0 && area2 > 0)) return;
    if (pressure2 > pressure === area2 > area)
      return say("second-reading-odd", "pressure2", {
        what: `${shown(area2)} reads ${shown(pressure2)} Pa where ${shown(area)} reads ${shown(pressure)} Pa`,
        effect: "A larger opening lets the pressure fall: one of the two was read wrongly.",
        mend: "Compare openings and pressures with the field notes, and read again.",
      });
    const flow = fans.flow[i] as number;
    const two = facts.twoOpenings(i);
    if (!two) return;
    if (!("value" in two)) {
      const [what = "", mend = ""] = two.problem.message.split(": ");
      say("second-reading-odd", "pressure2", {
        what,
        effect: "The flow without the box cannot be told from these two readings.",
        mend: asSentence(mend),
      });
      return;
    }
    const { value: free, u } = two.value.budget;
    if (free - flow > Math.max(noticeable * flow, 2 * u))
      say("box-holds-back", "unboxed", {
        what: `without the box the fan would move ${shown(free)} ${unit}; ${shown(flow)} was measured`,
        effect:
          "The fan is weak: the box itself slows it. The measured flow stays the measured one.",
        mend: "Use a larger opening, nearer 1 Pa, and read again; or judge by the flow without the box if the job allows it.",
      });
  };
});
