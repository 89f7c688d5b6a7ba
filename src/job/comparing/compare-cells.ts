import { cellName, isSameValue } from "../../cells";
import type { Grid, JobFile } from "../grid";
import { type Change, textOf } from "./change";

/** Cell by cell, for workbooks in which nothing of a job was recognised. */
export function compareCells(before: JobFile, after: JobFile): Change[] {
  return after.sheets.flatMap((now) => {
    const old = before.sheets.find(({ name }) => name.toLowerCase() === now.name.toLowerCase());
    return old ? changesOf(old, now) : [];
  });
}

function changesOf(old: Grid, now: Grid): Change[] {
  const changes: Change[] = [];
  for (let row = 0; row < Math.max(old.rowCount, now.rowCount); row++)
    for (let col = 0; col < Math.max(old.colCount, now.colCount); col++) {
      const cell = { sheet: now.name, cell: cellName(row, col), about: "", field: "", rows: 1 };
      const [was, is] = [old.formula(row, col) ?? "", now.formula(row, col) ?? ""];
      if (was !== is) changes.push({ ...cell, kind: "formula", before: was, after: is });
      const [before, after] = [old.value(row, col), now.value(row, col)];
      if (isSameValue(before, after)) continue;
      const kind = is === "" ? "typed" : "result";
      changes.push({ ...cell, kind, before: textOf(before), after: textOf(after) });
    }
  return changes;
}
