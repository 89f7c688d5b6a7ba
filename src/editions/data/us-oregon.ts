import { sourcesIn } from "../documents";
import { edition } from "../edition";
import type { RoomKind, RoomRule } from "../room";
import { northwest } from "./us-ducts";
import { adoptedBalance, ircBalanced, ircDwelling, ircRunTime } from "./us-irc";

const title = "Oregon Residential Specialty Code 2023";
const read = (clause: string) => sourcesIn(title)(clause, "read", "oregon");
const clause = "table M1505.5";

const listed = (
  room: RoomKind,
  duty: RoomRule["duty"],
  cfm: number,
  rest: Partial<RoomRule> = {},
): RoomRule => ({
  room,
  duty,
  rate: { ip: cfm },
  is: "listed",
  source: read(clause),
  ...rest,
});

export const oregon = edition("OR-2023", title, "ip", {
  aliases: ["Oregon 2023", "Oregon", "ORSC 2023"],
  rooms: [
    listed("kitchen hood", "on demand", 150),
    listed("kitchen", "on demand", 150),
    listed("bathroom", "on demand", 80, { listedAt: 0.1 }),
    listed("bathroom", "continuous", 20),
    listed("toilet", "on demand", 50, { when: { window: "none" } }),
  ],
  dwelling: ircDwelling(2021, title, "oregon"),
  runTime: ircRunTime(2021, title, "oregon"),
  balanced: ircBalanced(2021, title, "oregon"),
  balance: adoptedBalance(title, "oregon"),
  makeupAir: {
    above: { ip: 400 },
    onlyWithAppliance: false,
    note: "dryers above 200 cfm",
    source: read("M1503.6"),
  },
  sound: {
    limits: { "on demand": 3, continuous: 1 },
    exemptAbove: { ip: 400 },
    remoteDuct: { ip: 4 },
    source: read("M1505.5.1.1 to M1505.5.1.3"),
  },
  ducts: northwest(title, "M1504.2", "oregon", {
    ratedAt: 0.1,
    ratedFlows: [50, 80, 100, 125, 160],
  }),
  notes: ["The whole-house system must be balanced."],
});
