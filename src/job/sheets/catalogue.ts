import type { SheetLayout } from "./field";

/** A row a fan that can be bought: the ratings that an estimate chooses from. */
export const catalogueLayout: SheetLayout = {
  kind: "catalogue",
  title: "Catalogue",
  words: ["catalogue", "catalog", "fan list", "fans on offer"],
  names: ["model"],
  fields: [
    { key: "model", title: "Model", words: ["fan model"], holds: "text", needed: true },
    {
      key: "rated",
      title: "Rated flow",
      words: ["rated", "rating"],
      holds: "number",
      measure: "flow",
      needed: true,
    },
    { key: "watts", title: "Watts", words: ["power", "w"], holds: "number" },
    { key: "sones", title: "Sones", words: ["sound", "sone"], holds: "number" },
    { key: "note", title: "Note", words: ["notes", "remarks"], holds: "text" },
  ],
};
