import { cellName, grouped, InputError } from "../../cells";
import type { Brought } from "../../field";
import { readJob } from "../../job";
import { count } from "../model/announce";
import { sheetOf } from "./held";
import type { Undoable } from "./host";
import { loadAudit, readable } from "./load-audit";
import { readOlderFile } from "./older-file";
import type { Session } from "./session";

/** Reads a field copy and tells what of it would go where. Nothing is written yet. */
export function readFieldCopy(session: Session, file: File): Promise<void> {
  return session.further("Reading the file", async ({ set }) => {
    const { check } = session.state;
    if (!check) return;
    const { bringIn } = await import("../../field");
    try {
      const found = bringIn(
        check.job,
        readJob(readable(await readOlderFile(file), await loadAudit())),
      );
      const fileName = file.name;
      const message = `${fileName}: ${count(found.fresh.length, "new value")}, ${found.same} in the job already.`;
      set({ record: { ...session.state.record, brought: { fileName, found } }, message });
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      throw new InputError(`${file.name}: ${problem.message}`);
    }
  });
}

/** Writes values of the field copy into the job, sheet by sheet, and checks again. */
export async function placeReadings(session: Session, values: readonly Brought[]): Promise<void> {
  await session.further("Writing", async ({ host, reading, set }) => {
    const bySheet = grouped(values, ({ sheet }) => sheet);
    const done: Undoable[] = [];
    try {
      for (const [sheet, own] of bySheet) {
        const writes = own.map(({ row, col, value }) => ({ cell: cellName(row, col), value }));
        const mend = { label: "Bring readings in", writes };
        done.push(await host.apply(sheet, mend, sheetOf(reading, sheet)));
      }
    } catch (refused) {
      // All of them or none.
      for (const { undo } of done.reverse()) await undo();
      throw refused;
    }
    const record = { ...session.state.record, brought: undefined };
    set({ record, message: `Placed ${count(values.length, "value")}.` });
  });
  if (session.state.problem === "") await session.check();
}
