import { fanFormulas } from "./fan-formulas";
import type { SheetKind } from "./field";
import { dwellingFormulas, type JobSize, openingFormulas, type RowFormulas } from "./formulas";
import { pairFormulas, registerFormulas, scheduleFormulas } from "./further-formulas";
import type { JobPlan } from "./plan";

/** The formulas of a row of a job sheet, by field; none where its fields are all typed. */
export function formulasOf(
  kind: SheetKind,
  row: number,
  size: JobSize,
  plan: JobPlan,
): RowFormulas {
  switch (kind) {
    case "fans":
      return fanFormulas(row, size, plan);
    case "dwellings":
      return dwellingFormulas(row, size, plan);
    case "boxes":
      return openingFormulas(row, plan);
    case "pairs":
      return pairFormulas(row, size, plan);
    case "registers":
      return registerFormulas(row, size, plan);
    case "schedule":
      return scheduleFormulas(row, size, plan);
    case "instruments":
    case "catalogue":
      return {};
  }
}
