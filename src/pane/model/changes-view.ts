import { type Change, type ChangeKind, type Job, plainName, shownStates } from "../../job";

/** Changes as a reader asks for them. */
export const changeSorts = ["typed", "computed", "formula", "settings", "findings"] as const;
export type ChangeSort = (typeof changeSorts)[number];

/** One change in words. */
export interface ChangeView {
  readonly key: string;
  readonly sort: ChangeSort;
  /** "Reading 1 (Pa)", "row added", "new: pressure above the window". */
  readonly title: string;
  readonly before: string;
  readonly after: string;
  /** "in 27 rows alike"; "" for one. */
  readonly note: string;
  readonly sheet: string;
  /** The cell in the open workbook; "" where there is none any more. */
  readonly cell: string;
}

/** The changes of one row, or of what a sheet has besides rows. */
interface ChangeGroup {
  readonly key: string;
  readonly title: string;
  /** "Fans, row 9"; "" where the title says it. */
  readonly place: string;
  readonly changes: readonly ChangeView[];
}

const sorts: Readonly<Record<ChangeKind, ChangeSort>> = {
  "sheet added": "settings",
  "sheet removed": "settings",
  edition: "settings",
  constant: "settings",
  setting: "settings",
  "row added": "typed",
  "row removed": "typed",
  typed: "typed",
  formula: "formula",
  result: "computed",
  "finding new": "findings",
  "finding gone": "findings",
  acceptance: "findings",
};

/** A constant of one row is typed; the job's own is a setting. */
export function sortOf({ kind, about }: Change): ChangeSort {
  return kind === "constant" && about !== "" ? "typed" : sorts[kind];
}

export function countSorts(changes: readonly Change[]): Record<ChangeSort, number> {
  const counts = Object.fromEntries(changeSorts.map((sort) => [sort, 0])) as Record<
    ChangeSort,
    number
  >;
  for (const change of changes) counts[sortOf(change)]++;
  return counts;
}

/**
 * The changes of these sorts, by sheet as the workbook has them and then by row. No sorts chosen
 * means all.
 */
export function groupChanges(
  changes: readonly Change[],
  job: Job,
  chosen: readonly ChangeSort[] = [],
): ChangeGroup[] {
  const groups = new Map<string, Group>();
  changes.forEach((change, i) => {
    const sort = sortOf(change);
    if (chosen.length > 0 && !chosen.includes(sort)) return;
    const key = groupKey(change);
    const group = groups.get(key) ?? { at: change, views: [] };
    groups.set(key, group);
    // The row of the open workbook is the one to name.
    if (isOnlyOlder(group.at)) group.at = change;
    group.views.push(viewOf(change, i, sort));
  });
  const order = job.file.sheets.map(({ name }) => name.toLowerCase());
  const sheetAt = ({ sheet }: Change) => {
    const at = order.indexOf(sheet.toLowerCase());
    return at < 0 ? order.length : at;
  };
  return [...groups]
    .sort(([, { at: a }], [, { at: b }]) => sheetAt(a) - sheetAt(b) || rowOf(a) - rowOf(b))
    .map(([key, { at, views }]) => {
      const row = rowOf(at) > 0 ? `${at.sheet}, row ${rowOf(at)}` : at.sheet;
      const place = isOnlyOlder(at) ? `${row} of the older file` : row;
      return at.about === ""
        ? { key, title: place, place: "", changes: views }
        : { key, title: at.about, place, changes: views };
    });
}

interface Group {
  /** The change that tells where the group stands. */
  at: Change;
  readonly views: ChangeView[];
}

/** The first `most` changes, group by group. */
export function firstChanges(groups: readonly ChangeGroup[], most: number): ChangeGroup[] {
  const page: ChangeGroup[] = [];
  let left = most;
  for (const group of groups) {
    if (left <= 0) break;
    page.push({ ...group, changes: group.changes.slice(0, left) });
    left -= group.changes.length;
  }
  return page;
}

/** By the row's name, since a row may have moved; rows without one by their number in their file. */
function groupKey(change: Change): string {
  const { sheet, about } = change;
  const older = isOnlyOlder(change) ? "older " : "";
  const name = about === "" ? `${older}row ${rowOf(change)}` : plainName(about);
  return [sheet.toLowerCase(), name].join("\u0000");
}

/** The row of the cell, from 1; 0 where a whole sheet is meant. */
function rowOf({ cell }: Change): number {
  return Number(/\d+$/.exec(cell)?.[0] ?? 0);
}

/** Whether the cell that a change names is one of the older file. */
function isOnlyOlder({ kind }: Change): boolean {
  return kind === "row removed" || kind === "finding gone" || kind === "sheet removed";
}

function viewOf(change: Change, i: number, sort: ChangeSort): ChangeView {
  const { kind, sheet, cell, rows } = change;
  const [before, after] = shownStates(change);
  return {
    key: `${i}`,
    sort,
    title: titleOf(change),
    before,
    after,
    note: rows > 1 ? `alike in ${rows} rows` : "",
    sheet,
    cell: isOnlyOlder(change) ? "" : cell === "" && kind === "sheet added" ? "A1" : cell,
  };
}

function titleOf({ kind, field }: Change): string {
  switch (kind) {
    case "finding new":
      return `New: ${field}`;
    case "finding gone":
      return `Gone: ${field}`;
    case "sheet added":
    case "sheet removed":
    case "row added":
    case "row removed":
      return `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
    default:
      return field;
  }
}
