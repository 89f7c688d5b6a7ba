import {
  bagFlowIp,
  bagFlowSi,
  deviceFlow,
  deviceLimit,
  fullWidthSpread,
  halfWidthSpread,
  meanSpread,
  panCode,
} from "../../../formulas";
import { type Instrument, instruments } from "../../../job";
import type { Topic } from "../topic";

/** What is known of one kind of instrument, each number with its mark. */
function told({ name, limits, procedure, cautions }: Instrument): string {
  const errors = limits.map(({ what, percent, upToPercent, floorPressure, floorFlow, source }) => {
    const share = upToPercent === undefined ? `±${percent} %` : `${percent} to ${upToPercent} %`;
    const floor =
      floorPressure === undefined
        ? floorFlow?.ip === undefined
          ? ""
          : ` or ${floorFlow.ip} cfm`
        : ` or ${floorPressure} Pa`;
    return `${what} ${share}${floor} (${source.work}, ${source.mark})`;
  });
  const steps = procedure.map(
    ({ what, value, unit, source }) => `${what}: ${value} ${unit} (${source.mark})`,
  );
  return `${name[0]?.toUpperCase()}${name.slice(1)}. ${[...errors, ...steps].join("; ")}. ${cautions
    .map(({ words }) => words)
    .join(" ")}`;
}

const kinds = (...names: readonly Instrument["name"][]) =>
  instruments.filter(({ name }) => names.includes(name)).map(told);

export const otherInstruments: readonly Topic[] = [
  {
    id: "DEVICE_FLOW",
    computes: [
      "One rule serves every instrument. A hood that shows a flow has the constant 1 and the exponent 1; a device that shows a pressure has an exponent of about 0.5; a time has −1. Constant and exponent stand in the device's own record, one pair for each of its settings.",
      ...kinds("powered hood", "passive hood", "range device", "direct entry"),
    ],
    result: "Flow, in the unit for which the constant is stated.",
    formulas: [deviceFlow],
    troubles: [
      { when: "The reading is below 0.", args: [-4, 25.68, 0.5] },
      { when: "The constant is blank.", args: [4, "", 0.5] },
      { when: "The exponent is 0.", args: [4, 25.68, 0] },
    ],
    related: ["DEVICE_SPREAD", "BAG_FLOW", "FLOW"],
  },
  {
    id: "BAG_FLOW",
    computes: [
      "Measure the volume of the full bag once, for instance by known boxes or water weight. With the volume in gallons: 1 gal is 0.13368 ft³, so that the flow is about 8 × gallons ÷ seconds.",
      ...kinds("timed bag"),
    ],
    result: 'Flow, cfm (L/s with units "si").',
    formulas: [bagFlowIp, bagFlowSi],
    troubles: [
      { when: "The time is 0.", args: [4, 0] },
      { when: "The volume is blank beside a time.", args: ["", 4.8] },
    ],
    related: ["DEVICE_FLOW", "DEVICE_SPREAD"],
  },
  {
    id: "DEVICE_SPREAD",
    computes: [
      "The device's limit is taken on the flow: the larger of a share and a floor, every error within as likely. Its display and the scatter of two or more readings, side by side in a row, are added as for FLOW_SPREAD.",
      "Give the limit that the device's certificate or the standard you work to states; a blank one counts as none, but one of the two has to be there.",
    ],
    result:
      'Three cells for each row: standard spread, effective degrees of freedom ("infinite" where nothing was repeated), and the ± that covers 95 %.',
    formulas: [deviceFlow, deviceLimit, halfWidthSpread, fullWidthSpread, meanSpread],
    troubles: [
      { when: "Neither limit is given.", args: [51, 1, 1, "", ""] },
      { when: "A reading is 0.", args: [0, 1, 1, 5, 5] },
      { when: "A limit is below 0.", args: [51, 1, 1, -5, 5] },
    ],
    related: ["DEVICE_FLOW", "FLOW_SPREAD"],
  },
  {
    id: "PAN_STATUS",
    computes: [
      "The closed box serves as a pan over a register while the house is held 50 Pa away from outdoors. A tight duct leaves the pan near 0 Pa; a leak to outdoors pulls it up.",
      "The mean of the readings is judged, whatever its sign; readings further apart than the span are to be taken again. A mean at the limit is tight.",
      "Limit and span are common practice and set by the job: no text read states them.",
    ],
    result: '"tight", "leaks" or "repeat"; blank where nothing was read.',
    formulas: [panCode],
    troubles: [
      { when: "A reading was typed with its unit.", args: ["1.4 Pa"] },
      { when: "The limit is 0 or below.", args: [1.4, 0] },
    ],
    related: ["RANGE_STATUS", "DEVICE_FLOW"],
  },
];
