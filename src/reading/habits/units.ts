import type { SheetBlock } from "../blocks/block";
import type { Cells } from "../cells/cells";
import { unitsOfConstant } from "../physics/constants";
import { takeUnit } from "../text/heading";
import type { Role } from "../types";
import type { Answered } from "./answered";

const measured: readonly Role[] = ["pressure", "flow", "area", "diameter", "required", "rated"];

/** The units of the fields: by headings, else by what makes the constant a usual one, else by titles. */
export function unitsOf(
  block: SheetBlock,
  constant: number | undefined,
  titled: TitleUnits,
  answered: Answered,
): Partial<Record<Role, string>> {
  const units: Partial<Record<Role, string>> = {};
  for (const role of measured) {
    const unit = answered(role, "unit") ?? block.roles.get(role)?.unit;
    if (unit !== undefined) units[role] = unit;
  }
  const round = !block.roles.has("area") && block.roles.has("diameter");
  const hole = round ? "diameter" : "area";
  const stated = {
    flow: units.flow ?? units.required,
    pressure: units.pressure,
    area: units[hole],
  };
  if (constant !== undefined) {
    const fits =
      unitsOfConstant(constant, { ...titled, ...withoutBlanks(stated) }, round) ??
      unitsOfConstant(constant, stated, round);
    if (fits) {
      units.flow ??= fits.flow;
      units.pressure ??= fits.pressure;
      if (block.roles.has(hole)) units[hole] ??= fits.area;
    }
  }
  if (units.flow !== undefined && block.roles.has("required")) units.required ??= units.flow;
  if (units.required !== undefined && block.roles.has("flow")) units.flow ??= units.required;
  if (units.flow !== undefined && block.roles.has("rated")) units.rated ??= units.flow;
  return units;
}

function withoutBlanks(stated: Record<string, string | undefined>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(stated).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}

export interface TitleUnits {
  flow?: string;
  pressure?: string;
  area?: string;
}

/** Units that a title or a note names: "cfm (box in Pa, hole in sq inches)". */
export function titleUnits(sheets: readonly Cells[]): TitleUnits {
  const found: TitleUnits = {};
  for (const cells of sheets)
    for (let row = 0; row < Math.min(cells.rows, 8); row++)
      for (let col = 0; col < Math.min(cells.cols, 6); col++) {
        const words = cells.text(row, col).split(/[\s,;()[\]]+/);
        for (let at = 0; at < words.length; at++)
          for (const text of [words.slice(at, at + 2).join(" "), words[at]!]) {
            const unit = text.length > 1 ? takeUnit(`(${text})`).unit : undefined;
            if (
              unit?.dimension === "flow" ||
              unit?.dimension === "pressure" ||
              (unit?.dimension === "area" && unit.factor < 0.01)
            )
              found[unit.dimension as "flow"] ??= unit.name;
          }
      }
  return found;
}
