/** One worksheet function as its host sees it: what its rule takes, and the code of its shell. */
export interface WorksheetFunction {
  /** Frozen id, upper case, without the namespace: `FLOW`. */
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly FunctionParameter[];
  /** Called with one entry a parameter; an omitted optional arrives as null. */
  readonly call: (...args: unknown[]) => unknown;
}

/** A parameter that takes any value. */
export interface FunctionParameter {
  readonly name: string;
  readonly description: string;
  /** "matrix": the host passes a two-dimensional array, also for a single cell. */
  readonly dimensionality: "scalar" | "matrix";
  readonly optional: boolean;
  readonly repeating: boolean;
}
