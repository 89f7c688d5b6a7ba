import type { System } from "../../editions";

/** What a number field measures; its unit follows from the job's system. */
export type Measure =
  | "pressure"
  | "flow"
  | "opening"
  | "length"
  | "distance"
  | "floor"
  | "volume"
  | "temperature";

/** One column of a job sheet. */
export interface Field {
  readonly key: string;
  /** Heading in a new job; the unit is added in brackets. */
  readonly title: string;
  /** Headings that firms use for the same thing, lower case, without the unit. */
  readonly words: readonly string[];
  readonly holds: "text" | "number" | "date";
  readonly measure?: Measure;
  /** Worked out from other columns, as a rule by a formula. */
  readonly computed?: boolean;
  /** Without it the sheet cannot be taken for one of this kind. */
  readonly needed?: boolean;
  /** In a new job only with the feature that wants it; it then stands after the field named. */
  readonly after?: string;
}

export type SheetKind =
  | "dwellings"
  | "boxes"
  | "fans"
  | "pairs"
  | "instruments"
  | "registers"
  | "schedule"
  | "catalogue";

export interface SheetLayout {
  readonly kind: SheetKind;
  /** Name in a new job. */
  readonly title: string;
  readonly words: readonly string[];
  readonly fields: readonly Field[];
  /** The fields by which a row is named in a finding. */
  readonly names: readonly string[];
}

const unitsOf: Record<Measure, Record<System, string>> = {
  pressure: { ip: "Pa", si: "Pa" },
  flow: { ip: "cfm", si: "L/s" },
  opening: { ip: "in²", si: "cm²" },
  length: { ip: "in", si: "cm" },
  distance: { ip: "ft", si: "m" },
  floor: { ip: "ft²", si: "m²" },
  volume: { ip: "ft³", si: "m³" },
  temperature: { ip: "°F", si: "°C" },
};

/** The unit in which a job of this system keeps a measure. */
export function unitOf(measure: Measure, system: System): string {
  return unitsOf[measure][system];
}

/** The heading of a field in a new job. */
export function headingOf(field: Field, system: System): string {
  return field.measure ? `${field.title} (${unitOf(field.measure, system)})` : field.title;
}

const ownFormats: Readonly<Record<string, string>> = {
  constant: "0.00",
  rated: "0",
  chance: "0.0%",
  density: "0.000",
  difference: "0.0",
};

/** The number format of a field's cells in a new job; undefined leaves the usual one. */
export function numberFormatOf({ key, holds, measure }: Field): string | undefined {
  if (holds === "date") return "yyyy-mm-dd";
  const own = ownFormats[key];
  if (own !== undefined && holds === "number") return own;
  if (measure === "opening" || measure === "length") return "0.00";
  if (measure === "floor" || measure === "volume") return "0";
  return measure ? "0.0" : undefined;
}
