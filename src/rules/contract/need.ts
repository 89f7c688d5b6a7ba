import { InputError } from "../../cells";

/** The numbers that an argument takes, and what is told of any other. */
export interface Need {
  readonly from?: number;
  readonly above?: number;
  readonly to?: number;
  readonly below?: number;
  readonly whole?: true;
  /** 0 is none of them, although it lies between the bounds. */
  readonly notZero?: true;
  readonly say: string;
}

export function isMet(need: Need, x: number): boolean {
  const { from = -Infinity, above = -Infinity, to = Infinity, below = Infinity } = need;
  return (
    x >= from &&
    (x > above || above === -Infinity) &&
    x <= to &&
    (x < below || below === Infinity) &&
    (!need.whole || Number.isInteger(x)) &&
    (!need.notZero || x !== 0)
  );
}

export const aboveZero: Need = { above: 0, say: "give a number above 0" };
export const zeroOrMore: Need = { from: 0, say: "give a number of 0 or more" };
export const wholeNumber: Need = { from: 0, whole: true, say: "give a whole number, 0 or more" };
export const share: Need = { from: 0, to: 1, say: "give a share from 0 to 1" };

/** Throws where a number will not do: for those who work without the reading of arguments. */
export function must(name: string, value: number, need: Need): void {
  if (!isMet(need, value)) throw new InputError(`${name} ${value}: ${need.say}`);
}
