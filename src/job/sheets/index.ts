/** The sheets of a job workbook and their fields. */
import { boxesLayout } from "./boxes";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { SheetLayout } from "./field";

export { boxesLayout } from "./boxes";
export { fieldChoices, settingChoices } from "./choices";
export { dwellingsLayout } from "./dwellings";
export { fansLayout } from "./fans";
export * from "./field";
export * from "./formulas";
export { jobSettings, jobTitle, type Setting } from "./job";

export const layouts: readonly SheetLayout[] = [fansLayout, dwellingsLayout, boxesLayout];
