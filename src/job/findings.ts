/**
 * "wrong" spoils a result, "doubtful" wants a look, "missing" is still to be filled in: faults of
 * the sheet. "result" is what a sound sheet says of a fan: short, to be read again, not measured.
 */
export const severities = ["wrong", "doubtful", "missing", "result"] as const;
export type Severity = (typeof severities)[number];

interface KindEntry {
  readonly title: string;
  readonly severity: Severity;
  /** The row's results cannot be trusted while this stands. */
  readonly spoilsRow?: true;
  /** Says nothing where another finding already spoils the row. */
  readonly yields?: true;
  /** Other findings on the same cell that this one explains. */
  readonly explains?: readonly string[];
}

const typedOver = ["formula-typed-over", "value-differs", "value-stale"];

/** Every kind of finding, in the order of a summary. */
export const findingKinds = {
  "pressure-above": { title: "pressure above the window", severity: "result", spoilsRow: true },
  "pressure-below": { title: "pressure below the window", severity: "result", spoilsRow: true },
  "pressure-negative": { title: "pressure of the wrong sign", severity: "wrong", spoilsRow: true },
  "pressure-blank": { title: "no pressure reading", severity: "result", spoilsRow: true },
  "pressure-unit": { title: "pressure in another unit", severity: "wrong", spoilsRow: true },
  "pressure-repeated": {
    title: "same pressure copied down",
    severity: "doubtful",
    spoilsRow: true,
  },
  "readings-apart": { title: "readings far apart", severity: "doubtful", spoilsRow: true },
  "number-as-text": { title: "text in a number cell", severity: "wrong", spoilsRow: true },
  "cell-error": { title: "error value in a cell", severity: "wrong", yields: true },
  "box-unknown": { title: "box not listed", severity: "wrong", spoilsRow: true },
  "opening-unknown": { title: "opening not listed", severity: "wrong", spoilsRow: true },
  "opening-repeated": { title: "opening listed twice", severity: "wrong" },
  "opening-uncounted": {
    title: "opening open but not counted",
    severity: "wrong",
    spoilsRow: true,
    explains: typedOver,
  },
  "area-not-of-openings": {
    title: "area not that of the openings",
    severity: "wrong",
    spoilsRow: true,
    explains: typedOver,
  },
  "area-unit": {
    title: "area in another unit",
    severity: "wrong",
    spoilsRow: true,
    explains: [...typedOver, "area-not-of-openings", "area-not-of-sizes"],
  },
  "area-is-size": {
    title: "diameter typed as an area",
    severity: "wrong",
    spoilsRow: true,
    explains: [...typedOver, "area-not-of-openings", "area-not-of-sizes"],
  },
  "area-not-of-sizes": {
    title: "area not that of its sizes",
    severity: "wrong",
    spoilsRow: true,
    explains: typedOver,
  },
  "hole-small": { title: "holes too small for the constant", severity: "doubtful" },
  "wall-thick": { title: "walls too thick for the constant", severity: "doubtful" },
  "constant-proved": { title: "another constant by the proof", severity: "doubtful" },
  "box-overdue": { title: "box check overdue", severity: "doubtful" },
  "box-unchecked": { title: "box never checked", severity: "missing" },
  "constant-differs": {
    title: "constant not that of the box",
    severity: "doubtful",
    spoilsRow: true,
    explains: typedOver,
  },
  "fan-repeated": { title: "fan listed twice", severity: "wrong" },
  "dwelling-unknown": { title: "fan with no dwelling", severity: "wrong" },
  "dwelling-repeated": { title: "dwelling listed twice", severity: "wrong" },
  "dwelling-empty": { title: "dwelling with no fan", severity: "missing" },
  "dwelling-size": {
    title: "floor area or bedrooms unusable",
    severity: "missing",
    spoilsRow: true,
  },
  "room-unknown": { title: "room kind unknown", severity: "wrong", spoilsRow: true },
  "room-missing": { title: "room kind missing", severity: "missing", spoilsRow: true },
  "duty-unknown": { title: "duty unknown", severity: "wrong", spoilsRow: true },
  "duty-missing": { title: "duty missing", severity: "missing", spoilsRow: true },
  "rate-not-set": {
    title: "no rate for this room and duty",
    severity: "doubtful",
    spoilsRow: true,
  },
  "note-says": { title: "note that bears on the reading", severity: "doubtful", yields: true },
  "house-state": { title: "state of the house at the test", severity: "doubtful" },
  "box-seat": { title: "box does not cover the grille", severity: "doubtful" },
  "duct-shared": { title: "shared duct not read together", severity: "doubtful" },
  "rate-none": { title: "no rate required", severity: "result", spoilsRow: true },
  "hood-listed": { title: "hood enough by its listing only", severity: "result", yields: true },
  "room-unsaid": { title: "kitchen not described", severity: "missing", yields: true },
  "date-missing": { title: "test date missing", severity: "missing" },
  "date-wrong": { title: "test date unusable", severity: "wrong" },
  "tester-missing": { title: "tester missing", severity: "missing" },
  "flow-short": { title: "flow short of the required rate", severity: "result", yields: true },
  "deficit-carried": {
    title: "room deficit carried to the dwelling",
    severity: "result",
    yields: true,
  },
  "flow-is-rating": {
    title: "flow copied from the rating",
    severity: "wrong",
    spoilsRow: true,
    explains: typedOver,
  },
  "flow-unlike-rating": {
    title: "flow far from the rating",
    severity: "doubtful",
    yields: true,
  },
  "whole-house-missing": { title: "no whole-house ventilation found", severity: "result" },
  "passed-unread": { title: "passes without a reading", severity: "wrong", spoilsRow: true },
  "passed-outside": {
    title: "passes on a reading outside the window",
    severity: "wrong",
    spoilsRow: true,
    explains: typedOver,
  },
  "verdict-differs": {
    title: "verdict against its flow",
    severity: "wrong",
    yields: true,
    explains: typedOver,
  },
  "required-differs": {
    title: "required rate unlike the firm's own",
    severity: "wrong",
    explains: typedOver,
  },
  "review-apart": { title: "reviewer's flow apart", severity: "doubtful" },
  "sample-small": { title: "sample too small", severity: "missing" },
  "sample-failed": { title: "failures in the sample", severity: "result" },
  "edition-day": { title: "readings before the edition", severity: "doubtful" },
  "retest-order": { title: "retest before the first test", severity: "wrong" },
  "balance-off": { title: "supply and exhaust not balanced", severity: "result" },
  "system-unsaid": { title: "kind of ventilation system not said", severity: "missing" },
  "supply-by-box": { title: "supply read with the box", severity: "doubtful" },
  "dwelling-over": { title: "dwelling above its band", severity: "result" },
  "dwelling-short": { title: "dwelling short of its rate", severity: "result" },
  "formula-typed-over": {
    title: "formula replaced by a typed value",
    severity: "wrong",
    explains: ["value-differs"],
  },
  "value-unchecked": { title: "formulas not worked out again", severity: "doubtful" },
  "value-stale": {
    title: "stored value is not what its formula gives",
    severity: "wrong",
    explains: ["value-differs", "cell-error"],
  },
  "value-differs": { title: "value does not follow from its row", severity: "wrong" },
  "formula-other-row": { title: "formula points at another row", severity: "wrong" },
  "formula-fixed-reference": {
    title: "reference fixed where the others move, or the reverse",
    severity: "wrong",
  },
  "formula-other-constant": { title: "another constant in the formula", severity: "wrong" },
  "formula-short-range": { title: "range that misses rows", severity: "wrong" },
  "formula-other-function": {
    title: "another function than the rows beside it",
    severity: "wrong",
  },
  "formula-unknown-function": { title: "function that does not exist", severity: "wrong" },
  "formula-other-workbook": { title: "formula reads another workbook", severity: "doubtful" },
  "formula-differs": { title: "formula unlike the rows beside it", severity: "doubtful" },
  "formula-missing": { title: "formula missing from a row", severity: "doubtful" },
  "number-stored-as-text": { title: "number stored as text", severity: "wrong" },
  "cell-formatted-as-text": { title: "cell formatted as text", severity: "doubtful" },
  "cell-far": { title: "cell far from all others", severity: "doubtful" },
  "row-hidden": { title: "hidden rows hold data", severity: "doubtful" },
  "column-hidden": { title: "hidden columns hold data", severity: "doubtful" },
  "acceptance-incomplete": { title: "acceptance incomplete", severity: "missing" },
  "proof-incomplete": { title: "box without a finished proof", severity: "missing" },
  "proof-failed": { title: "box not proved", severity: "wrong" },
  "proof-expired": { title: "proof of the box too old", severity: "doubtful" },
  "instrument-unknown": { title: "instrument not listed", severity: "wrong", spoilsRow: true },
  "instrument-outside": { title: "reading outside the instrument", severity: "wrong" },
  "instrument-limit": { title: "instrument without a limit", severity: "missing" },
  "instrument-overdue": { title: "calibration overdue", severity: "doubtful" },
  "second-reading-odd": { title: "second opening does not fit the first", severity: "wrong" },
  "box-holds-back": { title: "the box holds the fan back", severity: "result" },
  "flow-close": { title: "too close to call", severity: "result", yields: true },
  "efficacy-short": { title: "fan uses too much power", severity: "result" },
  "sound-over": { title: "fan too loud", severity: "result" },
  "duct-over": { title: "duct longer than the table allows", severity: "result" },
  "design-differs": { title: "flow does not match the design", severity: "result", yields: true },
  "makeup-air": { title: "makeup air needed", severity: "result" },
  "makeup-unsaid": { title: "open-flue appliance not said", severity: "missing" },

  "schedule-fan": { title: "no fan on offer is large enough", severity: "result" },
  "schedule-duct": { title: "planned duct will not do", severity: "result" },
  "cost-missing": { title: "planned without a cost", severity: "missing" },
  "schedule-opening": { title: "no opening for the planned fan", severity: "result" },
  "register-blank": { title: "register not read", severity: "result" },
  "register-house": { title: "house pressure off", severity: "doubtful" },
  "register-repeat": { title: "pan readings apart", severity: "result" },
  "register-leaks": { title: "register leaks", severity: "result" },
  "record-old": { title: "record older than the job", severity: "doubtful" },
  "setting-unusual": { title: "setting wider than usual", severity: "doubtful" },
  "fans-again": { title: "fans listed on a second sheet", severity: "wrong" },
  "flows-alike": { title: "flows of a tester all alike", severity: "doubtful" },
  "readings-copied": { title: "readings of another dwelling", severity: "doubtful" },
  "number-shown-other": { title: "number shown as another", severity: "wrong" },
  "number-unseen": { title: "number in the colour of its ground", severity: "doubtful" },
  "sheet-hidden": { title: "hidden sheet with readings", severity: "doubtful" },
  "setting-wrong": { title: "setting unusable", severity: "wrong" },
  "setting-blank": { title: "setting to be filled in", severity: "missing" },
  "sheet-missing": { title: "sheet or column not found", severity: "missing" },
} as const satisfies Record<string, KindEntry>;

export type FindingKind = keyof typeof findingKinds;

export function kindEntry(kind: FindingKind): KindEntry {
  return findingKinds[kind];
}

/** A mend that needs no judgement: the cells to write, with the field and what to put there. */
export interface Mend {
  /** What the button says: "Restore the formula". */
  readonly label: string;
  readonly writes: readonly Write[];
}

export type Write =
  | { readonly cell: string; readonly value: number | string | null }
  /** Copies the formula of another cell of the same column, moved to this row. */
  | { readonly cell: string; readonly formulaOf: string };

/** Who took a finding as it is, and why. */
export interface Accepted {
  readonly reason: string;
  readonly initials: string;
  /** As typed on the Accepted sheet: a serial number, or text; null where it is left blank. */
  readonly date: number | string | null;
}

/** A cell of a sheet. */
export interface CellAt {
  readonly sheet: string;
  readonly cell: string;
}

/** A word that is not known: what is asked of it, once for all cells that hold it. */
export interface Question {
  readonly word: string;
  readonly asks: string;
  /** What it may mean; an answer is kept on the Fit sheet. */
  readonly candidates: readonly string[];
}

/** One cause found: where, what, what it does to the result and how to mend it. */
export interface Finding {
  readonly kind: FindingKind;
  readonly severity: Severity;
  /** "" where a whole sheet is missing. */
  readonly sheet: string;
  readonly cell: string;
  /** Sheet row from 0, or −1 where no row is meant. */
  readonly row: number;
  /** All cells with this cause, the one above first. */
  readonly cells: readonly CellAt[];
  /** The fan, opening or dwelling concerned. */
  readonly about: string;
  readonly what: string;
  readonly effect: string;
  readonly mend: string;
  /** There where the mend is certain; all cells are on the finding's own sheet. */
  readonly apply?: Mend;
  readonly question?: Question;
  /** There where the finding was accepted and its row has not changed since. */
  readonly accepted?: Accepted;
  /** There where it was accepted once but its row has changed since: it is open again. */
  readonly lapsed?: Accepted;
}

/** What several findings do and how to mend them, where that is the same for all; else undefined. */
export function sharedWords(
  findings: readonly Finding[],
): Pick<Finding, "effect" | "mend"> | undefined {
  const [first] = findings;
  const isShared = findings.every(
    ({ effect, mend }) => effect === first?.effect && mend === first.mend,
  );
  return first && findings.length > 1 && isShared ? first : undefined;
}

/** A finding that nobody has accepted, or not as the row is now. */
export function isOpen(finding: Finding): boolean {
  return finding.accepted === undefined;
}

/** Something of the sheet that cannot be trusted, and no mere result of a fan. */
export function isFault({ severity }: Finding): boolean {
  return severity !== "result";
}
