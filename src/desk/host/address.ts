/** Longest address a call may carry. */
export const longestAddress = 8192;

export function addressTooLong(text: string): string {
  return `The address has ${text.length} characters; at most ${longestAddress} are taken.`;
}
