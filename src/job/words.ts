/** Numbers as a finding writes them: one decimal, more where the number is small. */
export function shown(value: number): string {
  const magnitude = Math.abs(value);
  const digits = magnitude >= 1 || magnitude === 0 ? 1 : magnitude >= 0.1 ? 2 : 3;
  return String(Number(value.toFixed(digits)));
}

/** "A, B and C". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
