/** One worksheet function as its host sees it: the generated metadata and the code behind it. */
export interface WorksheetFunction {
  /** Frozen id, upper case, without the namespace: `FLOW`. */
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly FunctionParameter[];
  /** Called with one entry a parameter; an omitted optional arrives as null. */
  readonly call: (...args: unknown[]) => unknown;
}

export interface FunctionParameter {
  readonly name: string;
  readonly description: string;
  readonly type: "any" | "number" | "string" | "boolean";
  /** "matrix": the host passes a two-dimensional array, also for a single cell. */
  readonly dimensionality: "scalar" | "matrix";
  readonly optional: boolean;
  readonly repeating: boolean;
}
