import { InputError, toldOf } from "../cells";
/** A request that Excel refused, or that could not be made. The message is for the user. */
export class HostError extends InputError {
  override readonly name = "HostError";

  constructor(
    /** Excel's own code, such as "AccessDenied", or one of ours, such as "SheetProtected". */
    readonly code: string,
    message: string,
    options: ErrorOptions = {},
  ) {
    super(message);
    Object.assign(this, options);
  }
}

const sentences: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode:
    "A cell is being edited: finish or leave the cell you are editing, then try again.",
  AccessDenied:
    "Excel does not allow this: the sheet or the workbook is protected, or open for reading only. Lift the protection or save a copy, then try again.",
  ItemAlreadyExists:
    "The workbook already has something of this name: rename that, then try again.",
  ItemNotFound:
    "What was asked for is no longer there: a sheet may have been deleted meanwhile. Read the workbook again.",
  InvalidReference: "The cells are no longer there. Read the workbook again.",
  RequestPayloadSizeLimitExceeded:
    "This is more than Excel takes at once. Work on fewer rows, then try again.",
  ResponsePayloadSizeLimitExceeded:
    "This is more than Excel hands over at once. Work on fewer rows, then try again.",
  RangeExceedsLimit: "This is more cells than Excel handles at once. Work on fewer rows.",
  OperationCellsExceedLimit: "This is more cells than Excel handles at once. Work on fewer rows.",
  ApiNotFound:
    "This version of Excel lacks something that is needed here. Update Excel, or open the workbook in Excel on the web.",
  UnsupportedFeature: "This version of Excel does not offer what is needed here. Update Excel.",
  UnsupportedOperation: "Excel cannot do this here.",
  UnsupportedSheet: "This kind of sheet holds no cells. Go to a sheet with cells, then try again.",
  MergedRangeConflict: "Merged cells are in the way: unmerge them, then try again.",
  FilteredRangeConflict: "A filter is in the way: show all rows, then try again.",
  PivotTableRangeConflict: "A PivotTable is in the way.",
  InsertDeleteConflict: "Excel cannot insert or delete cells here.",
  InactiveWorkbook: "The workbook is not the active one: click into it, then try again.",
  RequestAborted: "Excel broke the request off: try again.",
  ReadOnlyWorkbook: "The workbook is open for reading only: save a copy, then try again.",
  InvalidSelection: "Select cells of one sheet, then try again.",
};

/** Turns whatever Excel threw into a sentence for the user. Excel's own text is kept behind it. */
export function toHostError(thrown: unknown): HostError {
  if (thrown instanceof HostError) return thrown;
  const { code, message, debugInfo } = thrown as {
    code?: unknown;
    message?: unknown;
    debugInfo?: { errorLocation?: unknown };
  };
  const told = typeof message === "string" ? message : String(thrown);
  if (typeof code !== "string")
    return new HostError("Unexpected", toldOf(thrown), { cause: thrown });
  const own = sentences[code];
  if (own === undefined) {
    const place = debugInfo?.errorLocation;
    const where = typeof place === "string" && place !== "" ? ` at ${place}` : "";
    return new HostError(code, `Excel refused${where}: ${told} (${code})`, { cause: thrown });
  }
  return new HostError(code, own, { cause: thrown });
}

/** The refusal to write on a protected sheet. */
export function sheetProtected(sheet: string): HostError {
  return new HostError(
    "SheetProtected",
    `The sheet ${sheet} is protected: unprotect it on the Review tab, then try again.`,
  );
}

/** The refusal where a sheet is not there any more. */
export function sheetGone(sheet: string): HostError {
  return new HostError(
    "ItemNotFound",
    `There is no sheet ${sheet} any more: it was deleted or renamed. Read the workbook again.`,
  );
}

/** The refusal to use a sheet that is hidden. */
export function sheetHidden(sheet: string): HostError {
  return new HostError(
    "SheetHidden",
    `The sheet ${sheet} is hidden: unhide it with a right click on the sheet tabs, then try again.`,
  );
}
