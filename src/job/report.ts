import { cellName, grouped, once } from "../cells";
import type { SheetKind } from "./columns";
import {
  type CellAt,
  type Finding,
  type FindingKind,
  findingKinds,
  type Mend,
  nameOfCell,
  type Question,
} from "./findings";
import { merged } from "./many-as-one";
import type { Table } from "./read";

export interface Words extends Pick<Finding, "what" | "effect" | "mend"> {
  readonly apply?: Mend | undefined;
  readonly question?: Question | undefined;
  /** Findings of a kind with the same cause are one, with all their cells. */
  readonly cause?: string;
  /** Further cells of the same cause. */
  readonly also?: readonly CellAt[];
}

/** A finding with what tells whether another one explains it. */
export interface Noted {
  readonly finding: Finding;
  readonly cause: string | undefined;
  /** The reading that it is about: its table and number; undefined where there is none. */
  readonly kind: SheetKind | undefined;
  readonly i: number;
}

/** Collects findings. */
export class Report {
  readonly found: Noted[] = [];

  /** `isAnswered` tells of a fan's reading whether a later one stands for the fan. */
  constructor(private readonly isAnswered: (i: number) => boolean) {}

  /** A finding at one cell of a reading. */
  at(kind: FindingKind, table: Table, key: string, i: number, about: string, words: Words): void {
    const { severity, yields } = findingKinds[kind];
    const isOfReading = severity === "result" || yields;
    if (isOfReading && table.layout.kind === "fans" && this.isAnswered(i)) return;
    const { grid, row, col } = table.placeOrHome(key, i);
    const reading = { kind: table.layout.kind, i: table.numberInWhole(i) };
    this.note(kind, grid.name, cellName(row, col), row, about, words, reading);
  }

  add(
    kind: FindingKind,
    sheet: string,
    cell: string,
    row: number,
    about: string,
    words: Words,
  ): void {
    this.note(kind, sheet, cell, row, about, words, { kind: undefined, i: row });
  }

  private note(
    kind: FindingKind,
    sheet: string,
    cell: string,
    row: number,
    about: string,
    { apply, question, cause, also = [], ...words }: Words,
    reading: Pick<Noted, "kind" | "i">,
  ): void {
    const { severity } = findingKinds[kind];
    const cells = cell === "" ? [] : [{ sheet, cell }, ...also];
    const finding: Finding = {
      ...{ kind, severity, sheet, cell, row, cells, about, ...words },
      ...(apply && { apply }),
      ...(question && { question }),
    };
    this.found.push({ finding, cause, ...reading });
  }
}

/** What stands of all that was noted: nothing that another finding explains. */
export function standing(noted: readonly Noted[]): Noted[] {
  const explained = new Set<string>();
  const spoiled = new Set<string>();
  for (const each of noted) {
    const { explains = [], spoilsRow } = findingKinds[each.finding.kind];
    if (explains.length > 0)
      for (const place of placesOf(each.finding))
        for (const kind of explains) explained.add(`${kind} ${place}`);
    if (spoilsRow) spoiled.add(readingOf(each));
  }
  return noted.filter((each) => {
    const { kind } = each.finding;
    if (explainable.has(kind) && explained.has(`${kind} ${nameOfCell(each.finding)}`)) return false;
    return !(findingKinds[kind].yields && spoiled.has(readingOf(each)));
  });
}

/** Kinds of which another finding may tell as well. */
const explainable: ReadonlySet<string> = new Set(
  Object.values(findingKinds).flatMap(({ explains = [] }) => explains),
);

const placesOf = (finding: Finding) =>
  finding.cells.length > 0 ? finding.cells.map(nameOfCell) : [nameOfCell(finding)];

/**
 * One finding for each cause of what stands: of the workbook as a whole first, then by sheet, row and
 * cell. `sheets` names those of the file in its order.
 */
export function findingsOf(noted: readonly Noted[], sheets: readonly string[]): Finding[] {
  const order = new Map(sheets.map((name, at) => [name, at]));
  const at = (finding: Finding) => order.get(finding.sheet) ?? -1;
  return oneEachCause(noted).sort(
    (a, b) =>
      at(a) - at(b) ||
      a.row - b.row ||
      a.cell.length - b.cell.length ||
      Number(a.cell > b.cell) - Number(a.cell < b.cell),
  );
}

const readingOf = once(({ finding: { sheet }, kind, i }: Noted) => `${kind ?? `${sheet}!`} ${i}`);

function oneEachCause(noted: readonly Noted[]): Finding[] {
  const alike = grouped(noted, causeOf);
  return [...alike.values()].map((own) => toldOnce(own.map(({ finding }) => finding)));
}

/** How a first finding was told the last time, with those that it was told for. */
const lastTold = new WeakMap<Finding, { of: readonly Finding[]; one: Finding }>();

/** The very same for the same findings again. */
function toldOnce(of: readonly Finding[]): Finding {
  const [first] = of as [Finding];
  const before = lastTold.get(first);
  if (before?.of.length === of.length && of.every((each, i) => each === before.of[i]))
    return before.one;
  const one = brief(merged(of));
  lastTold.set(first, { of, one });
  return one;
}

/** What is told once; each by itself where neither cause nor cell is known. */
const causeOf = once((each: Noted): string | Noted => {
  const { finding, cause } = each;
  if (cause !== undefined) return `${finding.kind} ${cause}`;
  return finding.cell === "" ? each : `${finding.kind} ${nameOfCell(finding)}`;
});

/** A finding whose words quote no more of a cell's text than can be read. */
function brief(finding: Finding): Finding {
  const { what, effect, mend, about } = finding;
  if (Math.max(what.length, effect.length, mend.length, about.length) <= longestName)
    return finding;
  return {
    ...finding,
    what: cut(what, longestSentence),
    effect: cut(effect, longestSentence),
    mend: cut(mend, longestSentence),
    about: cut(about, longestName),
  };
}

const longestSentence = 800;
const longestName = 120;

function cut(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most).replace(/[\uD800-\uDBFF]$/, "")}…`;
}
