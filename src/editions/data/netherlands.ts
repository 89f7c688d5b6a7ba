import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomTable } from "../room";

const source = sourcesIn("Bbl, and Bouwbesluit 2012 article 3.29");
const recalled = (clause: string) => source(clause, "from memory", "dutch");

export const netherlands = edition("NL-BBL", "Netherlands, Bbl (Bouwbesluit 2012, 3.29)", "si", {
  aliases: ["Bbl", "Bouwbesluit 2012", "Netherlands"],
  rooms: roomTable({ system: "si", is: "capacity" }, () => recalled("extract rates"), [
    ["kitchen", null, 21],
    ["kitchen hood", null, 21],
    ["bathroom", null, 14],
    ["toilet", null, 7],
  ]),
  dwelling: [
    {
      method: "larger",
      system: "si",
      areaRate: 0.9,
      leastBedrooms: 0,
      byBedrooms: [7],
      eachFurther: 0,
      source: recalled("least rate of a living area"),
      areaSource: recalled("rate by living area"),
    },
  ],
  notes: ["The area rate goes by the floor of the living area."],
});
