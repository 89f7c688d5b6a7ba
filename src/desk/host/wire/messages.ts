/** The messages between the Office.js client library and a host, as the library writes and reads them. */

export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json };

/** How an object is reached; numbers as in the library. */
export const pathType = {
  global: 1,
  newObject: 2,
  method: 3,
  property: 4,
  indexer: 5,
  reference: 6,
  none: 7,
} as const;

/** What is asked of an object; numbers as in the library. */
export const actionType = {
  instantiate: 1,
  query: 2,
  method: 3,
  setProperty: 4,
  trace: 5,
} as const;

export interface ArgumentInfo {
  readonly Arguments?: readonly Json[];
  /** At the places of arguments that are objects, the id of their path; otherwise 0. */
  readonly ReferencedObjectPathIds?: readonly Json[];
}

export interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface QueryInfo {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
  readonly Top?: number;
  readonly Skip?: number;
}

export interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: QueryInfo;
}

export interface BatchRequest {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

export interface BatchError {
  readonly Code: string;
  readonly Message: string;
  /** Which of the actions failed. */
  readonly ActionIndex: number;
  /** The member that failed, "Range.values". */
  readonly Location: string;
}

export interface BatchResponse {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly TraceIds: readonly number[];
  readonly Error?: BatchError;
}

export interface RequestMessage {
  readonly id: number;
  readonly type: 1;
  readonly flags: number;
  readonly message: { readonly url: string; readonly body: BatchRequest };
}

/** Flag of a request that waits while a cell is being edited instead of failing. */
export const waitsForCellEdit = 64;

export interface EventEntry {
  readonly messageCategory: 65536;
  readonly messageType: number;
  readonly targetId: string;
  /** The event's arguments as JSON. */
  readonly message: string;
}
