import { shown } from "../../cells";
import { makeupAir } from "../../rules";
import { unitOf } from "../columns";
import { isKitchen, makeupAsked, mostFlow } from "../facts";
import { attempt, valueIn } from "../read";
import type { Check } from "./check";

/** Large kitchen exhaust of which only the appliances would say whether it needs makeup air. */
export const checkMakeupUnsaid: Check = (job, report) => {
  const { fans, settings } = job;
  const { ducts, system } = settings;
  if (!fans || ducts === "") return;
  for (let i = 0; i < fans.length; i++) {
    if (fans.isAbsent(i) || !isKitchen(job, i)) continue;
    const flow = mostFlow(job, i);
    const beside = (appliance: boolean) =>
      valueIn(attempt(() => makeupAir(ducts, flow, appliance, system)))?.value;
    if (beside(true) !== "needed" || beside(false) !== "not needed") continue;
    if (valueIn(attempt(() => makeupAsked(job, i)))) continue;
    report.at("makeup-unsaid", fans.table, "rated", i, fans.label(i), {
      what: `${shown(flow)} ${unitOf("flow", system)} of exhaust needs makeup air beside an open-flue appliance, and nothing says whether there is one`,
      effect:
        "Such a fan can draw flue gas back into the dwelling. The local authority and a licensed person decide.",
      mend: 'Look, and type "yes" or "no" under Open-flue appliance on the Dwellings sheet.',
      cause: `${fans.table.text("dwelling", i)}`,
    });
  }
};
