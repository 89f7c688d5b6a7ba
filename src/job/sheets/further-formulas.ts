import { type JobSize, placesOf, type RowFormulas } from "./formulas";
import type { JobPlan } from "./plan";

/** The formulas of a row of the Pairs sheet. */
export function pairFormulas(row: number, size: JobSize, plan: JobPlan): RowFormulas {
  const { cell: c, column, setting: s } = placesOf("pairs", row, size, plan);
  const box = (key: string) => column("boxes", key);
  return {
    area: `FANROW.OPEN_AREA(${c("openings")},${box("opening")},${box("area")},${c("box")},${box("box")})`,
    constant: `IF(${c("box")}="","",INDEX(${box("constant")},MATCH(${c("box")},${box("box")},0)))`,
    boxFlow: `FANROW.FLOW(${c("area")},${c("pressure")},${c("constant")},${s("units")})`,
    difference: `IF(OR(${c("boxFlow")}="",${c("reference")}=""),"",100*(${c("boxFlow")}-${c("reference")})/${c("reference")})`,
  };
}

/** The formulas of a row of the Registers sheet. */
export function registerFormulas(row: number, size: JobSize, plan: JobPlan): RowFormulas {
  const { cell: c, setting: s } = placesOf("registers", row, size, plan);
  const readings = `${c("reading1")}:${c("reading3")}`;
  return {
    pressure: `IF(COUNT(${readings})=0,"",AVERAGE(${readings}))`,
    status: `FANROW.PAN_STATUS(${readings},${s("panLimit")},${s("panSpan")})`,
  };
}

/** The formulas of a row of the Schedule sheet. */
export function scheduleFormulas(row: number, size: JobSize, plan: JobPlan): RowFormulas {
  const { cell: c, column, setting: s } = placesOf("schedule", row, size, plan);
  const box = (key: string) => column("boxes", key);
  const dwelling = (key: string) => column("dwellings", key);
  const room = `FANROW.ROOM_RATE(${s("edition")},${c("roomKind")},${c("duty")},${c("volume")},${s("units")})`;
  const whole = `INDEX(${dwelling("required")},MATCH(${c("dwelling")},${dwelling("dwelling")},0))`;
  const list = `${box("opening")},${box("area")},${c("box")},${box("box")},${s("constant")}`;
  return {
    required: `IF(${c("dwelling")}="","",IF(${c("whole")}="yes",MAX(${room},${whole}),${room}))`,
    buy: `IF(${c("required")}="","",FANROW.FAN_SIZE(${c("required")},${s("margin")},${column("catalogue", "rated")}))`,
    allowed: `IF(OR(${c("buy")}="",${c("ductKind")}=""),"",FANROW.DUCT_LIMIT(${s("ducts")},${c("ductKind")},${c("ductDiameter")},${c("buy")},${c("elbows")},${s("units")}))`,
    duct: `IF(OR(${c("allowed")}="",${c("ductLength")}=""),"",IF(${c("allowed")}="no limit","fits",IF(${c("allowed")}="not allowed","too narrow",IF(${c("ductLength")}<=${c("allowed")},"fits","too long"))))`,
    openings: `IF(OR(${c("buy")}="",${c("box")}=""),"",FANROW.EXPECTED_OPENING(${c("buy")},${list},${s("low")},${s("high")},${s("units")}))`,
  };
}
