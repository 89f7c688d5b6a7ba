import { balancedRules, balanceRules } from "../../../editions";
import { numberOfName } from "../names";
import { bySystem, rowOf, tableOf } from "../table";

/** How a leakage at 50 Pa becomes infiltration. */
export const infiltrationRules = tableOf("Infiltration from the leakage at 50 Pa", () =>
  bySystem(({ id, infiltration: rule }, system) => {
    const factor = rule?.factor[system];
    const height = rule?.referenceHeight[system];
    if (!rule || factor === undefined || height === undefined) return [];
    const { form, exponent } = rule;
    const cells = { System: system, Form: form, Factor: factor, "Reference height": height };
    return [rowOf(id, { ...cells, Exponent: exponent }, rule.source)];
  }),
);

/** How much of the infiltration fans need not move. A blank: the edition has no such rule. */
export const creditRules = tableOf("Infiltration credit", () =>
  bySystem(({ id, credit: rule }, system) => {
    if (!rule) return [];
    const cells = {
      System: system,
      "New work, most of the total": rule.newWork?.mostOfTotal ?? null,
      "Share of the excess": rule.excess?.share ?? null,
      "Default by area": rule.excess?.byDefault[system] ?? null,
      "By exposure": rule.exposure ? 1 : 0,
      "By balance": rule.unbalanced ? 1 : 0,
    };
    return [rowOf(id, cells, rule.source)];
  }),
);

/** Deficits of weak fans in existing dwellings: a row for each edition, system and room. */
export const deficitRooms = tableOf("Deficits in existing dwellings", () =>
  bySystem(({ id, deficits: rule }, system) =>
    (rule?.rooms ?? []).flatMap(({ room, rate }) => {
      const needed = rate[system];
      if (!rule || needed === undefined) return [];
      const cells = {
        System: system,
        Room: room,
        "Rate, cfm or L/s": needed,
        "Credit of a window": rule.window[system] ?? null,
        "Part that is added": rule.share,
      };
      return [rowOf(id, cells, rule.source, { "Room no.": numberOfName("room", room) })];
    }),
  ),
);

/** What a balanced system takes off. */
export const balancedReductions = tableOf("Balanced and ducted systems", () =>
  balancedRules.map(({ code, reduction, increase, source }) =>
    rowOf(
      code,
      {
        Reduction: reduction,
        Increase: increase?.neither ?? 0,
        "Increase of one": increase?.one ?? 0,
      },
      source,
    ),
  ),
);

/** How near supply and exhaust must be: a row for each definition of a code. */
export const balanceLimits = tableOf("Balance of supply and exhaust", () =>
  balanceRules.flatMap(({ code, also, ...first }) =>
    [first, ...(also ? [also] : [])].map(({ of, within, orFlow, source }, i) => {
      const cells = {
        Definition: i + 1,
        Within: within,
        "Of the supply": of === "supply" ? 1 : 0,
        "Or flow": orFlow?.ip ?? 0,
      };
      return rowOf(code, cells, source);
    }),
  ),
);
