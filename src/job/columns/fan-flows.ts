import {
  average,
  both,
  cells,
  type Expression,
  found,
  isBlank,
  isNumber,
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
} from "./expression";
import { type Field, number, text } from "./field";
import { constantOfBox, meanReading, ofOpenings, readings, units } from "./reused";

const flow = { measure: "flow" } as const;
const reading = (n: number, word: string) =>
  number(`reading${n}`, `Reading ${n}`, `pressure ${n}, p${n}, dp ${n}, dp${n}, ${word} reading`, {
    measure: "pressure",
    ...(n > 1 ? ({ entry: "seldom" } as const) : {}),
  });

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

export const isSupply = same("direction", value("supply"));

/** The air of a supply presses on the box: its sign is the other one, and no slip. */
export const boxPressure = when(
  isSupply,
  unlessBlank(["pressure"], sizeOf("pressure")),
  "pressure",
);

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

const judgedBy = (flowName: string) => same(setting("judgeBy"), value(flowName));

/** What is read at a fan, and the flow and its spread that come of it. */
export const flowFields: readonly Field[] = [
  number("area", "Open area", "area, opening area, hole area, total area", {
    measure: "opening",
    is: ofOpenings("openings", "area"),
  }),
  number("areaLimit", "Area limit", "area plus minus", {
    measure: "opening",
    feature: "spread",
    is: ofOpenings("openings", "areaLimit"),
  }),
  reading(1, "first"),
  reading(2, "second"),
  reading(3, "third"),
  number("device1", "Instrument reading 1", "instrument reading", { feature: "instruments" }),
  number("device2", "Instrument reading 2", "", { feature: "instruments" }),
  number("device3", "Instrument reading 3", "", { feature: "instruments" }),
  number("temperature", "Air temperature", "air temperature f, air temperature c", {
    measure: "temperature",
    feature: "air",
  }),
  number("density", "Air density", "density", {
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
    "pressure, mean pressure, pressure drop, dp, delta p, box dp, avg pressure",
    { measure: "pressure", is: meanReading },
  ),
  text("openings2", "Second openings", "openings second, second opening", {
    feature: "twoOpenings",
    entry: "seldom",
  }),
  number("area2", "Second area", "second open area", {
    measure: "opening",
    feature: "twoOpenings",
    is: ofOpenings("openings2", "area"),
  }),
  number("pressure2", "Second pressure", "second box pressure", {
    measure: "pressure",
    feature: "twoOpenings",
    entry: "seldom",
  }),
  number("constant", "Constant", "flow constant, coefficient, factor, k", {
    format: "0.00",
    is: constantOfBox,
  }),
  number("flow", "Flow", "measured flow, measured, actual flow, tested flow, air flow, airflow", {
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
  }),
  number("unboxed", "Flow without the box", "unboxed flow, free flow", {
    ...flow,
    feature: "twoOpenings",
    is: unlessBlank(
      ["pressure2"],
      rule("UNBOXED_FLOW", "area", "pressure", "area2", "pressure2", "constant", units),
    ),
  }),
  number("spread", "Spread", "standard uncertainty, uncertainty", {
    ...flow,
    feature: "spread",
    is: spreadOf(1),
  }),
  number("freedom", "Degrees of freedom", "freedom, dof", {
    format: "0.0",
    says: ["infinite"],
    feature: "spread",
    is: spreadOf(2),
  }),
  number("expanded", "± at 95 %", "expanded uncertainty, plus minus", {
    ...flow,
    feature: "spread",
    is: spreadOf(3),
  }),
  number("actual", "Actual flow", "actual air flow", {
    ...flow,
    feature: "air",
    is: unlessBlank(["flow", "density"], times("flow", rule("AIR_FACTOR", "density"))),
  }),
  number("standard", "Standard flow", "flow at standard air, scfm", {
    ...flow,
    feature: "air",
    is: rule("STANDARD_FLOW", "actual", "density"),
  }),
  number("judged", "Flow judged", "judged flow", {
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
];
