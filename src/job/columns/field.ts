import type { Expression } from "./expression";
import type { FeatureKey } from "./features";
import type { SheetKind } from "./sheet-kind";
import type { Measure } from "./units";

/** One column of a job sheet, and what its cells are. */
export interface Field {
  readonly key: string;
  /** Heading in a new job; the unit is added in brackets. */
  readonly title: string;
  /** Headings that firms use for the same thing, lower case, without the unit. */
  readonly words: readonly string[];
  readonly holds: "text" | "number" | "date";
  readonly measure?: Measure;
  /** What a computed field is; a field without it is typed. */
  readonly is?: Expression;
  /** The words that a computed text can be: other texts are a firm's own and are left alone. */
  readonly says?: readonly string[];
  /** Brings a firm's spelling to the one that expressions ask for; "" for one that is not known. */
  readonly reads?: (text: string) => string;
  /** Entries that a drop-down list offers; others are checked when the job is read. */
  readonly choices?: readonly string[];
  /** How it is typed row after row: mostly as in the row above, or in few rows at all. */
  readonly entry?: "repeated" | "seldom";
  /** Number format in a new job, where it is not that of its measure. */
  readonly format?: string;
  /** Without it the sheet cannot be taken for one of this kind. */
  readonly needed?: true;
  /** In a new job only with this feature, or one of these. */
  readonly feature?: FeatureKey | readonly FeatureKey[];
  /** Of use on the sheet only: it stands after the others and is not printed. */
  readonly isAside?: true;
  /** Its texts are of any length: they are broken at words, and shown whole. */
  readonly wraps?: true;
}

export interface SheetLayout {
  readonly kind: SheetKind;
  /** Name in a new job. */
  readonly title: string;
  readonly words: readonly string[];
  /** In the order of a new job. */
  readonly fields: readonly Field[];
  /** The fields by which a row is named in a finding. */
  readonly names: readonly string[];
  /** The sheet is in a new job with one of these features only. */
  readonly features?: readonly FeatureKey[];
}

type Rest = Omit<Partial<Field>, "key" | "title" | "words" | "holds">;

/** `words` as one text, each after a comma. */
const maker =
  (holds: Field["holds"]) =>
  (key: string, title: string, words: string, rest: Rest = {}): Field => ({
    ...{ key, title, holds, words: words === "" ? [] : words.split(", ") },
    ...rest,
  });

export const text = maker("text");
export const number = maker("number");
export const date = maker("date");

/** The dwelling, by which sheets know each other's rows. */
export const dwellingField = text(
  "dwelling",
  "Dwelling",
  "unit, lot, home, house, address, site, apartment, plot, dwelling id",
  { needed: true, entry: "repeated" },
);

export const testerField = text("tester", "Tester", "tech, technician, tested by, by", {
  entry: "repeated",
});

export const noteField = text("note", "Note", "notes, comment, comments, remarks", {
  entry: "seldom",
  wraps: true,
});

/** The look of an amount of money, in whatever currency the user types. */
export const money = { format: "#,##0.00" } as const;

/** Entries of a field that asks a yes or a no. */
export const yesNo = ["yes", "no"] as const;
