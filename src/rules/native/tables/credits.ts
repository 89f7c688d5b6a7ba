import { balancedRules, balanceRules } from "../../../editions";
import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableMaker, type TableRow, traced } from "../table";

/** How a leakage at 50 Pa becomes infiltration. */
export const infiltrationRules: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachSystem((edition, system) => {
    const rule = edition.infiltration;
    const factor = rule?.factor[system];
    const height = rule?.referenceHeight[system];
    if (!rule || factor === undefined || height === undefined) return;
    rows.push({
      Edition: edition.id,
      System: system,
      Form: rule.form,
      Factor: factor,
      "Reference height": height,
      Exponent: rule.exponent,
      "Edition no.": numberOfName("edition", edition.id),
      ...traced(rule.source),
    });
  });
  return numbered(sheet, "Infiltration from the leakage at 50 Pa", rows);
};

/** How much of the infiltration fans need not move. A blank: the edition has no such rule. */
export const creditRules: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachSystem((edition, system) => {
    const rule = edition.credit;
    if (!rule) return;
    rows.push({
      Edition: edition.id,
      System: system,
      "New work, most of the total": rule.newWork?.mostOfTotal ?? null,
      "Share of the excess": rule.excess?.share ?? null,
      "Default by area": rule.excess?.byDefault[system] ?? null,
      "By exposure": rule.exposure ? 1 : 0,
      "By balance": rule.unbalanced ? 1 : 0,
      "Edition no.": numberOfName("edition", edition.id),
      ...traced(rule.source),
    });
  });
  return numbered(sheet, "Infiltration credit", rows);
};

/** Deficits of weak fans in existing dwellings: a row for each edition, system and room. */
export const deficitRooms: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachSystem((edition, system) => {
    for (const { room, rate } of edition.deficits?.rooms ?? []) {
      const rule = edition.deficits;
      const [needed, window] = [rate[system], rule?.window[system]];
      if (!rule || needed === undefined) continue;
      rows.push({
        Edition: edition.id,
        System: system,
        Room: room,
        "Rate, cfm or L/s": needed,
        "Credit of a window": window ?? null,
        "Part that is added": rule.share,
        "Edition no.": numberOfName("edition", edition.id),
        "Room no.": numberOfName("room", room),
        ...traced(rule.source),
      });
    }
  });
  return numbered(sheet, "Deficits in existing dwellings", rows);
};

/** What a balanced system takes off. */
export const balancedReductions: TableMaker = (sheet) => {
  const rows = balancedRules.map(
    ({ code, reduction, increase, source }): TableRow => ({
      Edition: code,
      Reduction: reduction,
      Increase: increase?.neither ?? 0,
      "Increase of one": increase?.one ?? 0,
      "Edition no.": numberOfName("edition", code),
      ...traced(source),
    }),
  );
  return numbered(sheet, "Balanced and ducted systems", rows);
};

/** How near supply and exhaust must be: a row for each definition of a code. */
export const balanceLimits: TableMaker = (sheet) => {
  const rows = balanceRules.flatMap(({ code, also, ...first }) =>
    [first, ...(also ? [also] : [])].map(
      ({ of, within, orFlow, source }, i): TableRow => ({
        Edition: code,
        Definition: i + 1,
        Within: within,
        "Of the supply": of === "supply" ? 1 : 0,
        "Or flow": orFlow?.ip ?? 0,
        "Edition no.": numberOfName("edition", code),
        ...traced(source),
      }),
    ),
  );
  return numbered(sheet, "Balance of supply and exhaust", rows);
};
