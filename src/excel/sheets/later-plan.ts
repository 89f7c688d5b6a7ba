import type { SheetPlan } from "../../records";

/** Writes a record as `write-plan` does, whose code comes when the first one is written. */
export async function writePlan(plan: SheetPlan, tell?: (note: string) => void): Promise<string> {
  const { writePlan: write } = await import("./write-plan");
  return write(plan, tell);
}
