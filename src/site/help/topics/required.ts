import {
  airChangeRateIp,
  airChangeRateSi,
  dwellingRateBounded,
  dwellingRateEquation,
  dwellingRateLarger,
  rateForPersons,
} from "../../../formulas";
import type { Topic } from "../topic";

export const requiredRates: readonly Topic[] = [
  {
    id: "ROOM_RATE",
    computes: [
      "Editions of standards and codes are kept as data: each number with its clause and with how far it has been traced.",
      "Where the edition asks for air changes, give the volume of the room itself.",
      "Required rates differ from place to place. Verify against your own copy of the edition that applies.",
    ],
    result: 'Required rate, cfm (L/s with units "si").',
    formulas: [airChangeRateIp, airChangeRateSi],
    troubles: [
      { when: "The edition is not known.", args: ["62.2-1999", "bathroom", "on demand"] },
      {
        when: "The edition asks for air changes and the volume is missing.",
        args: ["62.2-2016", "kitchen", "continuous"],
      },
      { when: "The edition sets no such rate.", args: ["62.2-2016", "toilet", "on demand"] },
      {
        when: "The edition states no number in these units.",
        args: ["IRC-2021", "bathroom", "on demand", null, "si"],
      },
      { when: "The duty is blank.", args: ["62.2-2016", "bathroom", ""] },
    ],
    related: ["DWELLING_RATE", "DEFICIT", "VERDICT"],
  },
  {
    id: "DWELLING_RATE",
    computes: [
      "Some editions give an equation and a table. Left out, the method is the edition's usual one; a table counts in bands of floor area, so the two may differ.",
      "Under ASHRAE 62.2 each person above bedrooms plus one adds to the rate (from memory). HUD's rate has an upper limit too.",
      "Verify against your own copy of the edition that applies.",
    ],
    result: 'Required rate, cfm (L/s with units "si").',
    formulas: [dwellingRateEquation, dwellingRateLarger, dwellingRateBounded, rateForPersons],
    troubles: [
      { when: "The edition is not known.", args: ["house rule", 1800, 3] },
      { when: "The edition has no such method.", args: ["62.2-2016", 1800, 3, "larger"] },
      { when: "The number of bedrooms is not whole.", args: ["62.2-2016", 1800, 2.5] },
      {
        when: "The edition does not count persons.",
        args: ["IRC-2021", 1800, 3, null, null, 6],
      },
      { when: "The table ends before this floor area.", args: ["62.2-2016", 9000, 3, "table"] },
    ],
    related: ["ROOM_RATE", "FAN_RATE", "BALANCED_RATE", "VERDICT"],
  },
];
