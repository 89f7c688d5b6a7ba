import type { RequiredRate } from "../../job";

/** Where a number stands, as a reviewer should read it. */
export interface Clause {
  readonly work: string;
  /** "" where the work as a whole is meant. */
  readonly clause: string;
  /** How far it was traced. */
  readonly mark: string;
}

type Source = RequiredRate["source"];

/** How far a number has been traced, as a reviewer should read it. */
export const markWords: Readonly<Record<Source["mark"], string>> = {
  read: "read in the named text",
  "two sources": "read in two independent texts",
  "from memory": "from memory, verify against your copy",
  "common practice": "common practice of the trade",
  "by definition": "by definition",
};

export function clauseOf({ work, clause, mark }: Source): Clause {
  return { work, clause, mark: markWords[mark] };
}

/** "IRC 2021, M1503.6: read in the named text" */
export function clauseText({ work, clause, mark }: Clause): string {
  return `${[work, clause].filter((part) => part !== "").join(", ")}: ${mark}`;
}
