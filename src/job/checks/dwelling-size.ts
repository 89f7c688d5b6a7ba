import { shown } from "../../cells";
import { unitOf } from "../columns";
import type { Check } from "./check";

/** Smallest and largest floor areas that are not doubted, m² (common practice). */
const usualFloor = { ip: [200, 12000], si: [18, 1100] } as const;

/** Floor area and bedrooms, without which a dwelling has no required rate. */
export const checkDwellingSize: Check = (job, report) => {
  const { dwellings } = job.tables;
  if (!dwellings) return;
  const { system } = job.settings;
  const unit = unitOf("floor", system);
  const [least, most] = usualFloor[system];
  for (let i = 0; i < dwellings.length; i++) {
    const about = dwellings.text("dwelling", i);
    const floor = dwellings.number("floor", i);
    const effect = "The dwelling has no required rate, or a wrong one.";
    const gap = dwellings.gap("floor", i);
    if (gap === "blank" || floor < least || floor > most)
      report.at("dwelling-size", dwellings, "floor", i, about, {
        what:
          gap === "blank"
            ? "the floor area is missing"
            : `a floor area of ${shown(floor)} ${unit} is unlikely`,
        effect,
        mend: `Type the floor area in ${unit}.`,
      });
    if (!dwellings.has("bedrooms")) continue;
    const bedrooms = dwellings.number("bedrooms", i);
    const missing = dwellings.gap("bedrooms", i) === "blank";
    if (
      missing ||
      (!Number.isNaN(bedrooms) && (!Number.isInteger(bedrooms) || bedrooms < 0 || bedrooms > 12))
    )
      report.at("dwelling-size", dwellings, "bedrooms", i, about, {
        what: missing
          ? "the number of bedrooms is missing"
          : `${bedrooms} bedrooms is no whole number from 0 to 12`,
        effect,
        mend: "Type the number of bedrooms; 0 for a studio.",
      });
  }
};
