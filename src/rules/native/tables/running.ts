import { editions } from "../../../editions";
import { numberOfName } from "../names";
import { numbered, type TableMaker, type TableRow, traced } from "../table";

/** Fans that run part of the time: 1 by the share of each segment, 2 by the share of a cycle. */
export const runningRules: TableMaker = (sheet) => {
  const rows = editions.flatMap(({ id, runTime, cycle }): TableRow[] => {
    const source = runTime?.source ?? cycle?.source;
    if (!source) return [];
    const row = {
      Edition: id,
      Kind: runTime ? 1 : 2,
      Hours: runTime?.segmentHours ?? cycle?.averageHours ?? null,
      "Least share": runTime?.rows[0]?.[0] ?? cycle?.leastShare ?? 0,
      "Edition no.": numberOfName("edition", id),
    };
    return [{ ...row, ...traced(source) }];
  });
  return numbered(sheet, "Fans that run part of the time", rows);
};

/** Run-time factors, from one printed share to the next. */
export const runTimeFactors: TableMaker = (sheet) => {
  const rows = editions.flatMap(({ id, runTime }) =>
    (runTime?.rows ?? []).map(([share, factor], i): TableRow => {
      const [before, at] = runTime?.rows[i - 1] ?? [0, factor];
      return {
        Edition: id,
        "Share above": before,
        "Share to": share,
        "Factor at the lower": at,
        "Factor at the upper": factor,
        "Edition no.": numberOfName("edition", id),
        ...(runTime && traced(runTime.source)),
      };
    }),
  );
  return numbered(sheet, "Run-time factors", rows);
};
