import {
  designMatchRules,
  ductRules,
  efficacyRules,
  makeupAirRules,
  soundRules,
} from "../../../editions";
import { numberOfName } from "../names";
import { numbered, statedSystems, type TableCell, type TableMaker, traced } from "../table";
import { endless } from "../text";

export const efficacies: TableMaker = (sheet) => {
  const rows = efficacyRules.flatMap(({ code, rows: own }) =>
    own.flatMap(({ fan, from, below, least, source }) =>
      statedSystems(least).map((system): TableCell[] => [
        code,
        fan,
        system,
        from ?? 0,
        below ?? endless,
        least[system] as number,
        numberOfName("edition", code),
        numberOfName("fan", fan),
        ...traced(source),
      ]),
    ),
  );
  const headings = [
    "Edition",
    "Fan",
    "System",
    "Flow from",
    "Flow below",
    "Least, cfm/W",
    "Edition no.",
    "Fan no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Least efficacy of fans", headings, rows);
};

export const soundLimits: TableMaker = (sheet) => {
  const rows = soundRules.map(({ code, limits, exemptAbove, remoteDuct, source }): TableCell[] => [
    code,
    limits["on demand"],
    limits.continuous,
    exemptAbove.ip ?? null,
    exemptAbove.si ?? null,
    remoteDuct.ip ?? null,
    numberOfName("edition", code),
    ...traced(source),
  ]);
  const headings = [
    "Edition",
    "On demand, sones",
    "Continuous, sones",
    "Exempt above, ip",
    "Exempt above, si",
    "Duct of a remote fan, ft",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Sound limits", headings, rows);
};

/** Where each code's table of ducts ends. */
export const ductCodes: TableMaker = (sheet) => {
  const rows = ductRules.map(({ code, ratedFlows, elbow, freeElbows, source }): TableCell[] => [
    code,
    ratedFlows.at(-1) ?? 0,
    elbow,
    freeElbows ?? 0,
    numberOfName("edition", code),
    ...traced(source),
  ]);
  const headings = [
    "Edition",
    "Most flow, cfm",
    "Each elbow, ft",
    "Free elbows",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Ducts: flows and elbows", headings, rows);
};

/** Printed lengths, a row each. 0: not allowed. */
export const ductLengths: TableMaker = (sheet) => {
  const rows = ductRules.flatMap(({ code, ratedFlows, rows: own }) =>
    own.flatMap(({ duct, diameter, lengths, source }) => {
      const wider = own.find((each) => each.duct === duct && each.diameter > diameter);
      return lengths.map((length, c): TableCell[] => [
        code,
        duct,
        diameter,
        wider?.diameter ?? endless,
        ratedFlows[c - 1] ?? 0,
        ratedFlows[c] ?? 0,
        Number.isFinite(length) ? length : endless,
        numberOfName("edition", code),
        numberOfName("duct", duct),
        ...traced(source),
      ]);
    }),
  );
  const headings = [
    "Edition",
    "Duct",
    "Diameter from, in",
    "Diameter below, in",
    "Flow above, cfm",
    "Flow to, cfm",
    "Length, ft",
    "Edition no.",
    "Duct no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Longest ducts", headings, rows);
};

export const makeupLimits: TableMaker = (sheet) => {
  const rows = makeupAirRules.flatMap(({ code, above, aboveWithout, onlyWithAppliance, source }) =>
    statedSystems(above).map((system): TableCell[] => [
      code,
      system,
      above[system] as number,
      aboveWithout?.[system] ?? (above[system] as number),
      onlyWithAppliance ? 1 : 0,
      numberOfName("edition", code),
      ...traced(source),
    ]),
  );
  const headings = [
    "Edition",
    "System",
    "Above, cfm or L/s",
    "Without an appliance",
    "Only with an appliance",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Makeup air", headings, rows);
};

export const designTolerances: TableMaker = (sheet) => {
  const rows = designMatchRules.flatMap(({ code, within, share, source }) =>
    statedSystems(within).map((system): TableCell[] => [
      code,
      system,
      within[system] as number,
      share,
      numberOfName("edition", code),
      ...traced(source),
    ]),
  );
  const headings = ["Edition", "System", "Within", "Share", "Edition no.", "Clause", "Mark"];
  return numbered(sheet, "Tolerance to a design flow", headings, rows);
};
