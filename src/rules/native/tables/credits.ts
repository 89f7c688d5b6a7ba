import { balancedRules, balanceRules } from "../../../editions";
import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableCell, type TableMaker, traced } from "../table";

/** How a leakage at 50 Pa becomes infiltration. */
export const infiltrationRules: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    const rule = edition.infiltration;
    const factor = rule?.factor[system];
    const height = rule?.referenceHeight[system];
    if (!rule || factor === undefined || height === undefined) return;
    rows.push([
      edition.id,
      system,
      rule.form,
      factor,
      height,
      rule.exponent,
      numberOfName("edition", edition.id),
      ...traced(rule.source),
    ]);
  });
  const headings = [
    "Edition",
    "System",
    "Form",
    "Factor",
    "Reference height",
    "Exponent",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Infiltration from the leakage at 50 Pa", headings, rows);
};

/** How much of the infiltration fans need not move. A blank: the edition has no such rule. */
export const creditRules: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    const rule = edition.credit;
    if (!rule) return;
    rows.push([
      edition.id,
      system,
      rule.newWork?.mostOfTotal ?? null,
      rule.excess?.share ?? null,
      rule.excess?.byDefault[system] ?? null,
      rule.exposure ? 1 : 0,
      rule.unbalanced ? 1 : 0,
      numberOfName("edition", edition.id),
      ...traced(rule.source),
    ]);
  });
  const headings = [
    "Edition",
    "System",
    "New work, most of the total",
    "Share of the excess",
    "Default by area",
    "By exposure",
    "By balance",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Infiltration credit", headings, rows);
};

/** Deficits of weak fans in existing dwellings: a row for each edition, system and room. */
export const deficitRooms: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    for (const { room, rate } of edition.deficits?.rooms ?? []) {
      const rule = edition.deficits;
      const [needed, window] = [rate[system], rule?.window[system]];
      if (!rule || needed === undefined) continue;
      rows.push([
        edition.id,
        system,
        room,
        needed,
        window ?? null,
        rule.share,
        numberOfName("edition", edition.id),
        numberOfName("room", room),
        ...traced(rule.source),
      ]);
    }
  });
  const headings = [
    "Edition",
    "System",
    "Room",
    "Rate, cfm or L/s",
    "Credit of a window",
    "Part that is added",
    "Edition no.",
    "Room no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Deficits in existing dwellings", headings, rows);
};

/** What a balanced system takes off. */
export const balancedReductions: TableMaker = (sheet) => {
  const rows = balancedRules.map(({ code, reduction, increase, source }): TableCell[] => [
    code,
    reduction,
    increase?.neither ?? 0,
    numberOfName("edition", code),
    ...traced(source),
  ]);
  const headings = ["Edition", "Reduction", "Increase", "Edition no.", "Clause", "Mark"];
  return numbered(sheet, "Balanced and ducted systems", headings, rows);
};

/** How near supply and exhaust must be: a row for each definition of a code. */
export const balanceLimits: TableMaker = (sheet) => {
  const rows = balanceRules.flatMap(({ code, also, ...first }) =>
    [first, ...(also ? [also] : [])].map(({ of, within, orFlow, source }, i): TableCell[] => [
      code,
      i + 1,
      within,
      of === "supply" ? 1 : 0,
      orFlow?.ip ?? 0,
      numberOfName("edition", code),
      ...traced(source),
    ]),
  );
  const headings = [
    "Edition",
    "Definition",
    "Within",
    "Of the supply",
    "Or flow",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Balance of supply and exhaust", headings, rows);
};
