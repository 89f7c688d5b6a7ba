import {
  designMatchRules,
  ductRules,
  efficacyRules,
  makeupAirRules,
  soundRules,
} from "../../../editions";
import { numberOfName } from "../names";
import { numbered, statedSystems, type TableMaker, type TableRow, traced } from "../table";
import { endless } from "../text";

export const efficacies: TableMaker = (sheet) => {
  const rows = efficacyRules.flatMap(({ code, rows: own }) =>
    own.flatMap(({ fan, from, below, least, source }) =>
      statedSystems(least).map(
        (system): TableRow => ({
          Edition: code,
          Fan: fan,
          System: system,
          "Flow from": from ?? 0,
          "Flow below": below ?? endless,
          "Least, cfm/W": least[system] as number,
          "Edition no.": numberOfName("edition", code),
          "Fan no.": numberOfName("fan", fan),
          ...traced(source),
        }),
      ),
    ),
  );
  return numbered(sheet, "Least efficacy of fans", rows);
};

export const soundLimits: TableMaker = (sheet) => {
  const rows = soundRules.map(
    ({ code, limits, exemptAbove, remoteDuct, source }): TableRow => ({
      Edition: code,
      "On demand, sones": limits["on demand"],
      "Continuous, sones": limits.continuous,
      "Exempt above, ip": exemptAbove.ip ?? null,
      "Exempt above, si": exemptAbove.si ?? null,
      "Duct of a remote fan, ft": remoteDuct.ip ?? null,
      "Edition no.": numberOfName("edition", code),
      ...traced(source),
    }),
  );
  return numbered(sheet, "Sound limits", rows);
};

/** Where each code's table of ducts ends. */
export const ductCodes: TableMaker = (sheet) => {
  const rows = ductRules.map(
    ({ code, ratedFlows, elbow, freeElbows, source }): TableRow => ({
      Edition: code,
      "Most flow, cfm": ratedFlows.at(-1) ?? 0,
      "Each elbow, ft": elbow,
      "Free elbows": freeElbows ?? 0,
      "Edition no.": numberOfName("edition", code),
      ...traced(source),
    }),
  );
  return numbered(sheet, "Ducts: flows and elbows", rows);
};

/** Printed lengths, a row each. 0: not allowed. */
export const ductLengths: TableMaker = (sheet) => {
  const rows = ductRules.flatMap(({ code, ratedFlows, rows: own }) =>
    own.flatMap(({ duct, diameter, lengths, source }) => {
      const wider = own.find((each) => each.duct === duct && each.diameter > diameter);
      return lengths.map(
        (length, c): TableRow => ({
          Edition: code,
          Duct: duct,
          "Diameter from, in": diameter,
          "Diameter below, in": wider?.diameter ?? endless,
          "Flow above, cfm": ratedFlows[c - 1] ?? 0,
          "Flow to, cfm": ratedFlows[c] ?? 0,
          "Length, ft": Number.isFinite(length) ? length : endless,
          "Edition no.": numberOfName("edition", code),
          "Duct no.": numberOfName("duct", duct),
          ...traced(source),
        }),
      );
    }),
  );
  return numbered(sheet, "Longest ducts", rows);
};

export const makeupLimits: TableMaker = (sheet) => {
  const rows = makeupAirRules.flatMap(({ code, above, aboveWithout, onlyWithAppliance, source }) =>
    statedSystems(above).map(
      (system): TableRow => ({
        Edition: code,
        System: system,
        "Above, cfm or L/s": above[system] as number,
        "Without an appliance": aboveWithout?.[system] ?? (above[system] as number),
        "Only with an appliance": onlyWithAppliance ? 1 : 0,
        "Edition no.": numberOfName("edition", code),
        ...traced(source),
      }),
    ),
  );
  return numbered(sheet, "Makeup air", rows);
};

export const designTolerances: TableMaker = (sheet) => {
  const rows = designMatchRules.flatMap(({ code, within, share, source }) =>
    statedSystems(within).map(
      (system): TableRow => ({
        Edition: code,
        System: system,
        Within: within[system] as number,
        Share: share,
        "Edition no.": numberOfName("edition", code),
        ...traced(source),
      }),
    ),
  );
  return numbered(sheet, "Tolerance to a design flow", rows);
};
