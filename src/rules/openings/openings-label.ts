import { InputError, kept, once } from "../../cells";

/** One opening of a box: its label and its open area. */
export interface Opening {
  readonly label: string;
  readonly area: number;
}

/** A label of openings in use that cannot be read; the message says how to mend it. */
export class OpeningsError extends InputError {
  constructor(
    readonly flaw: "unknown" | "repeated" | "empty",
    message: string,
  ) {
    super(message);
  }
}

/** The labels in a text such as "A+C", "A, C" or "A & C". */
export function splitLabels(text: string): string[] {
  return text
    .split(/[+,;&]|\band\b/i)
    .map((label) => label.trim())
    .filter((label) => label !== "");
}

/** The openings of a box by their label in small letters; the first of a label counts. */
const openingsOf = once((box: readonly Opening[]) => {
  const known = new Map<string, Opening>();
  for (const opening of box) kept(known, opening.label.toLowerCase(), () => opening);
  return known;
});

const mostListed = 30;

/** Names as a message lists them: of very many the first. */
export function listed(names: readonly string[]): string {
  const more = names.length > mostListed ? ` and ${names.length - mostListed} more` : "";
  return names.slice(0, mostListed).join(", ") + more;
}

/** The openings that a text such as "A+C" names, in its order. Labels are compared without case. */
export function openingsNamed(text: string, box: readonly Opening[]): Opening[] {
  const labels = splitLabels(text);
  if (labels.length === 0)
    throw new OpeningsError("empty", "no opening named: give its label, such as A or A+C");
  const known = openingsOf(box);
  const seen = new Set<string>();
  return labels.map((label) => {
    const key = label.toLowerCase();
    if (seen.has(key))
      throw new OpeningsError(
        "repeated",
        `opening ${label} is named twice: name each open one once`,
      );
    seen.add(key);
    const found = known.get(key);
    if (!found)
      throw new OpeningsError(
        "unknown",
        `unknown opening "${label}": this box has ${listed([...known.values()].map((opening) => opening.label)) || "none"}`,
      );
    return found;
  });
}

/** The total open area of the openings named. */
export function areaOf(openings: readonly Opening[]): number {
  return openings.reduce((sum, opening) => sum + opening.area, 0);
}
