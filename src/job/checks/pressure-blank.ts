import type { Check } from "./check";

/** Fans without any reading. */
export const checkPressureBlank: Check = (job, report) => {
  const { fans } = job;
  if (!fans) return;
  for (let i = 0; i < fans.length; i++) {
    if (fans.isAbsent(i) || job.firm?.says(i) === "pass") continue;
    if (job.firm && !job.firm.hasPressure(i) && fans.isMeasured(i)) continue;
    if (fans.isByInstrument(i)) {
      if (fans.deviceReadings(i).length === 0 && fans.deviceKeys[0])
        report.at("pressure-blank", fans.table, fans.deviceKeys[0], i, fans.label(i), {
          what: "an instrument is named but has no reading",
          effect: "The fan has no flow and no verdict. A blank is not a flow of 0.",
          mend: "Type the instrument's reading, or clear its name where the box was used.",
        });
      continue;
    }
    const typed = fans.typedPressure(i);
    const keys = [...fans.readingKeys, typed === "flow" ? typed : "pressure"];
    const gaps = keys.map((key) => fans.table.gap(key, i));
    const allBlank = gaps.every((gap) => gap === "blank" || gap === "absent");
    if (!allBlank || !Number.isNaN(fans.pressure[i])) continue;
    report.at("pressure-blank", fans.table, typed, i, fans.label(i), {
      what: typed === "flow" ? "no flow has been read" : "no pressure has been read",
      effect: "The fan has no flow and no verdict. A blank is not a flow of 0.",
      mend: "Measure the fan, or say in the note why it could not be measured.",
    });
  }
};
