import { bagFlowIp, bagFlowSi } from "../../formulas";
import { area, flowToCome, units } from "../arguments";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";
import { toldInstruments } from "./told-instruments";

export const rule = byFormula({
  id: "BAG_FLOW",
  title: "Flow that fills a bag",
  arguments: { volume: area, seconds: flowToCome, units },
  formula: { ip: bagFlowIp, si: bagFlowSi },
  of: { V: "volume", t: "seconds" },
});

export const help: Help = {
  computes: [
    "Measure the volume of the full bag once, for instance by known boxes or water weight. With the volume in gallons: 1 gal is 0.13368 ft³, so that the flow is about 8 × gallons ÷ seconds.",
    ...toldInstruments("timed bag"),
  ],
  result: 'Flow, cfm (L/s with units "si").',
  formulas: [bagFlowIp, bagFlowSi],
  examples: [{ words: "A bag of 4 ft³ is full after 4.8 s.", args: [4, 4.8], gives: 50 }],
  troubles: [
    { when: "The time is below 0.", args: [4, -5] },
    { when: "The volume is blank beside a time.", args: ["", 4.8] },
  ],
  related: ["DEVICE_FLOW", "DEVICE_SPREAD"],
};
