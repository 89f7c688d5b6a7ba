import { countOf, type Expression, same, sum, unlessBlank, value, when } from "./expression";
import { noteField, number, type SheetLayout, text } from "./field";
import { moneyFields } from "./money";

/** Over the dwellings of a plan, of a phase, or over all of them. */
const over = (of: (where: Readonly<Record<string, string>>) => Expression): Expression =>
  when(
    same("by", value("plan")),
    of({ plan: "name" }),
    when(same("by", value("phase")), of({ phase: "name" }), of({})),
  );

const summed = (key: string) => over((where) => sum("dwellings", key, where));

/** A row a plan and a row a phase, and one for all dwellings. */
export const totalsLayout: SheetLayout = {
  kind: "totals",
  title: "Totals",
  words: ["totals", "totals by plan and phase"],
  names: ["by", "name"],
  features: ["estimate"],
  fields: [
    text("by", "Total by", "by", { needed: true, choices: ["plan", "phase", "all"] }),
    text("name", "Plan or phase", "", { needed: true }),
    number("dwellings", "Number of dwellings", "dwelling count", {
      format: "0",
      is: unlessBlank(
        ["by"],
        over((where) => countOf("dwellings", "dwelling", where)),
      ),
    }),
    number("planned", "Planned fans", "fans planned", {
      format: "0",
      is: unlessBlank(["by"], summed("planned")),
    }),
    number("unpriced", "Without a cost", "not priced, unpriced", {
      format: "0",
      is: unlessBlank(["by"], summed("unpriced")),
    }),
    ...moneyFields({}, ["by"], summed),
    noteField,
  ],
};
