import { InputError } from "../../cells";

/** "yes" and "no" as people write them; undefined for a blank. Throws where it is neither, and tells what to say. */
export function readYesNo(
  name: string,
  text: string,
  say = 'say "yes" or "no"',
): boolean | undefined {
  const word = text.trim().toLowerCase();
  if (word === "") return undefined;
  if (word === "yes" || word === "y" || word === "true") return true;
  if (word === "no" || word === "n" || word === "false") return false;
  throw new InputError(`${name} "${text}": ${say}`, "unusable", name);
}

/** The answer in an argument that is not blank. */
export const answered = (text: string, name: string, say?: string): boolean =>
  readYesNo(name, text, say) === true;
