import { type CellValue, errors, isCellError, numberedErrors } from "../../cells";
import { Area } from "../area";
import { Matrix } from "../values";
import type { Natives } from "./natives";
import { oneOf } from "./read";

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
  to.add("ISODD", "e", (x) => Math.trunc(Math.abs(x)) % 2 === 1)
    .add("ISEVEN", "e", (x) => Math.trunc(Math.abs(x)) % 2 === 0)
    .add("ERROR.TYPE", "s", (value) => {
      const place = isCellError(value) ? numberedErrors.indexOf(value.error) : -1;
      return place < 0 ? errors.na : place + 1;
    })
    .add("TYPE", "r", (value) => {
      if (value instanceof Matrix || (value instanceof Area && value.rows * value.cols > 1))
        return 64;
      const one = oneOf(value);
      return isCellError(one) ? 16 : typeof one === "boolean" ? 4 : typeof one === "string" ? 2 : 1;
    })
    .add("NA", "", () => errors.na)
    .add("ISFORMULA", "r", (cell) =>
      cell instanceof Area
        ? cell.grid.formulaText(cell.top, cell.left) !== undefined
        : errors.value,
    );
}
