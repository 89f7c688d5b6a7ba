/** The sheets of a job workbook, their fields, and what each computed field is. */
export { boxesLayout } from "./boxes";

export { evaluate, type Source, type Values } from "./evaluate";

export { fansLayout } from "./fans";
export * from "./features";
export type { Field, SheetLayout } from "./field";
export * from "./formulas";
export {
  type JobStart,
  jobSettings,
  jobTitle,
  type SettingValues,
  settingChoices,
  settings,
  usualSettings,
} from "./job";
export { layoutOf, layouts } from "./layouts";
export * from "./look";
export * from "./plan";
export type { Setting } from "./setting";
export type { SheetKind } from "./sheet-kind";
export * from "./units";
