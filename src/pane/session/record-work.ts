import { InputError, todayOf } from "../../cells";
import type { Edition } from "../../editions";
import { checkJob, compareChecks, type JobFile, provenanceOf } from "../../job";
import { count } from "../model/announce";
import { type CopyKind, copyFileName } from "../model/copy-name";
import type { RecordChoice } from "../model/record-choice";
import { loadAudit, readable } from "./load-audit";
import { readOlderFile } from "./older-file";
import { paint } from "./paint";
import type { FileCopy } from "./record-state";
import type { Session } from "./session";

/** Writes the chosen records into the workbook, each to its own sheet. */
export function writeRecords(session: Session, choice: RecordChoice): Promise<void> {
  return session.further("Writing", async ({ host, set, own }) => {
    const { check } = session.state;
    if (!check) return;
    const records = await import("../../records");
    const { dwellingRecord, fieldPapers, jobRecord, proofRecords, recordedDwellings } = records;
    if (choice.job && !records.hasJobRecord(check))
      throw new InputError("No fan is listed or planned: there is nothing to record of the job.");
    const { dwellings } = choice;
    const names = recordedDwellings(check).filter(
      (name) => dwellings === "all" || (dwellings !== "none" && dwellings.name === name),
    );
    const papers = choice.papers ? fieldPapers(check) : { plans: [], problems: [] };
    const plans = [
      ...(choice.job ? [() => jobRecord(check)] : []),
      ...names.map((name) => () => dwellingRecord(check, name)),
      ...(choice.proofs ? proofRecords(check).map((plan) => () => plan) : []),
      ...papers.plans.map((plan) => () => plan),
    ];
    const written: string[] = [];
    const notes = new Set(papers.problems);
    try {
      for (const plan of plans) {
        set({ progress: { done: written.length, total: plans.length } });
        const name = await host.writeRecord(plan(), (note) => notes.add(note));
        own(name);
        written.push(name);
      }
      set({ message: [`Wrote ${count(written.length, "sheet")}.`, ...notes].join(" ") });
    } finally {
      set({ record: { ...session.state.record, written } });
    }
  });
}

/** Reads an older file and tells what is otherwise in the open workbook. */
export function compareWithFile(session: Session, file: File): Promise<void> {
  return session.further("Reading the file", async ({ set }) => {
    let older: JobFile;
    try {
      older = await readOlderFile(file);
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      throw new InputError(`${file.name}: ${problem.message}`);
    }
    await compare(session, file.name, older, set);
  });
}

/** Tells anew what is otherwise than in the file read before. */
export function compareAgain(session: Session): Promise<void> {
  return session.further("Comparing", async ({ set }) => {
    const { comparison } = session.state.record;
    if (comparison) await compare(session, comparison.fileName, comparison.older, set);
  });
}

async function compare(
  session: Session,
  fileName: string,
  older: JobFile,
  set: (change: Partial<Session["state"]>) => void,
): Promise<void> {
  const { check } = session.state;
  if (!check) return;
  set({ busy: "Comparing" });
  const loaded = await loadAudit();
  await paint();
  const today = todayOf(older);
  const was = checkJob(readable(older, loaded), today, loaded.further);
  const changes = compareChecks(was, check);
  set({
    record: {
      ...session.state.record,
      comparison: { fileName, older, changes, codes: provenanceOf(was.job).codes, check },
    },
    message:
      changes.length === 0
        ? `Nothing differs from ${fileName}.`
        : `${count(changes.length, "change")} since ${fileName}.`,
  });
}

/** Makes a copy of the workbook that needs no add-in. */
export function makeCopy(session: Session, kind: CopyKind): Promise<void> {
  return session.further("Making the copy", async ({ host, set }) => {
    // A field copy is made of what was read.
    const bytes = kind === "field" ? new Uint8Array() : await host.workbookBytes();
    await paint();
    const { leftInWords, plainCopy, valuesCopy } = await import("../../plain-copy");
    const fileName = copyFileName(session.state.check?.job.settings.name ?? "", kind);
    let copy: FileCopy;
    if (kind === "field") {
      const { fieldCopy } = await import("../../field");
      const { check } = session.state;
      if (!check?.job.fans) throw new InputError("No fans were found to take along.");
      copy = { kind, fileName, bytes: fieldCopy(check.job).save(), left: [] };
    } else if (kind === "values") {
      const { bytes: made, left } = valuesCopy(bytes);
      copy = { kind, fileName, bytes: made, left: leftInWords(left) };
    } else {
      const { Workbook } = await import("../../workbook");
      const { workbook, left } = plainCopy(Workbook.open(bytes));
      copy = { kind, fileName, bytes: workbook.save(), left: leftInWords(left) };
    }
    set({ record: { ...session.state.record, copy }, message: `The copy ${fileName} is ready.` });
  });
}

/** Makes an estimate, a workbook of its own, of the lots that the open workbook lists. */
export function makeEstimate(session: Session, edition: Edition | undefined): Promise<void> {
  return session.further("Making the estimate", async ({ set }) => {
    const { check } = session.state;
    if (!check) return;
    const name = check.job.settings.name || check.job.lots[0]?.sheet || "";
    await paint();
    const { estimateRows, jobWorkbook } = await import("../../new-job");
    const made = estimateRows([check.job], name, edition);
    if (!made) throw new InputError("No list of lots was recognised.");
    const fileName = copyFileName(name, "estimate");
    const bytes = jobWorkbook(made.rows).save();
    const copy: FileCopy = { kind: "estimate", fileName, bytes, left: made.said };
    set({
      record: { ...session.state.record, copy },
      message: `The estimate ${fileName} is ready.`,
    });
  });
}

/** Opens the copy that was made beside the workbook. */
export function openCopy(session: Session): Promise<void> {
  return session.further("Making the copy", async ({ host }) => {
    const { copy } = session.state.record;
    if (copy) await host.openCopy(copy.bytes);
  });
}
