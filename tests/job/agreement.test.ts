import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { type CellValue, isSameNumber } from "../../src/cells";
import { toJobFile } from "../../src/command";
import {
  checkJob,
  type Finding,
  type Grid,
  type Job,
  type JobCheck,
  type JobFile,
  settingRow,
} from "../../src/job";
import { accountView } from "../../src/pane/model/account-view";
import { roomView } from "../../src/pane/model/rates-view";
import { fanReadings } from "../../src/pane/model/readings-view";
import { spreadView } from "../../src/pane/model/spread-view";
import { dwellingFacts } from "../../src/records/dwelling-facts";
import { fanFacts } from "../../src/records/fan-facts";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";
import { demoName, estimateName, existingName, proofName, wholeName } from "../../workbooks/files";

const today = 46_350;
const judgeBys = ["measured", "actual", "standard", "without box"];
const judgings = ["simple", "guarded"];

/** A demo workbook with these settings, recalculated by the sheet model. */
function jobFile(name: string, judgeBy: string, judging: string): JobFile {
  const file = new URL(`../../workbooks/${name}`, import.meta.url);
  const workbook = Workbook.open(readFileSync(file));
  const model = new SheetModel(workbook, worksheetFunctions);
  model.enter("Job", settingRow("judgeBy"), 1, judgeBy);
  model.enter("Job", settingRow("judging"), 1, judging);
  model.recalculateAll();
  // Nothing is stale in what was just calculated: the check need not look.
  const { calculator: _, ...rest } = toJobFile(workbook);
  return rest;
}

/** The same sheets, with a heading of one of them made unknown. */
function withoutHeading(file: JobFile, { name }: Grid, row: number, col: number): JobFile {
  const value = (grid: Grid) => (r: number, c: number) =>
    r === row && c === col ? "Zzz" : grid.value(r, c);
  const sheets = file.sheets.map((grid) =>
    grid.name === name ? { ...grid, value: value(grid) } : grid,
  );
  return { ...file, sheets };
}

/** Kinds that say of a reading's own cells that they are not what they should be. */
const faults =
  /^(value|formula|cell-error|area-|opening-|constant-|box-unknown|flow-is|number-as-text|pressure-negative|room-|duty-|rate-not|dwelling-size|dwelling-unknown|dwelling-repeated)/;

/** Readings of a sheet about which the check says that a cell of theirs is at fault. */
function faulty(job: Job, findings: readonly Finding[], kind: "fans" | "dwellings"): Set<number> {
  const table = job.tables[kind];
  const told = findings.filter((finding) => faults.test(finding.kind));
  return new Set(
    told.flatMap(({ sheet, row, cells }) => [
      ...(table?.readingsAt(sheet, row) ?? []),
      ...cells.flatMap((at) => table?.readingsAt(at.sheet, Number(/\d+$/.exec(at.cell)) - 1) ?? []),
    ]),
  );
}

const isSame = (cell: CellValue, fact: number) =>
  typeof cell === "number" ? isSameNumber(cell, fact) : Number.isNaN(fact);

/** A file and its check, made once for the two tests of the same settings. */
const made = new Map<string, { readonly file: JobFile; readonly whole: JobCheck }>();
function checked(...[name, judgeBy, judging]: Parameters<typeof jobFile>) {
  const key = `${name} ${judgeBy} ${judging}`;
  let entry = made.get(key);
  if (!entry) {
    const file = jobFile(name, judgeBy, judging);
    entry = { file, whole: checkJob(file, today) };
    made.set(key, entry);
  }
  return entry;
}

/** A workbook with every column, which the cells are read from, and what was found in it. */
type Whole = Pick<JobCheck, "job" | "findings">;

/** Where cell, check, pane and record do not say the same of a fan. */
function fanDisagreements(job: Job, findings: readonly Finding[], whole: Whole): string[] {
  const { fans } = job;
  const { job: cells } = whole;
  if (!fans || !cells.fans) return [];
  const told = faulty(cells, whole.findings, "fans");
  const readings = fanReadings(job);
  const { table } = cells.fans;
  return fanFacts(job).flatMap((record, i) => {
    const wrong: string[] = [];
    const say = (what: string) => wrong.push(`${fans.label(i)}: ${what}`);
    const pane = readings[i];
    const verdict = record.verdict ?? "rate unknown";
    const paneSays = record.replacedAs ?? verdict;
    if (pane?.verdict !== paneSays) say(`pane ${pane?.verdict}, record ${verdict}`);
    if (!Object.is(pane?.required, record.required)) say("pane and record ask another rate");
    const room = roomView(job, i).measured;
    const isJudged = !Number.isNaN(record.flow);
    if (isJudged !== (room !== "")) say(`room "${room}" of a flow of ${record.flow}`);
    const said = new RegExp(`: ${verdict}(, by a [a-z ]+ rate)?$`);
    if (isJudged && !Number.isNaN(record.required) && !said.test(room))
      say(`room "${room}", record ${verdict}`);
    const spread = spreadView(job, i);
    const used = "problem" in spread ? undefined : spread.acceptances.find((each) => each.used);
    if (used && isJudged && used.verdict !== verdict) say(`spread ${used.verdict}, ${verdict}`);
    const own = findings.filter(({ about }) => about === fans.label(i)).map(({ kind }) => kind);
    const isShort = own.some((kind) => kind === "flow-short" || kind === "deficit-carried");
    if (isShort && verdict !== "short") say(`check short, record ${verdict}`);
    if (verdict === "short" && own.length === 0 && !record.replacedAs)
      say("record short, check silent");
    if (own.includes("flow-close") !== (verdict === "too close to call") && own.length < 2)
      say(`check ${own.join()}, record ${verdict}`);
    if (told.has(i)) return wrong;
    const flow = table.raw(table.has("judged") ? "judged" : "flow", i);
    if (!isSame(flow, record.flow)) say(`cell ${String(flow)}, record ${record.flow}`);
    const required = table.raw("required", i);
    if (!isSame(required, record.required)) say(`cell asks ${required}, ${record.required}`);
    const judged = table.raw("verdict", i);
    const isUnjudged = judged === "" || (typeof judged === "object" && judged !== null);
    if (judged !== verdict && !(isUnjudged && verdict === "rate unknown"))
      say(`cell ${table.raw("verdict", i)}, ${verdict}`);
    return wrong;
  });
}

/** The same of what a dwelling gets, needs and still needs. */
function dwellingDisagreements(job: Job, findings: readonly Finding[], whole: Whole): string[] {
  const table = whole.job.tables.dwellings;
  const told = faulty(whole.job, whole.findings, "dwellings");
  const fansTold = faulty(whole.job, whole.findings, "fans");
  return dwellingFacts(job).flatMap((record) => {
    const wrong: string[] = [];
    const say = (what: string) => wrong.push(`${record.name}: ${what}`);
    const { row, neededFlow, provided, missing, isTold } = record;
    if (row < 0 || !table) return wrong;
    const pane = accountView(job, row).result.isShort;
    const isShort = isTold ? missing > 0 : undefined;
    if (pane !== isShort) say(`pane short ${pane}, record ${isShort}`);
    const check = findings.some(
      ({ kind, about }) => kind === "dwelling-short" && about === record.name,
    );
    if (check !== (isShort === true)) say(`check short ${check}, record ${isShort}`);
    if (told.has(row) || record.fans.some((fan) => fansTold.has(fan.row))) return wrong;
    const cell = (key: string) => table.raw(key, row);
    if (!isSame(cell("provided"), provided)) say(`cell ${cell("provided")}, gets ${provided}`);
    const needed = cell(["needed", "ofSystem", "required"].find((key) => table.has(key)) as string);
    if (!isSame(needed, neededFlow)) say(`cell ${needed}, needs ${neededFlow}`);
    if (table.has("missing") && !isSame(cell("missing"), missing))
      say(`cell ${cell("missing")}, lacks ${missing}`);
    return wrong;
  });
}

function disagreements({ job, findings }: JobCheck, whole: Whole): string[] {
  return [
    ...fanDisagreements(job, findings, whole),
    ...dwellingDisagreements(job, findings, whole),
  ];
}

describe.each([demoName, existingName, proofName, estimateName, wholeName])("%s", (name) => {
  const settings = judgeBys.flatMap((by) => judgings.map((judging) => [by, judging] as const));

  it.each(settings)(
    "says the same of every fan and dwelling in cell, check, pane and record: %s, %s",
    (judgeBy, judging) => {
      const { whole } = checked(name, judgeBy, judging);
      expect(disagreements(whole, whole)).toEqual([]);
    },
  );

  it.each(settings)(
    "says the same with any computed column left out: %s, %s",
    (judgeBy, judging) => {
      const { file, whole } = checked(name, judgeBy, judging);
      const { fit: found, tables } = whole.job;
      const sheets = Object.values(found.sheets).flat();
      let left = 0;
      for (const table of Object.values(tables))
        for (const { key, is } of table.layout.fields) {
          const fit = sheets.find((each) => each?.kind === table.layout.kind);
          const col = fit?.columns.get(key)?.col;
          const grid = table.blocks[0]?.grid;
          if (!is || !fit || !grid || col === undefined) continue;
          const without = withoutHeading(file, grid, fit.headerRow, col);
          const check = checkJob(without, today);
          expect(check.job.tables[table.layout.kind]?.has(key)).toBe(false);
          expect([`without ${key}`, ...disagreements(check, whole)]).toEqual([`without ${key}`]);
          left++;
        }
      expect(left).toBeGreaterThan(10);
    },
  );
});
