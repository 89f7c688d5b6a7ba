import { type JobSize, type Places, placesOf, type RowFormulas } from "./formulas";
import { type JobPlan, plainPlan } from "./plan";

/** The formulas of a row of the Fans sheet. */
export function fanFormulas(row: number, size: JobSize, plan: JobPlan = plainPlan): RowFormulas {
  const places = placesOf("fans", row, size, plan);
  const { cell: c, has, column, setting: s } = places;
  const box = (key: string) => column("boxes", key);
  const list = `${box("opening")},${box("area")},${c("box")},${box("box")}`;
  const window = `${s("low")},${s("high")}`;
  const readings = `${c("reading1")}:${c("reading3")}`;
  const formulas: Record<string, string> = {
    area: openArea(places, "openings", "area"),
    pressure: `IF(COUNT(${readings})=0,"",AVERAGE(${readings}))`,
    constant: `IF(${c("box")}="","",INDEX(${box("constant")},MATCH(${c("box")},${box("box")},0)))`,
    flow: measuredFlow(places),
    status: `FANROW.RANGE_STATUS(${c("pressure")},${window})`,
    required: `FANROW.ROOM_RATE(${s("edition")},${c("roomKind")},${c("duty")},${c("volume")},${s("units")})`,
    verdict: verdict(places),
    next: `FANROW.NEXT_OPENING(${c("pressure")},${c("area")},${list},${window})`,
  };
  if (has("areaLimit")) formulas.areaLimit = openArea(places, "openings", "areaLimit");
  if (has("spread")) {
    formulas.spread = spread(places, 1);
    formulas.expanded = spread(places, 3);
    formulas.chance = `FANROW.CHANCE_MET(${c("flow")},${c("spread")},${c("required")})`;
  }
  if (has("unboxed")) {
    formulas.area2 = openArea(places, "openings2", "area");
    formulas.unboxed = `IF(${c("pressure2")}="","",FANROW.UNBOXED_FLOW(${c("area")},${c("pressure")},${c("area2")},${c("pressure2")},${c("constant")},${s("units")}))`;
  }
  if (has("judged")) Object.assign(formulas, air(places));
  if (has("match"))
    formulas.match = `IF(OR(${s("programme")}="",${c("design")}=""),"",FANROW.DESIGN_MATCH(${s("programme")},${c("design")},${c("flow")},${s("units")}))`;
  if (has("deficit"))
    formulas.deficit = `IF(${c("duty")}="on demand",FANROW.DEFICIT(${s("edition")},${c("roomKind")},IF(${c("tag")}="none","none",${c("flow")}),${c("window")},${s("units")}),"")`;
  return formulas;
}

function openArea({ cell: c, column }: Places, openings: string, area: string): string {
  const list = ["opening", area].map((key) => column("boxes", key)).join(",");
  return `FANROW.OPEN_AREA(${c(openings)},${list},${c("box")},${column("boxes", "box")})`;
}

/** A box reading gives the flow through its openings, another instrument by its own constant. */
function measuredFlow(places: Places): string {
  const { cell: c, has, setting: s } = places;
  const byBox = `FANROW.FLOW(${c("area")},${c("pressure")},${c("constant")},${s("units")})`;
  if (!has("instrument")) return byBox;
  const readings = `${c("device1")}:${c("device3")}`;
  const byDevice = `FANROW.DEVICE_FLOW(AVERAGE(${readings}),${own(places, "constant")},${own(places, "exponent")})`;
  return `IF(${c("instrument")}="",${byBox},IF(COUNT(${readings})=0,"",${byDevice}))`;
}

function spread(places: Places, part: number): string {
  const { cell: c, has, setting: s } = places;
  const meter = ["meterPercent", "meterFloor", "resolution", "zero"].map(s).join(",");
  const byBox = `INDEX(FANROW.FLOW_SPREAD(${c("reading1")}:${c("reading3")},${c("area")},${c("areaLimit")},${c("constant")},${s("constantSpread")},${meter},${s("units")}),1,${part})`;
  if (!has("instrument")) return byBox;
  const limits = ["constant", "exponent", "percent", "floor", "resolution"]
    .map((key) => own(places, key))
    .join(",");
  const byDevice = `INDEX(FANROW.DEVICE_SPREAD(${c("device1")}:${c("device3")},${limits}),1,${part})`;
  return `IF(${c("instrument")}="",${byBox},${byDevice})`;
}

/** A column of the Instruments sheet in the row of the fan's own instrument. */
function own({ cell: c, column }: Places, key: string): string {
  return `INDEX(${column("instruments", key)},MATCH(${c("instrument")},${column("instruments", "instrument")},0))`;
}

function air({ cell: c, has, setting: s }: Places): Record<string, string> {
  const unboxed = has("unboxed")
    ? `IF(AND(${s("judgeBy")}="without box",ISNUMBER(${c("unboxed")})),${c("unboxed")},${c("flow")})`
    : c("flow");
  return {
    density: `IF(${c("flow")}="","",FANROW.AIR_DENSITY(IF(${c("temperature")}="",${s("temperature")},${c("temperature")}),${s("humidity")},${s("barometer")},${s("elevation")},${s("units")}))`,
    actual: `IF(${c("flow")}="","",${c("flow")}*FANROW.AIR_FACTOR(${c("density")}))`,
    standard: `FANROW.STANDARD_FLOW(${c("actual")},${c("density")})`,
    judged: `IF(${s("judgeBy")}="actual",${c("actual")},IF(${s("judgeBy")}="standard",${c("standard")},${unboxed}))`,
  };
}

function verdict({ cell: c, has, setting: s }: Places): string {
  const flow = c(has("judged") ? "judged" : "flow");
  const plain = `${flow},${c("required")},${c("status")}`;
  if (!has("spread")) return `FANROW.VERDICT(${plain})`;
  return `FANROW.VERDICT(${plain},IF(${s("judging")}="guarded",${c("spread")},""),${s("chance")})`;
}
