import {
  balancedRate,
  betweenTwoRows,
  creditCapped,
  fanRateAfterCredit,
  fanRateAfterExcess,
  infiltrationByLeakageIp,
  infiltrationByLeakageSi,
  infiltrationShort,
  leakageAreaIp,
  onRate,
  rateWithDeficits,
  roomDeficit,
  runningRate,
  unbalancedShare,
} from "../../../formulas";
import type { Topic } from "../topic";

const verify = "Verify against your own copy of the edition that applies.";

export const dwelling: readonly Topic[] = [
  {
    id: "INFILTRATION",
    computes: [
      "A leakage measured at 50 Pa becomes the flow that leaks in over a year. ASHRAE 62.2 to 2016 goes by normalized leakage, 2019 and 2022 by a short form; the two differ by about half a percent.",
      "The weather and shielding factor stands in the edition's table of stations, which is not here: look it up for the place.",
      `The effective leakage area at 4 Pa is about the leakage divided by 18, in² and cfm. The equivalent leakage area at 10 Pa is another number. ${verify}`,
    ],
    result: 'Infiltration before any cap, cfm (L/s with units "si").',
    formulas: [infiltrationByLeakageIp, infiltrationByLeakageSi, infiltrationShort, leakageAreaIp],
    troubles: [
      { when: "The edition has no such credit.", args: ["IRC-2021", 1500, 1800, 16, 0.6] },
      { when: "The weather factor is missing.", args: ["62.2-2016", 1500, 1800, 16, ""] },
    ],
    related: ["FAN_RATE", "DWELLING_RATE"],
  },
  {
    id: "FAN_RATE",
    computes: [
      "The total less what leaks in. In new work two thirds of the total count at most (from 2013 on, from memory).",
      "62.2-2019 and 2022 let less count beside fans that are not balanced, by infiltration ÷ total; the text of 2016 does not. The same house then needs 39 instead of 23 cfm: the edition matters.",
      "From 2016 on, attached dwellings count the share of their envelope that faces outside.",
      `62.2-2010 already holds a default infiltration in its rate. There only existing dwellings have a credit: half of what was measured above the default, for which the floor area is needed. ${verify}`,
    ],
    result: "Rate that fans must move, in the unit of the total; 0 where nothing is left.",
    formulas: [creditCapped, unbalancedShare, fanRateAfterCredit, fanRateAfterExcess],
    troubles: [
      { when: "The edition has no such credit.", args: ["IRC-2021", 84, 61] },
      {
        when: "The edition has no credit by exposed share.",
        args: ["62.2-2013", 84, 61, 0.5],
      },
      {
        when: "62.2-2010 needs the floor area of an existing dwelling.",
        args: ["62.2-2010", 48, 61, null, null, "existing"],
      },
      {
        when: "The work is neither new nor existing.",
        args: ["62.2-2016", 84, 61, 1, "no", "old"],
      },
    ],
    related: ["INFILTRATION", "DWELLING_RATE", "ON_RATE"],
  },
  {
    id: "ON_RATE",
    computes: [
      "A fan that runs part of the time must move more while it runs. ASHRAE 62.2: a plain average over time if it comes on at least once every 3 hours.",
      "For cycles longer than 3 hours the editions have a table by share and turnover, which is not here: such a cycle is refused.",
      "IRC: a factor by the share of each 4-hour segment, at least 25 %, on a straight line between the columns. At 75 % it is 1.3, not 1 ÷ 0.75.",
    ],
    result: "Flow while on, in the unit of the rate.",
    formulas: [onRate, runningRate, betweenTwoRows],
    source: {
      work: "ASHRAE 62.2-2016; IRC 2021",
      clause: "4.5.1; table M1505.4.3(2)",
      mark: "read",
    },
    troubles: [
      { when: "The share is written as a percentage.", args: ["62.2-2016", 72, 50] },
      { when: "The fan is on for too little of each segment.", args: ["IRC-2021", 60, 0.2] },
      { when: "The cycle does not fit into the segment.", args: ["IRC-2021", 60, 0.5, 6] },
      { when: "The cycle is too long.", args: ["62.2-2016", 72, 0.5, 48] },
      { when: "The edition has no such rule.", args: ["HUD-3280", 72, 0.5] },
    ],
    related: ["FAN_RATE", "DWELLING_RATE"],
  },
  {
    id: "DEFICIT",
    computes: [
      "In an existing dwelling weak or missing room fans may stay if the whole dwelling is ventilated more. A room's deficit is its rate on demand less the measured flow, less the credit of an openable window.",
      `A fan that was not measured counts as none: type 0 or none. A blank stays blank, so that nobody's missing reading counts as a fan that is not there. ${verify}`,
    ],
    result: 'Deficit, cfm (L/s with units "si"); 0 where nothing is lacking.',
    formulas: [roomDeficit],
    source: {
      work: "ASHRAE 62.2",
      clause: "appendix on existing buildings, alternative for weak local fans",
      mark: "from memory",
    },
    troubles: [
      { when: "The room is not among those that count.", args: ["62.2-2016", "utility", 0] },
      { when: "The edition has no such alternative.", args: ["IRC-2021", "bathroom", 0] },
      { when: "The flow is text.", args: ["62.2-2016", "bathroom", "weak"] },
      {
        when: "The window is neither yes nor no.",
        args: ["62.2-2016", "bathroom", 0, "half"],
      },
    ],
    related: ["DEFICIT_RATE", "ROOM_RATE"],
  },
  {
    id: "DEFICIT_RATE",
    computes: [
      "A quarter of the sum of the deficits of a dwelling's rooms is added to its rate.",
      "Give the deficits of one dwelling only. Blank cells are rooms not entered; where all are blank the result is blank.",
      verify,
    ],
    result: "Raised rate, in the unit of the total.",
    formulas: [rateWithDeficits],
    source: {
      work: "ASHRAE 62.2",
      clause: "appendix on existing buildings, alternative for weak local fans",
      mark: "from memory",
    },
    troubles: [
      { when: "The edition has no such alternative.", args: ["IRC-2021", 60, [30, 20]] },
      { when: "A deficit is text.", args: ["62.2-2016", 84, [30, "none"]] },
    ],
    related: ["DEFICIT", "FAN_RATE"],
  },
  {
    id: "BALANCED_RATE",
    computes: [
      "IRC and IMC take 30 % off the dwelling rate of a system that is balanced and ducted to the rooms that the code names.",
      verify,
    ],
    result: "Rate after the reduction, in the unit of the rate.",
    formulas: [balancedRate],
    source: { work: "IRC 2021", clause: "M1505.4.3, exception", mark: "from memory" },
    troubles: [
      { when: "The edition has no such reduction.", args: ["62.2-2016", 60, "yes"] },
      { when: "It is not said whether it is balanced.", args: ["IRC-2021", 60, ""] },
    ],
    related: ["DWELLING_RATE"],
  },
];
