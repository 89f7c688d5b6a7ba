/** The sheets of a job workbook and their fields. */
import { boxesLayout } from "./boxes";
import { catalogueLayout } from "./catalogue";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { SheetLayout } from "./field";
import { instrumentsLayout } from "./instruments";
import { pairsLayout } from "./pairs";
import { registersLayout } from "./registers";
import { scheduleLayout } from "./schedule";

export { boxesLayout } from "./boxes";
export { fieldChoices, settingChoices } from "./choices";
export { dwellingsLayout } from "./dwellings";
export * from "./fan-formulas";
export { fansLayout } from "./fans";
export * from "./field";
export * from "./formulas";
export * from "./formulas-of";
export { jobSettings, jobTitle, type Setting, usualSettings } from "./job";
export * from "./plan";

/** Every sheet that can be recognised, with every field it can have. */
export const layouts: readonly SheetLayout[] = [
  fansLayout,
  dwellingsLayout,
  boxesLayout,
  pairsLayout,
  instrumentsLayout,
  registersLayout,
  scheduleLayout,
  catalogueLayout,
];
