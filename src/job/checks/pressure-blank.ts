import type { Check } from "./check";

/** Fans without any reading. */
export const checkPressureBlank: Check = (job, report) => {
  const { fans } = job;
  if (!fans) return;
  for (let i = 0; i < fans.length; i++) {
    const keys = fans.readingKeys.length > 0 ? [...fans.readingKeys, "pressure"] : ["pressure"];
    const gaps = keys.map((key) => fans.table.gap(key, i));
    const allBlank = gaps.every((gap) => gap === "blank" || gap === "absent");
    if (!allBlank || !Number.isNaN(fans.pressure[i])) continue;
    report.at("pressure-blank", fans.table, fans.typedPressure(i), i, fans.label(i), {
      what: "no pressure has been read",
      effect: "The fan has no flow and no verdict. A blank is not a flow of 0.",
      mend: "Measure the fan, or say in the note why it could not be measured.",
    });
  }
};
