/** The kinds of sheets that a job can have. */
export type SheetKind =
  | "dwellings"
  | "boxes"
  | "fans"
  | "pairs"
  | "instruments"
  | "registers"
  | "schedule"
  | "catalogue"
  | "totals";
