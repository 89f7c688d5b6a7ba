import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { adoptedBalance, adoptedIrc, ircBalanced, listedAtQuarterInch } from "./us-irc";

const title = "Residential Code of New York State 2025";
const adopted = adoptedIrc(2024, title, "newYork");

export const newYork = edition("NY-2025", title, "ip", {
  aliases: ["New York 2025", "New York"],
  ...adopted,
  rooms: listedAtQuarterInch(adopted.rooms),
  balanced: ircBalanced(2024, title, "newYork"),
  balance: adoptedBalance(title, "newYork"),
  makeupAir: {
    above: { ip: 400 },
    onlyWithAppliance: true,
    source: sourcesIn(title)("M1503.6", "read", "newYork"),
  },
  notes: ["The whole-house system must be balanced."],
});
