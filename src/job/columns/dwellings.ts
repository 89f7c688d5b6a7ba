import { balances, verdicts } from "../../rules";
import {
  countOf,
  first,
  ifKept,
  isBlank,
  largest,
  less,
  nothing,
  orNothing,
  plus,
  rule,
  same,
  setting,
  sum,
  times,
  unlessBlank,
  value,
  when,
} from "./expression";
import { dwellingField, noteField, number, type SheetLayout, text, yesNo } from "./field";
import { moneyFields } from "./money";
import { units } from "./reused";

const flow = { measure: "flow" } as const;
const state = { feature: "conditions" } as const;
const existing = { feature: "existing" } as const;
const estimate = { feature: "estimate" } as const;

const ofSchedule = (key: string) => sum("schedule", key, { dwelling: "dwelling" });
const unpriced = (key: string) =>
  countOf("schedule", "dwelling", { dwelling: "dwelling", [key]: nothing });

const continuous = (key: string) =>
  sum("fans", key, { dwelling: "dwelling", duty: value("continuous") });

/** A row a dwelling. */
export const dwellingsLayout: SheetLayout = {
  kind: "dwellings",
  title: "Dwellings",
  words: ["dwellings", "units", "lots", "homes", "houses", "plots", "apartments"],
  names: ["dwelling"],
  fields: [
    dwellingField,
    text("plan", "Plan", "plan type, model, house type"),
    text("phase", "Phase", "release, stage, section, building phase", estimate),
    number("floor", "Floor area", "area, conditioned area, cfa, conditioned floor area, size", {
      measure: "floor",
      needed: true,
    }),
    number("bedrooms", "Bedrooms", "beds, br, bed rooms, no of bedrooms, number of bedrooms"),
    number(
      "leak50",
      "Leakage at 50 Pa",
      "leakage, cfm50, q50, blower door, air leakage, leakage 50",
      { ...flow, ...existing },
    ),
    number(
      "height",
      "Envelope height",
      "height, building height, house height, pressure boundary height",
      { measure: "distance", ...existing },
    ),
    number("exposed", "Exposed share", "exterior share, share of envelope outside", existing),
    text("balanced", "Balanced", "balanced system", { ...existing, choices: yesNo }),
    text(
      "appliance",
      "Open-flue appliance",
      "natural draft appliance, combustion appliance, open flue",
      { feature: "equipment", choices: yesNo },
    ),
    text("windows", "Windows and outer doors", "windows and doors, windows, outer doors", {
      ...state,
      choices: ["shut", "open"],
    }),
    text("others", "Other exhaust", "other fans, other exhaust fans", {
      ...state,
      choices: ["off", "on"],
    }),
    text("wind", "Wind", "weather, gusts", { ...state, choices: ["calm", "gusty"] }),
    number("baseline", "Baseline pressure", "baseline, house pressure at rest", {
      ...state,
      measure: "pressure",
    }),
    text("ducted", "Balanced and ducted", "balanced and distributed, balanced system ducted", {
      feature: "visits",
      choices: ["yes", "one", "no"],
    }),
    number("required", "Required", "required flow, dwelling rate, minimum, target", {
      ...flow,
      is: rule(
        "DWELLING_RATE",
        setting("edition"),
        "floor",
        orNothing("bedrooms"),
        setting("method"),
        units,
      ),
    }),
    number("ofSystem", "Rate of the system", "system rate, rate with the system", {
      ...flow,
      feature: "visits",
      is: when(
        isBlank("ducted"),
        "required",
        rule("BALANCED_RATE", setting("edition"), "required", "ducted"),
      ),
    }),
    number("deficits", "Room deficits", "sum of deficits, total deficit", {
      ...flow,
      ...existing,
      is: unlessBlank(["dwelling"], sum("fans", "deficit", { dwelling: "dwelling" })),
    }),
    number("raised", "Rate with deficits", "alternative rate, raised rate", {
      ...flow,
      ...existing,
      is: unlessBlank(
        ["dwelling"],
        rule("DEFICIT_RATE", setting("edition"), first("ofSystem", "required"), "deficits"),
      ),
    }),
    number("infiltration", "Infiltration", "infiltration flow, infiltration rate", {
      ...flow,
      ...existing,
      is: unlessBlank(
        ["leak50"],
        rule(
          "INFILTRATION",
          setting("edition"),
          "leak50",
          "floor",
          "height",
          setting("weather"),
          units,
        ),
      ),
    }),
    number("needed", "Fans must move", "fan flow needed, required fan flow, after credit", {
      ...flow,
      ...existing,
      is: when(
        isBlank("infiltration"),
        "raised",
        rule(
          "FAN_RATE",
          setting("edition"),
          "raised",
          "infiltration",
          orNothing("exposed"),
          "balanced",
          setting("work"),
          units,
          "floor",
        ),
      ),
    }),
    number("exhausted", "Exhaust", "exhaust flow, total exhaust", {
      ...flow,
      feature: "visits",
      is: unlessBlank(
        ["dwelling"],
        sum("fans", "counts", { dwelling: "dwelling", direction: ["<>", value("supply")] }),
      ),
    }),
    number("supplied", "Supply", "supply flow, total supply", {
      ...flow,
      feature: "visits",
      is: unlessBlank(
        ["dwelling"],
        sum("fans", "counts", { dwelling: "dwelling", direction: value("supply") }),
      ),
    }),
    text("balance", "Balance", "balance of supply and exhaust", {
      feature: "visits",
      says: balances,
      is: when(
        same("supplied", value(0)),
        nothing,
        rule("BALANCE", setting("edition"), "supplied", "exhausted", units),
      ),
    }),
    // What a dwelling gets: the flows by which its continuous fans are judged, taken together; of
    // supply and exhaust the larger, since the rest of the air comes or goes through the envelope.
    number("provided", "Continuous flow", "provided, provided flow, total flow, measured flow", {
      ...flow,
      is: unlessBlank(
        ["dwelling"],
        ifKept(
          "fans",
          "counts",
          largest("exhausted", "supplied"),
          ifKept("fans", "judged", continuous("judged"), continuous("flow")),
        ),
      ),
    }),
    number("missing", "Still missing", "missing, shortfall, short by", {
      ...flow,
      ...existing,
      is: unlessBlank(["needed"], largest(value(0), less("needed", "provided"))),
    }),
    text("verdict", "Verdict", "result, pass, pass fail, outcome", {
      says: verdicts,
      // No flow at all is a dwelling that nobody has measured.
      is: when(
        same("provided", value(0)),
        value("not measured"),
        rule("VERDICT", "provided", first("needed", "ofSystem", "required")),
      ),
    }),
    number("planned", "Planned fans", "fans planned", {
      ...estimate,
      format: "0",
      is: unlessBlank(["dwelling"], sum("schedule", "count", { dwelling: "dwelling" })),
    }),
    number("unpriced", "Without a cost", "not priced, unpriced", {
      ...estimate,
      format: "0",
      is: unlessBlank(["dwelling"], plus(unpriced("fanCost"), unpriced("ductCost"))),
    }),
    ...moneyFields(estimate, ["dwelling"], (key) =>
      key === "materials"
        ? plus(ofSchedule("fanCost"), ofSchedule("ductCost"))
        : plus(times("planned", setting("hoursFan")), setting("hoursDwelling")),
    ),
    noteField,
  ],
};
