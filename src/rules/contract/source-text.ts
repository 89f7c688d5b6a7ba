import type { Mark, Source } from "../../formulas";

/** What the user is told beside a number that was recalled. */
export function verifyNote(mark: Mark): string {
  return mark === "from memory" ? "verify against your copy" : "";
}

/** "work, clause (mark)"; what was recalled asks to be verified. */
export function sourceText({ work, clause, mark }: Source): string {
  const place = clause === "" ? work : `${work}, ${clause}`;
  return `${place} (${[mark, verifyNote(mark)].filter((part) => part !== "").join(", ")})`;
}
