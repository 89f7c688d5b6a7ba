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

type Traits = Omit<KindEntry, "title" | "severity">;

const kind =
  (severity: Severity) =>
  (title: string, ...traits: readonly Traits[]): KindEntry =>
    Object.assign({ title, severity }, ...traits);
const wrong = kind("wrong");
const doubtful = kind("doubtful");
const missing = kind("missing");
const result = kind("result");
const spoilsRow: Traits = { spoilsRow: true };
const yields: Traits = { yields: true };

const typedOver = ["formula-typed-over", "value-differs", "value-stale"];
const explainsTyped: Traits = { explains: typedOver };

/** Every kind of finding, in the order of a summary. */
export const findingKinds = {
  "pressure-above": result("pressure above the window", spoilsRow),
  "pressure-below": result("pressure below the window", spoilsRow),
  "pressure-negative": wrong("pressure of the wrong sign", spoilsRow),
  "pressure-blank": result("no reading", spoilsRow),
  "pressure-unit": wrong("pressure in another unit", spoilsRow),
  "pressure-repeated": doubtful("same pressure copied down", spoilsRow),
  "readings-apart": doubtful("readings far apart", spoilsRow),
  "number-as-text": wrong("text in a number cell", spoilsRow),
  "cell-error": wrong("error value in a cell", yields),
  "box-unknown": wrong("box not listed", spoilsRow),
  "opening-unknown": wrong("opening not listed", spoilsRow),
  "opening-repeated": wrong("opening listed twice"),
  "opening-uncounted": wrong("opening open but not counted", spoilsRow, explainsTyped),
  "area-not-of-openings": wrong("area not that of the openings", spoilsRow, explainsTyped),
  "area-unit": wrong("area in another unit", spoilsRow, {
    explains: [...typedOver, "area-not-of-openings", "area-not-of-sizes"],
  }),
  "area-is-size": wrong("diameter typed as an area", spoilsRow, {
    explains: [...typedOver, "area-not-of-openings", "area-not-of-sizes"],
  }),
  "area-not-of-sizes": wrong("area not that of its sizes", spoilsRow, explainsTyped),
  "hole-small": doubtful("holes too small for the constant"),
  "wall-thick": doubtful("walls too thick for the constant"),
  "constant-proved": doubtful("another constant by the proof"),
  "box-overdue": doubtful("box check overdue"),
  "box-unchecked": missing("box never checked"),
  "constant-differs": doubtful("constant not that of the box", spoilsRow, explainsTyped),
  "fan-repeated": wrong("fan listed twice"),
  "dwelling-unknown": wrong("fan with no dwelling"),
  "dwelling-repeated": wrong("dwelling listed twice"),
  "dwelling-empty": missing("dwelling with no fan"),
  "dwelling-size": missing("floor area or bedrooms unusable", spoilsRow),
  "room-unknown": wrong("room kind unknown", spoilsRow),
  "room-missing": missing("room kind missing", spoilsRow),
  "duty-unknown": wrong("duty unknown", spoilsRow),
  "duty-missing": missing("duty missing", spoilsRow),
  "rate-not-set": doubtful("no rate for this room and duty", spoilsRow),
  "note-says": doubtful("note that bears on the reading", yields),
  "house-state": doubtful("state of the house at the test"),
  "box-seat": doubtful("box does not cover the grille"),
  "duct-shared": doubtful("shared duct not read together"),
  "rate-none": result("no rate required", spoilsRow),
  "hood-listed": result("hood enough by its listing only", yields),
  "room-unsaid": missing("kitchen not described", yields),
  "date-missing": missing("test date missing"),
  "date-wrong": wrong("test date unusable"),
  "tester-missing": missing("tester missing"),
  "flow-short": result("flow short of the required rate", yields),
  "deficit-carried": result("room deficit carried to the dwelling", yields),
  "flow-is-rating": wrong("flow copied from the rating", spoilsRow, explainsTyped),
  "flow-unlike-rating": doubtful("flow far from the rating", yields),
  "whole-house-missing": result("no whole-house ventilation found"),
  "passed-unread": wrong("passes without a reading", spoilsRow),
  "passed-outside": wrong("passes on a reading outside the window", spoilsRow, explainsTyped),
  "verdict-differs": wrong("verdict against its flow", yields, explainsTyped),
  "required-differs": wrong("required rate unlike the firm's own", explainsTyped),
  "review-apart": doubtful("reviewer's flow apart"),
  "sample-small": missing("sample too small"),
  "sample-failed": result("failures in the sample"),
  "edition-day": doubtful("readings before the edition"),
  "retest-order": wrong("retest before the first test"),
  "balance-off": result("supply and exhaust not balanced"),
  "system-unsaid": missing("kind of ventilation system not said"),
  "supply-by-box": doubtful("supply read with the box"),
  "dwelling-over": result("dwelling above its band"),
  "dwelling-short": result("dwelling short of its rate"),
  "formula-typed-over": wrong("formula replaced by a typed value", { explains: ["value-differs"] }),
  "value-unchecked": doubtful("formulas not worked out again"),
  "value-stale": wrong("stored value is not what its formula gives", {
    explains: ["value-differs", "cell-error"],
  }),
  "formula-circular": wrong("formulas that read each other in a circle", {
    explains: ["value-stale", "value-differs", "cell-error"],
  }),
  "value-differs": wrong("value does not follow from its row"),
  "formula-other-row": wrong("formula points at another row"),
  "formula-fixed-reference": wrong("reference fixed where the others move, or the reverse"),
  "formula-other-constant": wrong("another constant in the formula"),
  "formula-short-range": wrong("range that misses rows"),
  "formula-other-function": wrong("another function than the rows beside it"),
  "formula-unknown-function": wrong("function that does not exist"),
  "formula-other-workbook": doubtful("formula reads another workbook"),
  "formula-differs": doubtful("formula unlike the rows beside it"),
  "formula-missing": doubtful("formula missing from a row"),
  "number-stored-as-text": wrong("number stored as text"),
  "cell-formatted-as-text": doubtful("cell formatted as text"),
  "cell-far": doubtful("cell far from all others"),
  "row-hidden": doubtful("hidden rows hold data"),
  "column-hidden": doubtful("hidden columns hold data"),
  "acceptance-incomplete": missing("acceptance incomplete"),
  "proof-incomplete": missing("box without a finished proof"),
  "proof-failed": wrong("box not proved"),
  "proof-expired": doubtful("proof of the box too old"),
  "instrument-unknown": wrong("instrument not listed", spoilsRow),
  "instrument-outside": wrong("reading outside the instrument"),
  "instrument-limit": missing("instrument without a limit"),
  "instrument-overdue": doubtful("calibration overdue"),
  "second-reading-odd": wrong("second opening does not fit the first"),
  "box-holds-back": result("the box holds the fan back"),
  "flow-close": result("too close to call", yields),
  "efficacy-short": result("fan uses too much power"),
  "sound-over": result("fan too loud"),
  "duct-over": result("duct longer than the table allows"),
  "design-differs": result("flow does not match the design", yields),
  "makeup-air": result("makeup air needed"),
  "makeup-unsaid": missing("open-flue appliance not said"),
  "schedule-fan": result("no fan on offer is large enough"),
  "schedule-duct": result("planned duct will not do"),
  "cost-missing": missing("planned without a cost"),
  "schedule-opening": result("no opening for the planned fan"),
  "register-blank": result("register not read"),
  "register-house": doubtful("house pressure off"),
  "register-repeat": result("pan readings apart"),
  "register-leaks": result("register leaks"),
  "record-old": doubtful("record older than the job"),
  "setting-unusual": doubtful("unusual setting"),
  "fans-again": wrong("fans listed on a second sheet"),
  "flows-alike": doubtful("flows of a tester all alike"),
  "readings-copied": doubtful("readings of another dwelling"),
  "number-shown-other": wrong("number shown as another"),
  "number-unseen": doubtful("number in the colour of its ground"),
  "sheet-hidden": doubtful("hidden sheet with readings"),
  "setting-wrong": wrong("setting unusable"),
  "setting-blank": missing("setting to be filled in"),
  "sheet-missing": missing("sheet or column not found"),
} satisfies Record<string, KindEntry>;

export type FindingKind = keyof typeof findingKinds;

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

export const nameOfCell = ({ sheet, cell }: CellAt) => `${sheet}!${cell}`;

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
