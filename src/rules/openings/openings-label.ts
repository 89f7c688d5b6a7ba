import { InputError } from "../../cells";
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

/** The openings that a text such as "A+C" names, in its order. Labels are compared without case. */
export function openingsNamed(text: string, box: readonly Opening[]): Opening[] {
  const labels = splitLabels(text);
  if (labels.length === 0)
    throw new OpeningsError("empty", "no opening named: give its label, such as A or A+C");
  const seen = new Set<string>();
  return labels.map((label) => {
    const key = label.toLowerCase();
    if (seen.has(key))
      throw new OpeningsError(
        "repeated",
        `opening ${label} is named twice: name each open one once`,
      );
    seen.add(key);
    const found = box.find((opening) => opening.label.toLowerCase() === key);
    if (!found)
      throw new OpeningsError(
        "unknown",
        `unknown opening "${label}": this box has ${[...new Set(box.map((opening) => opening.label))].join(", ") || "none"}`,
      );
    return found;
  });
}

/** The total open area of the openings named. */
export function areaOf(openings: readonly Opening[]): number {
  return openings.reduce((sum, opening) => sum + opening.area, 0);
}
