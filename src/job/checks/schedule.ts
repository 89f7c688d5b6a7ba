import { shown } from "../../cells";
import { unitOf } from "../columns";
import { eachRow } from "./each";

/** Planned fans that cannot be bought, cannot be ducted as drawn, or cannot be measured. */
export const checkSchedule = eachRow("schedule", (table, job) => {
  const { catalogue } = job.tables;
  const { margin, system } = job.settings;
  const unit = unitOf("flow", system);
  const length = unitOf("distance", system);
  const ratings = (room: string) =>
    Array.from(catalogue?.numbers("rated") ?? []).filter(
      (rated, at) =>
        rated > 0 && !isForOther(room, catalogue?.text("serves", at).toLowerCase() ?? ""),
    );
  const [hoods, others] = [ratings("kitchen hood"), ratings("")];
  return (i, say) => {
    const required = table.number("required", i);
    const least = required * (1 + margin / 100);
    const offered = table.text("roomKind", i) === "kitchen hood" ? hoods : others;
    const largest = Math.max(0, ...offered);
    if (required > 0 && catalogue && largest < least * (1 - 1e-9))
      say("schedule-fan", "buy", {
        what: `${shown(required)} ${unit} with ${shown(margin)} % more is ${shown(least)}; the largest on offer is rated ${shown(largest)}`,
        cause: shown(least),
        effect: "No fan of the list meets the rate.",
        mend: `List a larger fan on the ${catalogue?.name} sheet, or share the rate between two fans.`,
      });
    const duct = table.text("duct", i).toLowerCase();
    if (duct === "too long" || duct === "too narrow")
      say("schedule-duct", "duct", {
        what:
          duct === "too narrow"
            ? `the table allows no duct of this kind and width for a fan of ${shown(table.number("buy", i))} ${unit}`
            : `${shown(table.number("ductLength", i))} ${length} of duct are drawn where at most ${shown(table.number("allowed", i))} ${length} may be`,
        cause: [duct, "buy", "ductItem", "ductLength", "elbows"]
          .map((key) => (key === duct ? key : table.text(key, i)))
          .join(" "),
        effect:
          "The installed fan will move less than its rating; only a measured flow could waive the table.",
        mend: "Widen or shorten the duct, take out elbows, or plan to measure the installed flow.",
      });
    if (/^none\b/i.test(table.text("openings", i)))
      say("schedule-opening", "openings", {
        what: `no opening of ${table.text("box", i)} brings ${shown(table.number("buy", i))} ${unit} into the window`,
        cause: `${table.text("box", i)} ${table.text("buy", i)}`,
        effect: "The tester would come with the wrong box.",
        mend: "Name another box, or plan an opening for this flow.",
      });
  };
});

/** Whether a fan of the catalogue is for other rooms than this one. */
const isForOther = (room: string, serves: string) =>
  serves === (room === "kitchen hood" ? "other rooms" : "kitchen hood");

/** What is ordered without a cost; nothing is said while no cost at all is typed. */
export const checkCosts = eachRow("schedule", (schedule, { tables: { catalogue } }) => {
  if (!catalogue?.numbers("cost").some((cost) => cost >= 0)) return undefined;
  const priced = new Set(
    catalogue.texts("model").filter((_, i) => catalogue.number("cost", i) >= 0),
  );
  return (i, say) => {
    for (const [key, field] of Object.entries({ model: "fanCost", ductItem: "ductCost" })) {
      const item = schedule.text(key, i);
      if (item === "" || priced.has(item)) continue;
      const words = {
        what: `${item} has no cost on the ${catalogue.name} sheet`,
        effect: "The cost of its dwelling, plan and phase is left blank.",
        cause: item,
        mend: `Type its cost there${key === "ductItem" ? ", for a foot or a metre, in a row of that name" : ""}; 0 where others supply it.`,
      };
      say("cost-missing", field, words, item);
    }
  };
});
