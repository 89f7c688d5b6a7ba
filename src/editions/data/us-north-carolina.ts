import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { adoptedIrc } from "./us-irc";

const title = "North Carolina Residential Code 2024";

export const northCarolina = edition("NC-2024", title, "ip", {
  aliases: ["North Carolina 2024", "North Carolina"],
  ...adoptedIrc(2021, title, "northCarolina", 2015),
  makeupAir: {
    above: { ip: 400 },
    aboveWithout: { ip: 600 },
    onlyWithAppliance: false,
    note: "only what exceeds the limit; the higher limit where every appliance is direct-vent, power-vent, unvented or electric",
    source: sourcesIn(title)("M1503.4, hoods", "read", "northCarolina"),
  },
  notes: [
    "Duct lengths go by the maker's criteria, a design or the measured flow: there is no table.",
    "No reduction for balanced systems.",
  ],
});
