import { editions } from "../../../editions";
import type { TableCell } from "../table-sheet";
import { numbered, numberOfName, type TableMaker, traced } from "./shared";

/** Fans that run part of the time: 1 by the share of each segment, 2 by the share of a cycle. */
export const runningRules: TableMaker = (sheet) => {
  const rows = editions.flatMap((edition): TableCell[][] => {
    const no = numberOfName("edition", edition.id);
    const { runTime, cycle } = edition;
    if (runTime) {
      const least = runTime.rows[0]?.[0] ?? 0;
      return [[edition.id, 1, runTime.segmentHours, null, least, no, ...traced(runTime.source)]];
    }
    if (!cycle) return [];
    const { averageHours, longer, source } = cycle;
    return [[edition.id, 2, averageHours, longer.mostHours, null, no, ...traced(source)]];
  });
  const headings = [
    "Edition",
    "Kind",
    "Hours",
    "Most hours",
    "Least share",
    "Edition no.",
    "Clause",
    "Mark",
  ];
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

/** Effectiveness over longer cycles; a share belongs to the first row that it does not pass. */
export const effectiveness: TableMaker = (sheet) => {
  const rows = editions.flatMap(({ id, cycle }) =>
    (cycle?.longer.rows ?? []).map((row, i): TableCell[] => [
      id,
      i + 1,
      row.upTo,
      row.edge === "inside" ? 1 : 0,
      row.effectiveness,
      numberOfName("edition", id),
      ...(cycle ? traced(cycle.longer.source) : []),
    ]),
  );
  const headings = [
    "Edition",
    "Row",
    "Share to",
    "Edge belongs",
    "Effectiveness",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Effectiveness over longer cycles", headings, rows);
};
