import type { Field } from "./field";

/** The dwelling, by which the Dwellings and the Fans sheet know each other's rows. */
export const dwellingField: Field = {
  key: "dwelling",
  title: "Dwelling",
  words: ["unit", "lot", "home", "house", "address", "site", "apartment", "plot", "dwelling id"],
  holds: "text",
  needed: true,
};

export const noteField: Field = {
  key: "note",
  title: "Note",
  words: ["notes", "comment", "comments", "remarks"],
  holds: "text",
};
