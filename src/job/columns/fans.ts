import { matches, rangeStatuses, verdicts } from "../../rules";
import {
  atMost,
  both,
  countOf,
  type Expression,
  either,
  first,
  found,
  isBlank,
  isNumber,
  largest,
  nothing,
  over,
  rule,
  same,
  setting,
  unlessBlank,
  value,
  when,
  withField,
} from "./expression";
import { describedFields } from "./fan-described";
import { boxPressure, flowFields, isSupply } from "./fan-flows";
import { date, noteField, number, type SheetLayout, testerField, text, yesNo } from "./field";
import { openingsOfBox, units, window } from "./reused";

const flow = { measure: "flow" } as const;

/** The rows of one fan at one speed and one terminal. */
const sameFan = { dwelling: "dwelling", tag: "tag", speed: "speed", direction: "direction" };

/** What stands where the edition asks nothing of such a room, and what elsewhere. */
const whereAsked = (none: Expression, then: Expression) =>
  when(same("required", value("none")), none, then);

const isGuarded = same(setting("judging"), value("guarded"));

/** A row a fan, or a row a reading of it: at one of its speeds, before or after it was mended. */
export const fansLayout: SheetLayout = {
  kind: "fans",
  title: "Fans",
  words: ["fans", "fan tests", "fan readings", "exhaust fans", "readings", "flow tests", "tests"],
  names: ["dwelling", "tag"],
  fields: [
    ...describedFields,
    ...flowFields,
    text("status", "Range status", "range, pressure range, in range", {
      says: rangeStatuses,
      is: rule("RANGE_STATUS", boxPressure, ...window),
    }),
    number("required", "Required", "required flow, minimum, min flow, min, code minimum, target", {
      ...flow,
      says: ["none"],
      // A supply terminal has no exhaust rate to meet.
      is: when(
        isSupply,
        value("none"),
        rule(
          "ROOM_RATE",
          setting("edition"),
          "roomKind",
          "duty",
          "volume",
          units,
          withField("enclosed", "enclosed"),
          withField("cooking", "cooking"),
          withField("window", "window"),
          withField("enclosed", unlessBlank(["dwelling"], found("dwellings", "floor", "dwelling"))),
          withField("capture", "capture"),
        ),
      ),
    }),
    number("deficit", "Deficit", "room deficit", {
      ...flow,
      feature: "existing",
      is: when(
        same("duty", value("on demand")),
        rule(
          "DEFICIT",
          setting("edition"),
          "roomKind",
          when(same("tag", value("none")), value("none"), first("judged", "flow")),
          "window",
          units,
        ),
        nothing,
      ),
    }),
    number("chance", "Chance of meeting", "chance met, conformance probability", {
      format: "0.0%",
      feature: "spread",
      is: whereAsked(
        nothing,
        rule("CHANCE_MET", first("judged", "flow"), "spread", "required", "freedom"),
      ),
    }),
    text("verdict", "Verdict", "result, pass, pass fail, outcome, ok", {
      says: verdicts,
      is: rule(
        "VERDICT",
        first("judged", "flow"),
        "required",
        "status",
        withField("spread", when(isGuarded, "spread", nothing)),
        withField("spread", setting("chance")),
        withField("freedom", "freedom", isGuarded),
      ),
    }),
    text("stands", "Latest", "latest reading, stands", {
      says: yesNo,
      feature: "visits",
      is: unlessBlank(
        ["dwelling"],
        when(
          same(
            countOf("fans", "dwelling", {
              ...sameFan,
              visit: [">", largest(value(1), "visit")],
              flow: [">", value(0)],
              verdict: ["<>", value("out of range")],
            }),
            value(0),
          ),
          value("yes"),
          value("no"),
        ),
      ),
    }),
    number("review", "Reviewer's flow", "reviewer flow, flow of the reviewer", {
      ...flow,
      feature: "visits",
      entry: "seldom",
    }),
    number("counts", "Counts for the dwelling", "counted flow, whole house flow", {
      ...flow,
      feature: "visits",
      is: when(
        both(
          same("stands", value("yes")),
          isNumber(first("judged", "flow")),
          either(isBlank("status"), same("status", value("in range"))),
        ),
        when(
          isNumber("runShare"),
          over(first("judged", "flow"), rule("ON_RATE", setting("edition"), value(1), "runShare")),
          when(same("duty", value("continuous")), first("judged", "flow"), nothing),
        ),
        nothing,
      ),
    }),
    text("match", "Design match", "matches design", {
      says: matches,
      feature: "equipment",
      is: unlessBlank(
        [setting("programme"), "design"],
        // A fan on demand may move more than its design.
        when(
          both(same("duty", value("on demand")), isNumber("flow"), atMost("design", "flow")),
          value("matches"),
          rule("DESIGN_MATCH", setting("programme"), "design", "flow", units),
        ),
      ),
    }),
    testerField,
    date("date", "Date", "test date, tested on, date tested", { entry: "repeated" }),
    noteField,
    text("next", "Next opening", "opening to use next, try next", {
      isAside: true,
      is: rule("NEXT_OPENING", boxPressure, "area", ...openingsOfBox, ...window),
    }),
  ],
};
