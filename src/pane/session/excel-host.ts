import { todayOf } from "../../cells";
import {
  applyMend,
  clearMarks,
  describeCell,
  givesFile,
  hasMarks,
  insertFormula,
  isEmptyWorkbook,
  loadSheets,
  markFindings,
  openWorkbook,
  readAgain,
  readWorkbook,
  selectCell,
  selection,
  undoMend,
  type WorkbookReading,
  watchEdits,
  watchSelection,
  workbookBytes,
} from "../../excel";
import type { PaneHost, Place, Reading } from "./host";

/** The open workbook, as the pane asks for it. */
export const excelHost: PaneHost = {
  read: async (onProgress) => toReading(await readWorkbook(onProgress, { waitsForEdit: true })),
  readAgain: async (before, cells) => {
    const file = await readAgain(before.file, cells, { waitsForEdit: true });
    return file && { ...before, file, today: todayOf(file) };
  },
  watchEdits: async (onEdit) => stopper(await watchEdits(onEdit)),
  watchSelection: async (onMove) =>
    stopper(await watchSelection((place) => onMove(toPlace(place)))),
  selection: async () => toPlace(await selection()),
  select: selectCell,
  describe: ({ sheet, row, col }) => describeCell(sheet, row, col),
  apply: async (sheet, mend, checked) => {
    const undo = await applyMend(sheet, mend, checked);
    return { undo: () => undoMend(undo) };
  },
  hasMarks,
  mark: markFindings,
  clearMarks,
  writeFindings: async ({ job, findings, summary }) => {
    const { provenanceOf } = await import("../../job/engine");
    const { writeFindingsSheet } = await loadSheets();
    return writeFindingsSheet(findings, summary, provenanceOf(job));
  },
  accept: async (acceptance) => (await loadSheets()).acceptFinding(acceptance),
  withdraw: async (finding) => (await loadSheets()).withdrawAcceptance(finding),
  writeRecord: async (plan, tell) => (await loadSheets()).writePlan(plan, tell),
  givesFile,
  workbookBytes,
  openCopy: openWorkbook,
  saveFit: async (choices) => (await loadSheets()).saveFit(choices),
  addJobSheets: async (start, tell) => (await loadSheets()).addJobSheets(start, tell),
  isEmpty: isEmptyWorkbook,
  writeOpenings: async (plan) => (await loadSheets()).writeOpenings(plan),
  insertFormula,
};

function toReading({ file, notes }: WorkbookReading): Reading {
  return { file, notes, today: todayOf(file) };
}

function toPlace({ sheet, row, address }: Awaited<ReturnType<typeof selection>>): Place {
  return { sheet, row, cell: address.slice(address.lastIndexOf("!") + 1) };
}

/** Taking an event handler away may fail once the host has gone; there is nothing left to do. */
function stopper(stop: () => Promise<void>): () => void {
  return () => void stop().catch(() => {});
}
