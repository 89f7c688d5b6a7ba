import { editions } from "../../../editions";
import { numberOfName } from "../names";
import { numbered, type TableCell, type TableMaker, traced } from "../table";

/** Fans that run part of the time: 1 by the share of each segment, 2 by the share of a cycle. */
export const runningRules: TableMaker = (sheet) => {
  const rows = editions.flatMap((edition): TableCell[][] => {
    const no = numberOfName("edition", edition.id);
    const { runTime, cycle } = edition;
    if (runTime) {
      const least = runTime.rows[0]?.[0] ?? 0;
      return [[edition.id, 1, runTime.segmentHours, least, no, ...traced(runTime.source)]];
    }
    if (!cycle) return [];
    return [[edition.id, 2, cycle.averageHours, null, no, ...traced(cycle.source)]];
  });
  const headings = ["Edition", "Kind", "Hours", "Least share", "Edition no.", "Clause", "Mark"];
  return numbered(sheet, "Fans that run part of the time", headings, rows);
};

/** Run-time factors, from one printed share to the next. */
export const runTimeFactors: TableMaker = (sheet) => {
  const rows = editions.flatMap(({ id, runTime }) =>
    (runTime?.rows ?? []).map(([share, factor], i): TableCell[] => {
      const [before, at] = runTime?.rows[i - 1] ?? [0, factor];
      const no = numberOfName("edition", id);
      return [id, before, share, at, factor, no, ...(runTime ? traced(runTime.source) : [])];
    }),
  );
  const headings = [
    "Edition",
    "Share above",
    "Share to",
    "Factor at the lower",
    "Factor at the upper",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Run-time factors", headings, rows);
};
