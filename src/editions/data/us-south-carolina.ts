import { sourcesIn } from "../documents";
import { edition } from "../edition";

const title = "South Carolina Residential Code 2021";

export const southCarolina = edition("SC-2021", title, "ip", {
  aliases: ["South Carolina 2021", "South Carolina"],
  makeupAir: {
    above: { ip: 400 },
    onlyWithAppliance: false,
    note: "hoods; only what exceeds the limit",
    source: sourcesIn(title)("M1503.6", "read", "southCarolina"),
  },
});
