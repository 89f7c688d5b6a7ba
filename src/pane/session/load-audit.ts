import type { FurtherCheck, JobFile } from "../../job";

/** What a check needs besides the rules of a job, or a note that it could not be had. */
interface LoadedAudit {
  readonly further?: FurtherCheck;
  readonly recognise?: NonNullable<JobFile["recognise"]>;
  readonly notes: readonly string[];
}

/**
 * The audit of formulas and the reader of any firm's sheets: neither is needed before the first
 * check, so they come in pieces of their own.
 */
export async function loadAudit(): Promise<LoadedAudit> {
  try {
    const [{ auditFormulas }, { readWorkbook }] = await Promise.all([
      import("../../audit"),
      import("../../reading"),
    ]);
    return { further: auditFormulas, recognise: readWorkbook, notes: [] };
  } catch {
    return {
      notes: [
        "A part of the add-in could not be loaded: formulas were not compared with those beside them, and only sheets in the add-in's own form were read. Check again when the connection is back.",
      ],
    };
  }
}

/** A workbook that is read with whatever could be loaded. */
export function readable(file: JobFile, { recognise }: Pick<LoadedAudit, "recognise">): JobFile {
  return recognise ? { ...file, recognise } : file;
}
