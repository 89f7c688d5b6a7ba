/** "A, B and C". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** "1 fan", "2 fans". */
export const count = (number: number, one: string): string =>
  `${number} ${number === 1 ? one : `${one}s`}`;

/** "Type percent, such as 50." of "type percent, such as 50". */
export const asSentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
