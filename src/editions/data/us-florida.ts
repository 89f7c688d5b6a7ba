import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { adoptedIrc, ircBalanced, listedAtQuarterInch } from "./us-irc";

const title = "Florida Building Code, Residential, 2023";
const adopted = adoptedIrc(2021, title, "florida", "table M1507.4");

export const florida = edition("FL-2023", title, "ip", {
  aliases: ["Florida 2023", "Florida"],
  ...adopted,
  rooms: listedAtQuarterInch(adopted.rooms),
  balanced: ircBalanced(2021, title, "florida"),
  makeupAir: {
    above: { ip: 400 },
    aboveWithout: { ip: 800 },
    onlyWithAppliance: false,
    note: "the higher limit in a one-family dwelling without a gravity-vented appliance",
    source: sourcesIn(title)("M1503.6", "read", "florida"),
  },
});
