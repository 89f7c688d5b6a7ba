import { everyEdition, everyNumber, type NumberEntry } from "../../job";
import { digits } from "./in-words";
import { type Clause, clauseOf } from "./marks";

interface NumberView {
  readonly what: string;
  /** "50 cfm" */
  readonly value: string;
  readonly clause: Clause;
}

interface NumbersPage {
  readonly rows: readonly NumberView[];
  /** How many fit the filter. */
  readonly total: number;
}

/** As many as can be looked through, and drawn at once. */
export const mostNumbers = 200;

let all: readonly NumberEntry[] | undefined;

/** The list never changes while the pane is open, and takes its time to make. */
function numbers(): readonly NumberEntry[] {
  all ??= everyNumber();
  return all;
}

/** What the numbers are listed under: editions and codes, then what holds under every one. */
export function numberEditions(): string[] {
  const names = new Set(numbers().map(({ edition }) => edition));
  names.delete(everyEdition);
  return [...names, everyEdition];
}

/** The numbers of one edition that have all the words of the filter in them, in reading order. */
export function numbersPage(edition: string, filter: string, most = mostNumbers): NumbersPage {
  const words = filter
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const found = numbers()
    .filter((entry) => entry.edition === edition)
    .map(viewOf)
    .filter((view) => {
      const { what, value, clause } = view;
      const text = [what, value, clause.work, clause.clause, clause.mark].join(" ").toLowerCase();
      return words.every((word) => text.includes(word));
    });
  return { rows: found.slice(0, most), total: found.length };
}

function viewOf({ what, value, unit, source }: NumberEntry): NumberView {
  const number = Number.isFinite(value) ? digits(value, 7) : "without end";
  return {
    what,
    value: unit === "" || unit === "1" ? number : `${number} ${unit}`,
    clause: clauseOf(source),
  };
}
