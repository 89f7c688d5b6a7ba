import type { FurtherCheck } from "../../job";

/** The audit of formulas, or a note that it could not be had. */
interface LoadedAudit {
  readonly further?: FurtherCheck;
  readonly notes: readonly string[];
}

/** The audit is not needed before the first check, so it comes in a piece of its own. */
export async function loadAudit(): Promise<LoadedAudit> {
  try {
    const { auditFormulas } = await import("../../audit");
    return { further: auditFormulas, notes: [] };
  } catch {
    return {
      notes: [
        "A part of the add-in could not be loaded: formulas were not compared with those beside them. Check again when the connection is back.",
      ],
    };
  }
}
