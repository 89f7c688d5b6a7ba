import { InputError } from "../cells";
import { sum } from "./evaluate";

/** y = slope · x, by least squares. */
interface OriginFit {
  readonly n: number;
  /** n − 1. */
  readonly dof: number;
  readonly slope: number;
  /** Standard error of the slope; NaN without degrees of freedom. */
  readonly slopeError: number;
  /** Standard deviation of the residuals; NaN without degrees of freedom. */
  readonly residual: number;
  /** Uncentred, 1 − Σe²/Σy²: what is defined for a line without an intercept. */
  readonly r2: number;
}

/** The least-squares line through the origin. Throws where the lengths differ or every x is 0. */
export function throughOrigin(x: ArrayLike<number>, y: ArrayLike<number>): OriginFit {
  requireAlike(x, y);
  const xx = sum(x, (v) => v * v);
  if (!(xx > 0))
    throw new InputError("every x is 0: a line through the origin needs one that is not");
  const slope = sum(x, (v, i) => v * at(y, i)) / xx;
  const lost = sum(x, (v, i) => (at(y, i) - slope * v) ** 2);
  const dof = x.length - 1;
  const residual = dof > 0 ? Math.sqrt(lost / dof) : Number.NaN;
  const r2 = 1 - lost / sum(y, (v) => v * v);
  return { n: x.length, dof, slope, slopeError: residual / Math.sqrt(xx), residual, r2 };
}

const at = (values: ArrayLike<number>, i: number): number => values[i] as number;

function requireAlike(x: ArrayLike<number>, y: ArrayLike<number>): void {
  if (x.length !== y.length)
    throw new RangeError(`${x.length} x and ${y.length} y: give as many of one as of the other`);
}
