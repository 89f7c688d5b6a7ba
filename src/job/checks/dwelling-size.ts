import { shown } from "../../cells";
import { unitOf } from "../columns";
import { eachRow } from "./each";

/** Smallest and largest floor areas that are not doubted, m² (common practice). */
const usualFloor = { ip: [200, 12000], si: [18, 1100] } as const;

/** Floor area and bedrooms, without which a dwelling has no required rate. */
export const checkDwellingSize = eachRow("dwellings", (dwellings, job) => {
  const { system } = job.settings;
  const unit = unitOf("floor", system);
  const [least, most] = usualFloor[system];
  return (i, say) => {
    const floor = dwellings.number("floor", i);
    const effect = "The dwelling has no required rate, or a wrong one.";
    const gap = dwellings.gap("floor", i);
    if (gap === "blank" || floor < least || floor > most)
      say("dwelling-size", "floor", {
        what:
          gap === "blank"
            ? "the floor area is missing"
            : `a floor area of ${shown(floor)} ${unit} is unlikely`,
        effect,
        mend: `Type the floor area in ${unit}.`,
      });
    if (!dwellings.has("bedrooms")) return;
    const bedrooms = dwellings.number("bedrooms", i);
    const missing = dwellings.gap("bedrooms", i) === "blank";
    if (
      missing ||
      (!Number.isNaN(bedrooms) && (!Number.isInteger(bedrooms) || bedrooms < 0 || bedrooms > 12))
    )
      say("dwelling-size", "bedrooms", {
        what: missing
          ? "the number of bedrooms is missing"
          : `${bedrooms} bedrooms is no whole number from 0 to 12`,
        effect,
        mend: "Type the number of bedrooms; 0 for a studio.",
      });
  };
});
