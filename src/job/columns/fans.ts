import { cookings, ductKinds, duties, findDuty, roomKinds } from "../../editions";
import { matches, rangeStatuses, verdicts } from "../../rules";
import { attempt, valueIn } from "../read/maybe";
import {
  atMost,
  average,
  both,
  cells,
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
  type Part,
  placeOf,
  rule,
  same,
  setting,
  sizeOf,
  times,
  unlessBlank,
  unlessNone,
  value,
  when,
  withField,
} from "./expression";
import { date, dwellingField, noteField, number, type SheetLayout, text, yesNo } from "./field";
import {
  constantOfBox,
  meanReading,
  ofOpenings,
  openingsOfBox,
  readings,
  units,
  window,
} from "./reused";

const flow = { measure: "flow" } as const;
const reading = (n: number, word: string) =>
  number(
    `reading${n}`,
    `Reading ${n}`,
    [`pressure ${n}`, `p${n}`, `dp ${n}`, `dp${n}`, `${word} reading`],
    { measure: "pressure" },
  );

const deviceReadings = cells("device1", "device2", "device3");
const ofInstrument = (key: string) => found("instruments", key, "instrument");

/** A box reading gives the flow through its openings, another instrument by its own constant. */
const byInstrument = (box: Expression, device: Expression) =>
  when(isBlank("instrument"), box, device);

const spreadByBox = (place: number, of: Part) =>
  placeOf(
    place,
    "FLOW_SPREAD",
    of,
    "area",
    "areaLimit",
    "constant",
    ...["constantSpread", "meterPercent", "meterFloor", "resolution", "zero"].map(setting),
    units,
  );

const isSupply = same("direction", value("supply"));

/** The air of a supply presses on the box: its sign is the other one, and no slip. */
const boxPressure = when(isSupply, unlessBlank(["pressure"], sizeOf("pressure")), "pressure");

const spreadOf = (place: number) =>
  byInstrument(
    when(
      isSupply,
      spreadByBox(place, boxPressure),
      unlessNone(readings, spreadByBox(place, readings)),
    ),
    unlessNone(
      deviceReadings,
      placeOf(
        place,
        "DEVICE_SPREAD",
        deviceReadings,
        ...["constant", "exponent", "percent", "floor", "resolution"].map(ofInstrument),
      ),
    ),
  );

/** The rows of one fan at one speed and one terminal. */
const sameFan = { dwelling: "dwelling", tag: "tag", speed: "speed", direction: "direction" };

const judgedBy = (flowName: string) => same(setting("judgeBy"), value(flowName));

/** What stands where the edition asks nothing of such a room, and what elsewhere. */
const whereAsked = (none: Expression, then: Expression) =>
  when(same("required", value("none")), none, then);

/** A row a fan, or a row a reading of it: at one of its speeds, before or after it was mended. */
export const fansLayout: SheetLayout = {
  kind: "fans",
  title: "Fans",
  words: ["fans", "fan tests", "fan readings", "exhaust fans", "readings", "flow tests", "tests"],
  names: ["dwelling", "tag"],
  fields: [
    dwellingField,
    text("tag", "Fan", [
      "fan tag",
      "tag",
      "fan id",
      "fan no",
      "fan number",
      "fan #",
      "ef",
      "fan label",
    ]),
    text("room", "Room", ["location", "room name", "space"]),
    text(
      "roomKind",
      "Room kind",
      ["room type", "rm type", "kind of room", "type of room", "space type"],
      { choices: roomKinds },
    ),
    text("duty", "Duty", ["mode", "operation", "running", "control", "fan duty", "run mode"], {
      choices: duties,
      reads: (text) => valueIn(attempt(() => findDuty(text))) ?? "",
    }),
    number("visit", "Visit", ["visit no", "test no", "attempt"], {
      format: "0",
      feature: "visits",
    }),
    text("speed", "Speed", ["fan speed", "speed setting"], {
      feature: "visits",
      choices: ["low", "boost"],
    }),
    text("direction", "Direction", ["air direction", "exhaust or supply", "terminal"], {
      feature: "visits",
      choices: ["exhaust", "supply"],
      reads: (text) => (/^(sup|inlet|in$)/i.test(text) ? "supply" : text),
    }),
    number("runShare", "Share of time on", ["run share", "run time", "on time"], {
      format: "0%",
      feature: "visits",
    }),
    text("window", "Openable window", ["window", "operable window"], {
      feature: "existing",
      choices: yesNo,
    }),
    number("volume", "Room volume", ["volume", "kitchen volume"], { measure: "volume" }),
    text("enclosed", "Enclosed kitchen", ["enclosed", "closed kitchen"], {
      feature: "kitchens",
      choices: yesNo,
    }),
    text("cooking", "Cooking", ["cooks with", "cooktop", "hob", "range fuel"], {
      feature: "kitchens",
      choices: cookings,
    }),
    number("capture", "Capture efficiency", ["capture", "capture %", "ce"], {
      format: "0",
      feature: "kitchens",
    }),
    number(
      "rated",
      "Rated flow",
      ["rated", "rating", "nameplate", "nameplate flow", "rated fan flow", "label flow"],
      { ...flow, format: "0" },
    ),
    text("fanKind", "Fan kind", ["kind of fan", "fan type"], { feature: "equipment" }),
    number("watts", "Watts", ["power", "input power", "w"], { feature: "equipment" }),
    number("sones", "Sones", ["sound", "sone", "loudness"], { feature: "equipment" }),
    number("design", "Design flow", ["design", "design airflow"], {
      ...flow,
      feature: "equipment",
    }),
    text("ductKind", "Duct kind", ["duct type", "duct material"], {
      feature: "equipment",
      choices: ductKinds,
    }),
    number("ductDiameter", "Duct diameter", ["duct size", "duct dia"], {
      measure: "length",
      feature: "equipment",
    }),
    number("ductLength", "Duct length", ["length of duct", "duct run"], {
      measure: "distance",
      feature: "equipment",
    }),
    number("elbows", "Elbows", ["bends", "number of elbows"], { feature: "equipment" }),
    text("box", "Box", ["flow box", "box id", "box used", "device"]),
    text("openings", "Openings in use", [
      "openings",
      "opening",
      "openings open",
      "opening used",
      "hole",
      "holes",
      "holes open",
    ]),
    text("instrument", "Instrument", ["measured with", "meter used", "instrument used"], {
      feature: "instruments",
    }),
    text("seal", "Seal", ["box seal", "gasket"], {
      feature: "conditions",
      choices: ["tight", "leaky"],
    }),
    number("grille", "Grille area", ["grille", "hood area", "grille size"], {
      measure: "opening",
      feature: "conditions",
    }),
    text("shared", "Shared duct with", ["shared duct", "duct shared with", "booster"], {
      feature: "conditions",
    }),
    number("area", "Open area", ["area", "opening area", "hole area", "total area"], {
      measure: "opening",
      is: ofOpenings("openings", "area"),
    }),
    number("areaLimit", "Area limit", ["area plus minus"], {
      measure: "opening",
      feature: "spread",
      is: ofOpenings("openings", "areaLimit"),
    }),
    reading(1, "first"),
    reading(2, "second"),
    reading(3, "third"),
    number("device1", "Instrument reading 1", ["instrument reading"], { feature: "instruments" }),
    number("device2", "Instrument reading 2", [], { feature: "instruments" }),
    number("device3", "Instrument reading 3", [], { feature: "instruments" }),
    number("temperature", "Air temperature", ["air temperature f", "air temperature c"], {
      measure: "temperature",
      feature: "air",
    }),
    number("density", "Air density", ["density"], {
      format: "0.000",
      feature: "air",
      is: unlessBlank(
        ["flow"],
        rule(
          "AIR_DENSITY",
          when(isBlank("temperature"), setting("temperature"), "temperature"),
          ...["humidity", "barometer", "elevation"].map(setting),
          units,
        ),
      ),
    }),
    number(
      "pressure",
      "Box pressure",
      ["pressure", "mean pressure", "pressure drop", "dp", "delta p", "box dp", "avg pressure"],
      { measure: "pressure", is: meanReading },
    ),
    text("openings2", "Second openings", ["openings second", "second opening"], {
      feature: "twoOpenings",
    }),
    number("area2", "Second area", ["second open area"], {
      measure: "opening",
      feature: "twoOpenings",
      is: ofOpenings("openings2", "area"),
    }),
    number("pressure2", "Second pressure", ["second box pressure"], {
      measure: "pressure",
      feature: "twoOpenings",
    }),
    number("constant", "Constant", ["flow constant", "coefficient", "factor", "k"], {
      format: "0.00",
      is: constantOfBox,
    }),
    number(
      "flow",
      "Flow",
      ["measured flow", "measured", "actual flow", "tested flow", "air flow", "airflow"],
      {
        ...flow,
        is: byInstrument(
          rule("FLOW", "area", boxPressure, "constant", units),
          unlessNone(
            deviceReadings,
            rule(
              "DEVICE_FLOW",
              average(deviceReadings),
              ofInstrument("constant"),
              ofInstrument("exponent"),
            ),
          ),
        ),
      },
    ),
    number("unboxed", "Flow without the box", ["unboxed flow", "free flow"], {
      ...flow,
      feature: "twoOpenings",
      is: unlessBlank(
        ["pressure2"],
        rule("UNBOXED_FLOW", "area", "pressure", "area2", "pressure2", "constant", units),
      ),
    }),
    number("spread", "Spread", ["standard uncertainty", "uncertainty"], {
      ...flow,
      feature: "spread",
      is: spreadOf(1),
    }),
    number("freedom", "Degrees of freedom", ["freedom", "dof"], {
      format: "0.0",
      says: ["infinite"],
      feature: "spread",
      is: spreadOf(2),
    }),
    number("expanded", "± at 95 %", ["expanded uncertainty", "plus minus"], {
      ...flow,
      feature: "spread",
      is: spreadOf(3),
    }),
    number("actual", "Actual flow", ["actual air flow"], {
      ...flow,
      feature: "air",
      is: unlessBlank(["flow", "density"], times("flow", rule("AIR_FACTOR", "density"))),
    }),
    number("standard", "Standard flow", ["flow at standard air", "scfm"], {
      ...flow,
      feature: "air",
      is: rule("STANDARD_FLOW", "actual", "density"),
    }),
    number("judged", "Flow judged", ["judged flow"], {
      ...flow,
      feature: "air",
      is: when(
        judgedBy("actual"),
        "actual",
        when(
          judgedBy("standard"),
          "standard",
          when(both(judgedBy("without box"), isNumber("unboxed")), "unboxed", "flow"),
        ),
      ),
    }),
    text("status", "Range status", ["range", "pressure range", "in range"], {
      says: rangeStatuses,
      is: rule("RANGE_STATUS", boxPressure, ...window),
    }),
    number(
      "required",
      "Required",
      ["required flow", "minimum", "min flow", "min", "code minimum", "target"],
      {
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
            withField(
              "enclosed",
              when(same("dwelling", nothing), nothing, found("dwellings", "floor", "dwelling")),
            ),
            withField("capture", "capture"),
          ),
        ),
      },
    ),
    number("deficit", "Deficit", ["room deficit"], {
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
    number("chance", "Chance of meeting", ["chance met", "conformance probability"], {
      format: "0.0%",
      feature: "spread",
      is: whereAsked(
        nothing,
        rule("CHANCE_MET", first("judged", "flow"), "spread", "required", "freedom"),
      ),
    }),
    text("verdict", "Verdict", ["result", "pass", "pass fail", "outcome", "ok"], {
      says: verdicts,
      is: rule(
        "VERDICT",
        first("judged", "flow"),
        "required",
        "status",
        withField("spread", when(same(setting("judging"), value("guarded")), "spread", nothing)),
        withField("spread", setting("chance")),
        withField("freedom", "freedom"),
      ),
    }),
    text("stands", "Latest", ["latest reading", "stands"], {
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
    number("review", "Reviewer's flow", ["reviewer flow", "flow of the reviewer"], {
      ...flow,
      feature: "visits",
    }),
    number("counts", "Counts for the dwelling", ["counted flow", "whole house flow"], {
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
    text("match", "Design match", ["matches design"], {
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
    text("next", "Next opening", ["opening to use next", "try next"], {
      is: rule("NEXT_OPENING", boxPressure, "area", ...openingsOfBox, ...window),
    }),
    text("tester", "Tester", ["tech", "technician", "tested by", "by"]),
    date("date", "Date", ["test date", "tested on", "date tested"]),
    noteField,
  ],
};
