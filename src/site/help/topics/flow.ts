import { flowFromPressure, pressureFromFlow } from "../../../formulas";
import type { Topic } from "../topic";

export const flow: readonly Topic[] = [
  {
    id: "FLOW",
    computes: [
      "Give the pressure as room minus box. Exhaust makes the box negative to the room, so the difference is positive; a negative one means that the hoses are swapped, or that the fan blows.",
      "A pressure of 0 Pa is a reading and gives a flow of 0; a blank one is none.",
    ],
    result: 'Flow, cfm (L/s with units "si").',
    formulas: [flowFromPressure],
    troubles: [
      { when: "The pressure is negative.", args: [24, -4] },
      {
        when: "The area is blank.",
        args: [
          ["", 24],
          [4, 4],
        ],
      },
      { when: "The area is 0 or below.", args: [0, 4] },
      { when: "The pressure was typed as text.", args: [24, "4 Pa"] },
      {
        when: "The ranges are not of one size.",
        args: [
          [12, 24, 36],
          [4, 4],
        ],
      },
    ],
    related: ["BOX_PRESSURE", "RANGE_STATUS", "REACH"],
  },
  {
    id: "BOX_PRESSURE",
    computes: [
      "What the manometer will show: the flow formula turned round. Use it to see whether an opening suits a fan before it is cut or taped.",
    ],
    result: "Pressure, Pa.",
    formulas: [pressureFromFlow],
    troubles: [
      { when: "The flow is below 0.", args: [24, -50] },
      { when: "The area is 0 or below.", args: [0, 50] },
    ],
    related: ["FLOW", "AREA_FOR"],
  },
  {
    id: "REACH",
    computes: [
      "The ends of the pressure window, as flows. The ratio of the two is the root of the ratio of the pressures: about 2.8 for 1 to 8 Pa, so a box for small and large fans needs several openings.",
      "The two cells spill to the right. Inside an Excel table nothing spills: put the formula outside it.",
    ],
    result: 'Two cells for each area: lowest and highest flow, cfm (L/s with units "si").',
    formulas: [flowFromPressure],
    troubles: [
      { when: "The area is 0 or below.", args: [0] },
      { when: "The low end of the window is 0.", args: [24, null, 0, 8] },
    ],
    related: ["FLOW", "RANGE_STATUS", "AREA_FOR"],
  },
];
