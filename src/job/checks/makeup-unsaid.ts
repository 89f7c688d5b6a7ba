import { shown } from "../../cells";
import { makeupAir } from "../../rules";
import { unitOf } from "../columns";
import { isKitchen, makeupAsked, mostFlow } from "../facts";
import { attempt, valueIn } from "../read";
import { eachFan } from "./each";

/** Large kitchen exhaust of which only the appliances would say whether it needs makeup air. */
export const checkMakeupUnsaid = eachFan((fans, job) => {
  const { ducts, system } = job.settings;
  if (ducts === "") return undefined;
  return (i, say) => {
    if (fans.isAbsent(i) || !isKitchen(job, i)) return;
    const flow = mostFlow(job, i);
    const beside = (appliance: boolean) =>
      valueIn(attempt(() => makeupAir(ducts, flow, appliance, system)))?.value;
    if (beside(true) !== "needed" || beside(false) !== "not needed") return;
    if (valueIn(attempt(() => makeupAsked(job, i)))) return;
    say("makeup-unsaid", "rated", {
      what: `${shown(flow)} ${unitOf("flow", system)} of exhaust needs makeup air beside an open-flue appliance, and nothing says whether there is one`,
      effect:
        "Such a fan can draw flue gas back into the dwelling. The local authority and a licensed person decide.",
      mend: 'Look, and type "yes" or "no" under Open-flue appliance on the Dwellings sheet.',
      cause: `${fans.table.text("dwelling", i)}`,
    });
  };
});
