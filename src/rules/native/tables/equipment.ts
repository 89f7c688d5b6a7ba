import {
  designMatchRules,
  ductRules,
  efficacyRules,
  makeupAirRules,
  soundRules,
} from "../../../editions";
import { numberOfName } from "../names";
import { rowOf, statedSystems, tableOf } from "../table";
import { endless } from "../text";

export const efficacies = tableOf("Least efficacy of fans", () =>
  efficacyRules.flatMap(({ code, rows }) =>
    rows.flatMap(({ fan, from, below, least, source }) =>
      statedSystems(least).map((system) => {
        const cells = {
          Fan: fan,
          System: system,
          "Flow from": from ?? 0,
          "Flow below": below ?? endless,
          "Least, cfm/W": least[system] as number,
        };
        return rowOf(code, cells, source, { "Fan no.": numberOfName("fan", fan) });
      }),
    ),
  ),
);

export const soundLimits = tableOf("Sound limits", () =>
  soundRules.map(({ code, limits, exemptAbove, remoteDuct, source }) => {
    const cells = {
      "On demand, sones": limits["on demand"],
      "Continuous, sones": limits.continuous,
      "Exempt above, ip": exemptAbove.ip ?? null,
      "Exempt above, si": exemptAbove.si ?? null,
      "Duct of a remote fan, ft": remoteDuct.ip ?? null,
    };
    return rowOf(code, cells, source);
  }),
);

/** Where each code's table of ducts ends. */
export const ductCodes = tableOf("Ducts: flows and elbows", () =>
  ductRules.map(({ code, ratedFlows, elbow, freeElbows, source }) => {
    const cells = {
      "Most flow, cfm": ratedFlows.at(-1) ?? 0,
      "Each elbow, ft": elbow,
      "Free elbows": freeElbows ?? 0,
    };
    return rowOf(code, cells, source);
  }),
);

/** Printed lengths, a row each. 0: not allowed. */
export const ductLengths = tableOf("Longest ducts", () =>
  ductRules.flatMap(({ code, ratedFlows, rows }) =>
    rows.flatMap(({ duct, diameter, lengths, source }) => {
      const wider = rows.find((each) => each.duct === duct && each.diameter > diameter);
      return lengths.map((length, c) => {
        const cells = {
          Duct: duct,
          "Diameter from, in": diameter,
          "Diameter below, in": wider?.diameter ?? endless,
          "Flow above, cfm": ratedFlows[c - 1] ?? 0,
          "Flow to, cfm": ratedFlows[c] ?? 0,
          "Length, ft": Number.isFinite(length) ? length : endless,
        };
        return rowOf(code, cells, source, { "Duct no.": numberOfName("duct", duct) });
      });
    }),
  ),
);

export const makeupLimits = tableOf("Makeup air", () =>
  makeupAirRules.flatMap(({ code, above, aboveWithout, onlyWithAppliance, source }) =>
    statedSystems(above).map((system) => {
      const cells = {
        System: system,
        "Above, cfm or L/s": above[system] as number,
        "Without an appliance": aboveWithout?.[system] ?? (above[system] as number),
        "Only with an appliance": onlyWithAppliance ? 1 : 0,
      };
      return rowOf(code, cells, source);
    }),
  ),
);

export const designTolerances = tableOf("Tolerance to a design flow", () =>
  designMatchRules.flatMap(({ code, within, share, source }) =>
    statedSystems(within).map((system) =>
      rowOf(code, { System: system, Within: within[system] as number, Share: share }, source),
    ),
  ),
);
