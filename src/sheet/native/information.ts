import { type CellValue, errors, isCellError } from "../../cells";
import { Area } from "../area";
import type { Natives } from "./natives";

export function addInformation(to: Natives): void {
  const is = (name: string, test: (value: CellValue) => boolean) => to.add(name, "s", test);
  is("ISBLANK", (value) => value === null);
  is("ISNUMBER", (value) => typeof value === "number");
  is("ISTEXT", (value) => typeof value === "string");
  is("ISNONTEXT", (value) => typeof value !== "string");
  is("ISLOGICAL", (value) => typeof value === "boolean");
  is("ISERROR", isCellError);
  is("ISNA", (value) => isCellError(value) && value.error === errors.na.error);
  is("ISERR", (value) => isCellError(value) && value.error !== errors.na.error);
  to.add("ISODD", "n", (x) => Math.trunc(Math.abs(x)) % 2 === 1)
    .add("ISEVEN", "n", (x) => Math.trunc(Math.abs(x)) % 2 === 0)
    .add("NA", "", () => errors.na)
    .add("ISFORMULA", "r", (cell) =>
      cell instanceof Area
        ? cell.grid.formulaText(cell.top, cell.left) !== undefined
        : errors.value,
    );
}
