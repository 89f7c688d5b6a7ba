import { toldOf } from "../../../cells";

/** The codes under which Excel refuses a request (Excel.ErrorCodes and OfficeExtension.ErrorCodes). */
type ErrorCode =
  | "AccessDenied"
  | "ApiNotFound"
  | "GeneralException"
  | "InvalidArgument"
  | "InvalidOperation"
  | "InvalidOperationInCellEditMode"
  | "InvalidReference"
  | "InvalidSelection"
  | "ItemAlreadyExists"
  | "ItemNotFound"
  | "RangeExceedsLimit"
  | "RequestPayloadSizeLimitExceeded"
  | "ResponsePayloadSizeLimitExceeded"
  | "UnsupportedOperation";

/** A refusal: the code is Excel's, the message says what was wrong and how to mend it. */
export class HostError extends Error {
  override readonly name = "HostError";

  constructor(
    readonly code: ErrorCode,
    message: string,
  ) {
    super(message);
  }
}

export function invalidArgument(message: string): HostError {
  return new HostError("InvalidArgument", message);
}

export function notFound(message: string): HostError {
  return new HostError("ItemNotFound", message);
}

/**
 * Whatever was thrown as a refusal. The workbook throws RangeErrors for what a file cannot hold;
 * their messages name the cell.
 */
export function asHostError(thrown: unknown): HostError {
  if (thrown instanceof HostError) return thrown;
  if (thrown instanceof RangeError) return new HostError("InvalidOperation", thrown.message);
  return new HostError("GeneralException", toldOf(thrown));
}
