import { addBesideTotals } from "../evidence/beside-totals";
import { addCores, addFormulas } from "../evidence/from-formulas";
import { addValues } from "../evidence/from-values";
import { addWords, type LineWords } from "../evidence/from-words";
import { type Core, coresByFormula, lineFormulas } from "../evidence/laws";
import { Ledger } from "../evidence/ledger";
import { addRelations } from "../evidence/relations";
import { type LineStats, statsOfPool } from "../evidence/stats";
import type { Book } from "../formulas/book";
import { coreByOpening } from "../physics/by-opening";
import { coresByValues } from "../physics/by-values";
import { type RoleOrOther, rolesAndOther } from "../roles";
import { type Pool, type Sample, sampleOf } from "../tables/section";
import { plain } from "../text/plain";
import type { Choice, Role } from "../types";
import { assign } from "./assign";
import { aboutOf, judgeBlock, type Verdict } from "./judge";
import { linesMeant } from "./line-names";
import { inheritRoles } from "./retests";
import { type Part, splitLines } from "./split";

/** A block of a pool before its readings are listed. */
export interface PoolBlock {
  readonly pool: Pool;
  readonly part: Part;
  readonly given: ReadonlyMap<Role, number>;
  readonly ledger: Ledger;
  readonly stats: ReadonlyMap<number, LineStats>;
  readonly words: ReadonlyMap<number, LineWords>;
  readonly verdict: Verdict;
}

/** Rows looked at for evidence; more would tell no more. */
const mostSamples = 900;

/** Gathers the evidence for a pool of tables and gives its lines their roles. */
export function readPool(
  pool: Pool,
  book: Book,
  choices: readonly Choice[],
  titles: readonly string[],
  openings: ReadonlySet<string>,
): PoolBlock[] {
  const sample = sampleOf(pool, mostSamples);
  const stats = statsOfPool(pool, sample);
  const ledger = new Ledger();
  const words = addWords(pool, ledger);
  addValues(stats, words, ledger);
  addBesideTotals(pool, stats, ledger);
  addOpenings(stats, openings, ledger);
  addChoices(pool, choices, ledger);
  const looks = {
    isText: (line: number) => (stats.get(line)?.texts ?? 0) > (stats.get(line)?.filled ?? 0) / 2,
    isConstant: (line: number) => {
      const s = stats.get(line);
      return (
        s !== undefined &&
        s.distinctNumbers <= Math.max(1, s.numeric * 0.1) &&
        s.distinctNumbers <= 3 &&
        s.median < 2
      );
    },
  };
  const formulas = lineFormulas(sample, pool.lines, book);
  const agreed = (found: Core[]) => found.filter((core) => !contradicts(core, found, ledger, pool));
  let cores: Core[] = agreed(coresByFormula(formulas, looks, sample.length));
  if (cores.length === 0) cores = agreed(byValues(pool, sample, stats, words, ledger));
  addCores(cores, ledger);
  const judgements = addFormulas(formulas, stats, cores, ledger);
  const parts = splitLines(pool, cores, ledger, stats);
  const assigned = (part: Part) => assign(ledger, linesOf(part), byFormulas(part));
  addRelations(sample, stats, parts.map(assigned), ledger);
  const said = choicesFor(pool, choices).find(({ heading }) => heading === "")?.role;
  const blocks = parts.map((part) => ({ part, given: assigned(part) }));
  inheritRoles(blocks);
  const about = aboutOf(pool, titles);
  return blocks.map(({ part, given }) => ({
    pool,
    part,
    given,
    ledger,
    stats,
    words,
    verdict: judgeBlock(pool, part, given, stats, words, judgements, about, said),
  }));
}

function linesOf({ own, shared }: Part): number[] {
  return [...own, ...shared].sort((a, b) => a - b);
}

/** What the formulas of one block among others read is its own, though a retest reads it too. */
function byFormulas({ core, shared }: Part): Map<Role, number> {
  const given = new Map<Role, number>();
  if (core?.by !== "formulas" || shared.length === 0) return given;
  for (const role of ["pressure", "area", "flow"] as const)
    if (core[role] !== undefined) given.set(role, core[role]);
  return given;
}

function byValues(
  pool: Pool,
  sample: readonly Sample[],
  stats: ReadonlyMap<number, LineStats>,
  words: ReadonlyMap<number, LineWords>,
  ledger: Ledger,
): Core[] {
  const likely = new Map([...stats].filter(([line]) => ledger.weight(line, "other", "words") < 5));
  const cores = coresByValues(likely, {
    unit: (line) => words.get(line)?.unit?.name,
    mayBe: (line, role) =>
      ledger.weight(line, role) > -2.5 &&
      rolesAndOther.every((other) => other === role || !ledger.weight(line, other, "choice")),
    named: (line, role) => ledger.weight(line, role, "words") > 1.5,
    repeats: (line) => ledger.add(line, "other", "physics", 4, "it repeats flows of other lines"),
  });
  if (cores.length) return cores;
  const codes = pool.lines
    .filter((line) => (stats.get(line)?.texts ?? 0) > 0 && stats.get(line)!.words.size <= 14)
    .map((line) => ({
      line,
      keys: sample.map(({ section: { cells, shift }, row }) =>
        cells.has(row, line + shift) ? plain(cells.text(row, line + shift)) : "",
      ),
    }));
  const named = likely.size ? coreByOpening(likely, codes) : undefined;
  return named ? [named] : [];
}

/** Words that stand in the list of openings tell the line of openings. */
function addOpenings(
  stats: ReadonlyMap<number, LineStats>,
  openings: ReadonlySet<string>,
  ledger: Ledger,
): void {
  if (openings.size === 0) return;
  for (const [line, { words, texts }] of stats) {
    let known = 0;
    for (const [word, count] of words)
      if (
        plain(word)
          .split(/\s*\+\s*|\s+/)
          .every((name) => openings.has(name)) ||
        openings.has(plain(word))
      )
        known += count;
    if (texts >= 2 && known / texts > 0.6)
      ledger.add(
        line,
        "opening",
        "values",
        4 * (known / texts),
        "its values stand in the list of openings",
      );
  }
}

/** The user's word outranks everything; that of a sheet, what is said of any. */
function addChoices(pool: Pool, choices: readonly Choice[], ledger: Ledger): void {
  const lines = new Set<number>();
  for (const { heading, role } of choicesFor(pool, choices)) {
    if (heading === "" || role === "fans") continue;
    for (const line of linesMeant(pool, heading)) {
      if (lines.has(line)) continue;
      lines.add(line);
      ledger.add(line, role ?? "other", "choice", 1000, "you said so");
    }
  }
}

/** What was said of the sheets of a pool, and then what was said of any. */
function choicesFor(pool: Pool, choices: readonly Choice[]): Choice[] {
  if (choices.length === 0) return [];
  const sheets = new Set(pool.sections.map(({ cells }) => cells.grid.name.toLowerCase()));
  const own = choices.filter(({ sheet }) => sheets.has(sheet.toLowerCase()));
  const isSaid = ({ role }: Choice) => role !== null && own.some((each) => each.role === role);
  return [...own, ...choices.filter((each) => each.sheet === "" && !isSaid(each))];
}

/** A law that the user's choices contradict: a line of it is something else, or its pressure another. */
function contradicts(core: Core, cores: readonly Core[], ledger: Ledger, pool: Pool): boolean {
  const chosen = (role: RoleOrOther) =>
    pool.lines.filter((line) => ledger.weight(line, role, "choice") > 0);
  const quantities = ["pressure", "flow", "area", "diameter", "opening"] as const;
  return quantities.some((role) => {
    const line = core[role];
    if (line === undefined) return false;
    const others = rolesAndOther.filter((other) => other !== role);
    if (others.some((other) => ledger.weight(line, other, "choice") > 0)) return true;
    const said = chosen(role).filter((each) => !cores.some((other) => other[role] === each));
    return cores.length === 1 ? said.length > 0 : false;
  });
}
