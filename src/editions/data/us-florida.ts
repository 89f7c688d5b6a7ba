import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { irc as ducts } from "./us-ducts";
import { adoptedBalance, adoptedIrc, ircBalanced, listedAtQuarterInch } from "./us-irc";

const title = "Florida Building Code, Residential, 2023";
const read = (clause: string) => sourcesIn(title)(clause, "read", "florida");
const adopted = adoptedIrc(2021, title, "florida", 2015);

export const florida = edition("FL-2023", title, "ip", {
  aliases: ["Florida 2023", "Florida"],
  ...adopted,
  rooms: listedAtQuarterInch(adopted.rooms),
  balanced: { ...ircBalanced(2021), source: read("M1507.3.3, exception 2") },
  balance: adoptedBalance(title, "florida", "supply"),
  ducts: ducts(title, "M1506.2", "florida"),
  makeupAir: {
    above: { ip: 400 },
    aboveWithout: { ip: 800 },
    onlyWithAppliance: false,
    note: "the higher limit in a one-family dwelling without a gravity-vented appliance",
    source: read("M1503.4, hoods"),
  },
});
