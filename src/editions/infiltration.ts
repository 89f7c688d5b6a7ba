import type { Source } from "../formulas";
import type { Rate } from "./rate";

/**
 * How a leakage measured at 50 Pa becomes the flow that leaks in over a year.
 *
 * "normalized leakage" divides `NL · weather · floor area` by the factor; "short" multiplies the
 * leakage itself by it. Both grow with `(height / reference height) ^ exponent`.
 */
export interface InfiltrationRule {
  readonly form: "normalized leakage" | "short";
  readonly factor: Rate;
  readonly referenceHeight: Rate;
  readonly exponent: number;
  readonly source: Source;
}

/** How much of the infiltration the fans need not move. */
export interface CreditRule {
  /** Most of the total that may count in new work. Left out: new work has no credit. */
  readonly newWork?: { readonly mostOfTotal: number; readonly source: Source };
  /** Existing dwellings: this share of what exceeds the default that the rate already holds. */
  readonly excess?: { readonly share: number; readonly byDefault: Rate; readonly source: Source };
  /** The credit shrinks with the share of the envelope that faces outside. */
  readonly exposure?: { readonly source: Source };
  /** No fan is asked for where less than this (new work), or no more (existing dwellings), is left. */
  readonly noFan?: { readonly new: Rate; readonly existing: Rate; readonly source: Source };
  /** Without balanced fans the credit shrinks again by infiltration ÷ total. */
  readonly unbalanced?: { readonly source: Source };
  readonly source: Source;
}
