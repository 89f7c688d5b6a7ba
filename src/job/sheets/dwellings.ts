import { dwellingExtras } from "./dwelling-extras";
import type { SheetLayout } from "./field";
import { dwellingField, noteField } from "./shared-fields";

/** A row a dwelling. */
export const dwellingsLayout: SheetLayout = {
  kind: "dwellings",
  title: "Dwellings",
  words: ["dwellings", "units", "lots", "homes", "houses", "plots", "apartments"],
  names: ["dwelling"],
  fields: [
    dwellingField,
    { key: "plan", title: "Plan", words: ["plan type", "model", "house type"], holds: "text" },
    {
      key: "floor",
      title: "Floor area",
      words: ["area", "conditioned area", "cfa", "conditioned floor area", "size"],
      holds: "number",
      measure: "floor",
      needed: true,
    },
    {
      key: "bedrooms",
      title: "Bedrooms",
      words: ["beds", "br", "bed rooms", "no of bedrooms", "number of bedrooms"],
      holds: "number",
    },
    {
      key: "required",
      title: "Required",
      words: ["required flow", "dwelling rate", "minimum", "target"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "provided",
      title: "Continuous flow",
      words: ["provided", "provided flow", "total flow", "measured flow"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "verdict",
      title: "Verdict",
      words: ["result", "pass", "pass fail", "outcome"],
      holds: "text",
      computed: true,
    },
    noteField,
    ...dwellingExtras,
  ],
};
