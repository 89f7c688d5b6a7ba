/** Neighbouring numbers as one, [first, last] each; the numbers rise. */
export function runsOf(numbers: Iterable<number>): [first: number, last: number][] {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && number <= run[1] + 1) run[1] = number;
    else runs.push([number, number]);
  }
  return runs;
}
