import { eachFan } from "./each";

/** Fans without any reading. */
export const checkPressureBlank = eachFan((fans, job) => (i, say) => {
  if (fans.isAbsent(i) || job.firm?.says(i) === "pass") return;
  if (job.firm && !job.firm.hasPressure(i) && fans.isMeasured(i)) return;
  if (fans.isByInstrument(i)) {
    if (fans.deviceReadings(i).length === 0 && fans.deviceKeys[0])
      say("pressure-blank", fans.deviceKeys[0], {
        what: "an instrument is named but has no reading",
        effect: "The fan has no flow and no verdict. A blank is not a flow of 0.",
        mend: "Type the instrument's reading, or clear its name where the box was used.",
      });
    return;
  }
  const typed = fans.typedPressure(i);
  const keys = [...fans.readingKeys, typed === "flow" ? typed : "pressure"];
  const gaps = keys.map((key) => fans.table.gap(key, i));
  const allBlank = gaps.every((gap) => gap === "blank" || gap === "absent");
  if (!allBlank || !Number.isNaN(fans.pressure[i])) return;
  say("pressure-blank", typed, {
    what: typed === "flow" ? "no flow has been read" : "no pressure has been read",
    effect: "The fan has no flow and no verdict. A blank is not a flow of 0.",
    mend: "Measure the fan, or say in the note why it could not be measured.",
  });
});
