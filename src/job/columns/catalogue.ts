import { number, type SheetLayout, text } from "./field";

/** A row a fan that can be bought: the ratings that an estimate chooses from. */
export const catalogueLayout: SheetLayout = {
  kind: "catalogue",
  title: "Catalogue",
  words: ["catalogue", "catalog", "fan list", "fans on offer"],
  names: ["model"],
  features: ["estimate"],
  fields: [
    text("model", "Model", ["fan model"], { needed: true }),
    number("rated", "Rated flow", ["rated", "rating"], {
      measure: "flow",
      format: "0",
      needed: true,
    }),
    number("watts", "Watts", ["power", "w"]),
    number("sones", "Sones", ["sound", "sone"]),
    text("note", "Note", ["notes", "remarks"]),
  ],
};
