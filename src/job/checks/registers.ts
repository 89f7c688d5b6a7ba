import { shown } from "../../cells";
import { panReading, panStatus, usualPan } from "../../rules";
import { eachRow } from "./each";

/** How far the house may be from 50 Pa while the pan is read (common practice). */
const houseTolerance = 3;

/** Registers read with the closed box as a pressure pan. */
export const checkRegisters = eachRow("registers", (table, job) => {
  const { panLimit, panSpan } = job.settings;
  const keys = ["reading1", "reading2", "reading3"].filter((key) => table.has(key));
  const wanted = usualPan.house.value;
  return (i, say) => {
    const readings = keys
      .map((key) => table.number(key, i))
      .filter((value) => !Number.isNaN(value));
    const first = keys[0] ?? "pressure";
    const read = panReading(readings);
    if (!read)
      return say("register-blank", first, {
        what: "the register has no pan reading",
        effect: "Nothing is known of the duct behind it. A blank is not a reading of 0.",
        mend: "Read it, or say in the note why it could not be read.",
      });
    const house = Math.abs(table.number("house", i));
    if (table.has("house") && !(Math.abs(house - wanted) <= houseTolerance))
      say("register-house", "house", {
        what: Number.isNaN(house)
          ? "no house pressure is recorded"
          : `the house stood at ${shown(house)} Pa, not at about ${wanted}`,
        effect: "Pan readings compare only at one house pressure.",
        mend: `Bring the house to ${wanted} Pa and read again.`,
      });
    const status = panStatus(readings, panLimit, panSpan);
    if (status === "repeat")
      say("register-repeat", first, {
        what: `the readings lie ${shown(read.span)} Pa apart; the job allows ${shown(panSpan)}`,
        effect: "The pan was not seated the same way each time.",
        mend: "Seat the pan again and read until two readings agree.",
      });
    else if (status === "leaks")
      say("register-leaks", first, {
        what: `${shown(read.mean)} Pa is above the ${shown(panLimit)} Pa that the job sets (common practice)`,
        effect: "The duct behind this register leaks to outdoors.",
        mend: "Seal the boot and the duct behind it, then read again.",
      });
  };
});
