import type { Field } from "./field";

type Rest = Partial<Field>;

const number = (key: string, title: string, after: string, words: string[], rest: Rest): Field => ({
  key,
  title,
  words,
  holds: "number",
  after,
  ...rest,
});
const text = (key: string, title: string, after: string, words: string[]): Field => ({
  key,
  title,
  words,
  holds: "text",
  after,
});
const flow = { measure: "flow" } as const;
const computedFlow = { measure: "flow", computed: true } as const;

/** Fan fields that a job has only where it wants what they serve. */
export const fanExtras: readonly Field[] = [
  // The fan itself and its duct
  text("fanKind", "Fan kind", "rated", ["kind of fan", "fan type"]),
  number("watts", "Watts", "fanKind", ["power", "input power", "w"], {}),
  number("sones", "Sones", "watts", ["sound", "sone", "loudness"], {}),
  number("design", "Design flow", "sones", ["design", "design airflow"], flow),
  text("ductKind", "Duct kind", "design", ["duct type", "duct material"]),
  number("ductDiameter", "Duct diameter", "ductKind", ["duct size", "duct dia"], {
    measure: "length",
  }),
  number("ductLength", "Duct length", "ductDiameter", ["length of duct", "duct run"], {
    measure: "distance",
  }),
  number("elbows", "Elbows", "ductLength", ["bends", "number of elbows"], {}),
  text("window", "Openable window", "duty", ["window", "operable window"]),
  // Another instrument than the box
  text("instrument", "Instrument", "openings", ["measured with", "meter used", "instrument used"]),
  number("device1", "Instrument reading 1", "reading3", ["instrument reading"], {}),
  number("device2", "Instrument reading 2", "device1", [], {}),
  number("device3", "Instrument reading 3", "device2", [], {}),
  // A second opening
  text("openings2", "Second openings", "pressure", ["openings second", "second opening"]),
  number("area2", "Second area", "openings2", ["second open area"], {
    measure: "opening",
    computed: true,
  }),
  number("pressure2", "Second pressure", "area2", ["second box pressure"], { measure: "pressure" }),
  number("unboxed", "Flow without the box", "flow", ["unboxed flow", "free flow"], computedFlow),
  // Spread
  number("areaLimit", "Area limit", "area", ["area plus minus"], {
    measure: "opening",
    computed: true,
  }),
  number("spread", "Spread", "unboxed", ["standard uncertainty", "uncertainty"], computedFlow),
  number("expanded", "± at 95 %", "spread", ["expanded uncertainty", "plus minus"], computedFlow),
  number("chance", "Chance of meeting", "required", ["chance met", "conformance probability"], {
    computed: true,
  }),
  // Air
  number("temperature", "Air temperature", "device3", ["air temperature f", "air temperature c"], {
    measure: "temperature",
  }),
  number("density", "Air density", "temperature", ["density"], { computed: true }),
  number("actual", "Actual flow", "expanded", ["actual air flow"], computedFlow),
  number("standard", "Standard flow", "actual", ["flow at standard air", "scfm"], computedFlow),
  number("judged", "Flow judged", "standard", ["judged flow"], computedFlow),
  // Programmes and existing buildings
  { ...text("match", "Design match", "verdict", ["matches design"]), computed: true },
  number("deficit", "Deficit", "required", ["room deficit"], computedFlow),
];
