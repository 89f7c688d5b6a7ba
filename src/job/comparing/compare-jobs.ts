import { cellName, grouped, isSameValue } from "../../cells";
import type { JobCheck } from "../check-job";
import { jobSettings, layouts } from "../columns";
import { type Finding, findingKinds } from "../findings";
import type { JobFile } from "../grid";
import type { Job } from "../read";
import { type Change, type ChangeKind, changeKinds, textOf } from "./change";
import { compareOthers } from "./compare-others";
import { compareRows } from "./compare-rows";

export { type Change, type ChangeKind, shownStates } from "./change";

/**
 * What is otherwise in the later of two states: settings, rows matched by their names, field by
 * field, sheets, and what the check finds. Columns may stand in another order. Workbooks without
 * anything of a job are compared cell by cell, and of a job the cells that no field names.
 */
export function compareChecks(old: JobCheck, now: JobCheck): Change[] {
  const [before, after] = [old.job.file, now.job.file];
  const isJob = old.isJob || now.isJob;
  const changes = [
    ...compareSheets(before, after),
    ...compareSettings(old.job, now.job),
    ...(isJob ? layouts.flatMap(({ kind }) => compareRows(old.job, now.job, kind)) : []),
    ...compareOthers(old.job, now.job, isJob),
    ...compareFindings(old.findings, now.findings),
  ];
  const place = (kind: ChangeKind) => changeKinds.indexOf(kind);
  return changes.sort((a, b) => place(a.kind) - place(b.kind));
}

function compareSheets(before: JobFile, after: JobFile): Change[] {
  const names = (file: JobFile) =>
    new Map(file.sheets.map(({ name }) => [name.toLowerCase(), name]));
  const [old, now] = [names(before), names(after)];
  const change = (kind: ChangeKind, sheet: string): Change => ({ ...blank, kind, sheet });
  return [
    ...[...now].flatMap(([key, name]) => (old.has(key) ? [] : [change("sheet added", name)])),
    ...[...old].flatMap(([key, name]) => (now.has(key) ? [] : [change("sheet removed", name)])),
  ];
}

const blank = { cell: "", about: "", field: "", before: "", after: "", rows: 1 };

/** Settings that name a standard, or the number that every flow rests on. */
const kindOfSetting: Readonly<Record<string, ChangeKind>> = {
  edition: "edition",
  method: "edition",
  equipment: "edition",
  ducts: "edition",
  programme: "edition",
  constant: "constant",
};

function compareSettings(before: Job, after: Job): Change[] {
  return jobSettings.flatMap(({ key, label }): Change[] => {
    const [old, now] = [settingOf(before, key), settingOf(after, key)];
    if (isSameValue(old.value, now.value)) return [];
    const { sheet, cell } = now.cell === "" ? old : now;
    const kind = kindOfSetting[key] ?? "setting";
    const [was, is] = [textOf(old.value), textOf(now.value)];
    return [{ ...blank, kind, sheet, cell, field: label, before: was, after: is }];
  });
}

function settingOf({ fit, file }: Job, key: string) {
  const at = fit.settings.get(key);
  const grid = at && file.sheets.find(({ name }) => name === at.sheet);
  if (!at || !grid) return { sheet: "", cell: "", value: null };
  return { sheet: at.sheet, cell: cellName(at.row, at.col), value: grid.value(at.row, at.col) };
}

/** Findings by what they are about, so that a row that moved keeps its own. */
function compareFindings(before: readonly Finding[], after: readonly Finding[]): Change[] {
  const left = grouped(before, keyOf);
  const changes: Change[] = [];
  for (const finding of after) {
    const same = left.get(keyOf(finding))?.shift();
    if (!same) changes.push(toChange("finding new", finding, "", finding.what));
    else if (stateOf(same) !== stateOf(finding))
      changes.push(toChange("acceptance", finding, stateOf(same), stateOf(finding)));
  }
  for (const gone of left.values())
    for (const finding of gone) changes.push(toChange("finding gone", finding, finding.what, ""));
  return changes;
}

function keyOf({ kind, sheet, cell, about }: Finding): string {
  const column = /^[A-Z]*/.exec(cell)?.[0] ?? "";
  return [kind, sheet.toLowerCase(), about === "" ? cell : `${about}\u0000${column}`].join(
    "\u0000",
  );
}

function stateOf({ accepted, lapsed }: Finding): string {
  if (accepted) return `accepted by ${accepted.initials}: ${accepted.reason}`;
  return lapsed ? `open again, accepted before by ${lapsed.initials}` : "open";
}

function toChange(kind: ChangeKind, finding: Finding, before: string, after: string): Change {
  const { sheet, cell, about } = finding;
  return {
    kind,
    sheet,
    cell,
    about,
    field: findingKinds[finding.kind].title,
    before,
    after,
    rows: 1,
  };
}
