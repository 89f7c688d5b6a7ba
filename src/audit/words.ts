import type { Finding, FindingKind } from "../job";

type Words = Pick<Finding, "effect" | "mend">;

/** What a departure does to the result, and what to do about it. */
export function wordsOf(kind: FindingKind, soundCell: string): Words {
  const copy = `Copy the formula from ${soundCell}, or say in the note why this row is worked out otherwise.`;
  switch (kind) {
    case "formula-typed-over":
      return {
        effect: "It does not follow when the cells beside it change.",
        mend: `Copy the formula from ${soundCell}.`,
      };
    case "formula-other-row":
      return {
        effect: "The result belongs to another row than the one it stands in.",
        mend: `Copy the formula from ${soundCell}.`,
      };
    case "formula-fixed-reference":
      return {
        effect: "It may be right in this row, but copied or sorted it points at the wrong cell.",
        mend: `Copy the formula from ${soundCell}.`,
      };
    case "formula-other-constant":
      return {
        effect: "The result is not worked out like those of the rows beside it.",
        mend: copy,
      };
    case "formula-short-range":
      return {
        effect: "What stands in the rows left out is not found or not counted.",
        mend: `Copy the formula from ${soundCell}.`,
      };
    case "formula-unknown-function":
      return {
        effect: "The cell shows an error as soon as it is worked out anew.",
        mend: `Copy the formula from ${soundCell}, or choose a function from the list.`,
      };
    case "formula-other-workbook":
      return {
        effect: "The result hangs on a file that a reviewer may not have, or has in another state.",
        mend: `Copy the formula from ${soundCell}, or bring the cells into this workbook.`,
      };
    default:
      return {
        effect: "The result is not worked out like those of the rows beside it.",
        mend: copy,
      };
  }
}
