/** What a computed column should hold in a row; undefined where it cannot be told. */
export interface Expectation {
  readonly key: string;
  readonly expected: (i: number) => number | string | undefined;
}
