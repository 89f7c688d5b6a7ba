import type { Place } from "../../cells";
import type { Calculator, FurtherCheck, JobFile } from "../../job";

/** What a check needs besides the rules of a job, or a note that it could not be had. */
interface LoadedAudit {
  readonly further?: FurtherCheck;
  readonly recognise?: NonNullable<JobFile["recognise"]>;
  readonly calculate?: (file: JobFile) => Calculator;
  readonly notes: readonly string[];
}

/**
 * The audit of formulas, the reader of any firm's sheets and what works formulas out again: none is
 * needed before the first check, so they come in pieces of their own.
 */
export async function loadAudit(): Promise<LoadedAudit> {
  try {
    const [{ auditFormulas }, { readWorkbook }, { HeldModel }, { worksheetFunctions }] =
      await Promise.all([
        import("../../audit"),
        import("../../reading"),
        import("../../sheet"),
        import("../../../functions"),
      ]);
    return {
      further: auditFormulas,
      recognise: readWorkbook,
      calculate: (file) => new HeldModel(file, worksheetFunctions),
      notes: [],
    };
  } catch {
    return {
      notes: [
        "A part of the add-in could not be loaded: formulas were not compared with those beside them, and only sheets in the add-in's own form were read. Check again when the connection is back.",
      ],
    };
  }
}

/** A workbook that is read with whatever could be loaded; after an edit of some cells with what is known of the others. */
export function readable(
  file: JobFile,
  { recognise, calculate }: Pick<LoadedAudit, "recognise" | "calculate">,
  before?: JobFile,
  cells?: readonly Place[],
): JobFile {
  const known = cells && before?.calculator?.again?.(file, cells);
  return {
    ...file,
    ...(recognise && { recognise }),
    ...(calculate && { calculator: known ?? calculate(file) }),
  };
}
