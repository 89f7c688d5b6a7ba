import { cellName } from "../cells";
import {
  type Finding,
  findingKinds,
  type Grid,
  type Job,
  type JobFile,
  type KeptLook,
  readJob,
} from "../job";
import type { Audit } from "./audit";
import { auditColumn } from "./audit-column";
import { auditRanges } from "./audit-ranges";
import { Shapes } from "./formula-shape";
import { auditFar, auditHidden, auditHiddenSheet } from "./hidden";
import { auditLooks } from "./looks";
import { isOwnSheet, Places, toldCells } from "./places";
import { type SheetScan, scanAgain, scanSheet } from "./sheet-scan";
import { auditTexts } from "./texts";

/** The sheets as they were looked at last. */
interface Looked {
  readonly shapes: Shapes;
  /** By name in lower case. */
  readonly scans: ReadonlyMap<string, SheetScan>;
}

/** Reads the sheets; after an edit only the rows of its cells, in what is kept of the look before. */
function lookAt(grids: readonly Grid[], kept: KeptLook | undefined): Looked {
  const before = kept?.cells && (kept.store.get("sheets") as Looked | undefined);
  const shapes = before && !before.shapes.isSpent ? before.shapes : new Shapes();
  const scanOf = (grid: Grid): SheetScan => {
    const known = shapes === before?.shapes && before.scans.get(grid.name.toLowerCase());
    if (!known) return scanSheet(grid, shapes);
    const own = kept?.cells?.filter(({ sheet }) => sheet === grid.name) ?? [];
    return own.length === 0 ? known : scanAgain(known, grid, own, shapes);
  };
  const scans = new Map(grids.map((grid) => [grid.name.toLowerCase(), scanOf(grid)]));
  kept?.store.set("sheets", { shapes, scans });
  // So many formulas only because those of earlier looks are counted too.
  if (shapes === before?.shapes && shapes.isSpent)
    return lookAt(grids, kept && { ...kept, cells: undefined });
  return { shapes, scans };
}

/**
 * Compares the formulas of each column with each other, on every sheet, and tells where one
 * departs from what most rows do, where ranges miss rows, and what is hidden or stored as text.
 * `known` are the findings made before: a cell of which one of them tells is passed over.
 */
export function auditFormulas(
  file: JobFile,
  known: readonly Finding[],
  job: Job = readJob(file),
  kept?: KeptLook,
): Finding[] {
  const leftOut = job.second.map(({ name }) => name);
  const grids = file.sheets.filter(({ name }) => !isOwnSheet(name) && !leftOut.includes(name));
  const { shapes, scans } = lookAt(grids, kept);
  const told = new Set(toldCells(known));
  const differing = new Map(
    known
      .filter(({ kind }) => kind === "value-differs")
      .map((finding) => [`${finding.sheet}!${finding.cell}`, finding]),
  );
  const found: Finding[] = [];
  const places = new Places(file, job);
  const holdsNumber = (sheet: string, row: number, col: number) =>
    typeof file.sheets.find(({ name }) => name === sheet)?.value(row, col) === "number";
  const audit: Audit = {
    shapes,
    places,
    scans,
    add(kind, sheet, row, col, { apply, also = [], ...words }) {
      const cell = cellName(row, col);
      const place = `${sheet}!${cell}`;
      // A value typed over a formula is told as such, with what its row gives.
      const difference = kind === "formula-typed-over" ? differing.get(place) : undefined;
      if (told.has(place) && !difference) return;
      // Where nothing was read a result is left blank, or a word says so.
      const isSaid = kind === "formula-missing" || kind === "formula-typed-over";
      if (isSaid && job.firm?.isRead(sheet, row, col) === false && !holdsNumber(sheet, row, col))
        return;
      told.add(place);
      const { severity } = findingKinds[kind];
      const about = places.about(sheet, row, col);
      const cells = [cell, ...also].map((each) => ({ sheet, cell: each }));
      const effect = difference ? `${difference.what}.` : words.effect;
      const finding: Finding = { kind, severity, sheet, cell, row, cells, about, ...words, effect };
      found.push(apply ? { ...finding, apply } : finding);
    },
  };
  const compared = shapes.isSpent ? [] : [...scans.values()];
  const singles = compared.flatMap((scan) =>
    scan.columns
      .filter(({ formulas }) => formulas > 0)
      .flatMap((column) => auditColumn(audit, scan, column)),
  );
  auditRanges(audit, singles);
  for (const scan of scans.values()) {
    auditTexts(audit, scan);
    auditHidden(audit, scan);
    auditHiddenSheet(audit, scan);
    auditLooks(audit, scan);
    auditFar(audit, scan);
  }
  return found;
}
