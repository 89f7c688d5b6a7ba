import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { adoptedIrc } from "./us-irc";

const title = "Alaska's amendment of the IRC 2018";

export const alaska = edition("AK-2018", title, "ip", {
  aliases: ["Alaska 2018", "Alaska"],
  ...adoptedIrc(2018, title, "alaska"),
  dwelling: [
    {
      method: "equation",
      areaRate: { ip: 0.03 },
      personRate: { ip: 10 },
      leastBedrooms: 0,
      source: sourcesIn(title)("M1505.4.3 (unusual: check)", "read", "alaska"),
    },
  ],
});
