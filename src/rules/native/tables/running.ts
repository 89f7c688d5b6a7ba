import { editions } from "../../../editions";
import { rowOf, tableOf } from "../table";

/** Fans that run part of the time: 1 by the share of each segment, 2 by the share of a cycle. */
export const runningRules = tableOf("Fans that run part of the time", () =>
  editions.flatMap(({ id, runTime, cycle }) => {
    const source = runTime?.source ?? cycle?.source;
    if (!source) return [];
    const cells = {
      Kind: runTime ? 1 : 2,
      Hours: runTime?.segmentHours ?? cycle?.averageHours ?? null,
      "Least share": runTime?.rows[0]?.[0] ?? cycle?.leastShare ?? 0,
    };
    return [rowOf(id, cells, source)];
  }),
);

/** Run-time factors, from one printed share to the next. */
export const runTimeFactors = tableOf("Run-time factors", () =>
  editions.flatMap(({ id, runTime }) =>
    (runTime?.rows ?? []).flatMap(([share, factor], i) => {
      if (!runTime) return [];
      const [before, at] = runTime.rows[i - 1] ?? [0, factor];
      const cells = {
        "Share above": before,
        "Share to": share,
        "Factor at the lower": at,
        "Factor at the upper": factor,
      };
      return [rowOf(id, cells, runTime.source)];
    }),
  ),
);
