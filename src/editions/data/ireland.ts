import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { extracts } from "./uk-adf";

const source = sourcesIn("TGD F 2019");

export const ireland = edition("TGDF-2019", "Ireland, Technical Guidance Document F 2019", "si", {
  aliases: ["TGD F 2019", "Ireland"],
  rooms: extracts(() =>
    source("extract rates (bath: read in the text of 2002)", "from memory", "archiseek"),
  ),
  dwelling: [
    {
      method: "larger",
      system: "si",
      areaRate: 0.3,
      // 5 L/s and 4 for each person, where persons are bedrooms + 1.
      leastBedrooms: 1,
      byBedrooms: [13],
      eachFurther: 4,
      byPersons: true,
      source: source(
        "5 L/s and 4 for each person (read), bedrooms + 1 taken",
        "common practice",
        "ireland",
      ),
      areaSource: source("0.3 L/s for each m²"),
    },
  ],
  notes: [
    "The rate goes by the persons that the dwelling is designed for; bedrooms plus one is taken where no more are given.",
  ],
});
