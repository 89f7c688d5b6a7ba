import {
  both,
  type Expression,
  isNumber,
  less,
  nothing,
  over,
  plus,
  same,
  setting,
  times,
  unlessBlank,
  value,
  when,
} from "./expression";
import { type Field, money, number } from "./field";

/**
 * What a dwelling, a plan or a phase costs. A sum in which something has no cost, or hours without
 * a rate, are left blank: a blank is never a cost of zero.
 */
export function moneyFields(
  rest: Pick<Field, "feature">,
  named: readonly string[],
  sumOf: (key: "materials" | "hours") => Expression,
): Field[] {
  const amount = { ...rest, ...money };
  return [
    number("materials", "Fans and ducts", "material cost, materials", {
      ...amount,
      is: unlessBlank(named, when(same("unpriced", value(0)), sumOf("materials"), nothing)),
    }),
    number("hours", "Hours", "labour hours, labor hours", {
      ...rest,
      format: "0.0",
      is: unlessBlank([...named, setting("hoursFan"), setting("hoursDwelling")], sumOf("hours")),
    }),
    number("labour", "Labour", "labor, labour cost, labor cost", {
      ...amount,
      is: unlessBlank(["hours", setting("hourRate")], times("hours", setting("hourRate"))),
    }),
    number("expense", "Cost in all", "total cost, cost total", {
      ...amount,
      is: when(
        both(isNumber("materials"), isNumber("labour")),
        plus("materials", "labour"),
        nothing,
      ),
    }),
    number("price", "Price with margin", "sale price, price", {
      ...amount,
      is: unlessBlank(
        ["expense", setting("priceMargin")],
        over("expense", less(value(1), over(setting("priceMargin"), value(100)))),
      ),
    }),
  ];
}
