import {
  both,
  isBlank,
  isNumber,
  nothing,
  orNothing,
  plus,
  same,
  setting,
  sum,
  times,
  unlessBlank,
  value,
  when,
} from "./expression";
import { money, noteField, number, type SheetLayout, text } from "./field";

/** What a fan of the catalogue is for. */
export const catalogueUses = ["kitchen hood", "other rooms"] as const;

const rating = { measure: "flow", format: "0", isAside: true } as const;

/**
 * A row a fan that can be bought, by whose rating an estimate chooses, and a row a duct, named as
 * the schedule names it ("flex 4"), with the cost of a foot or a metre. How many of each the
 * schedule asks for stands beside it: the order list.
 */
export const catalogueLayout: SheetLayout = {
  kind: "catalogue",
  title: "Catalogue",
  words: ["catalogue", "catalog", "fan list", "fans on offer"],
  names: ["model"],
  features: ["estimate"],
  fields: [
    text("model", "Model", "fan model, item", { needed: true }),
    number("rated", "Rated flow", "rated, rating", {
      measure: "flow",
      format: "0",
      needed: true,
    }),
    text("serves", "For", "for rooms, kind of fan, application, use", {
      choices: catalogueUses,
    }),
    number("watts", "Watts", "power, w"),
    number("sones", "Sones", "sound, sone"),
    number("cost", "Cost", "price, unit cost, unit price, cost each, net price", money),
    number("quantity", "Quantity", "qty", {
      format: "#,##0.##",
      is: unlessBlank(
        ["model"],
        plus(
          sum("schedule", "count", { model: "model" }),
          sum("schedule", "ductLength", { ductItem: "model" }),
        ),
      ),
    }),
    text("per", "Counted in", "", {
      is: unlessBlank(
        ["model"],
        when(
          isBlank("rated"),
          when(same(setting("units"), value("si")), value("m"), value("ft")),
          value("fans"),
        ),
      ),
    }),
    number("all", "Cost of all", "cost of the item", {
      ...money,
      is: when(both(isNumber("quantity"), isNumber("cost")), times("quantity", "cost"), nothing),
    }),
    noteField,
    // Of a row that does not say what it is for, any room may have the fan.
    number("ratedHood", "Rated, for hoods", "", {
      ...rating,
      is: when(same("serves", value(catalogueUses[1])), nothing, orNothing("rated")),
    }),
    number("ratedOther", "Rated, for other rooms", "", {
      ...rating,
      is: when(same("serves", value(catalogueUses[0])), nothing, orNothing("rated")),
    }),
  ],
};
