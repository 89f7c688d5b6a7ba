import { counted, kept } from "../../cells";
import type { Sample } from "../tables/section";
import { plain } from "../text/plain";
import type { Role } from "../types";
import type { Ledger } from "./ledger";
import type { LineStats } from "./stats";

/**
 * What lines tell of each other, for words that no list knows: a verdict agrees with flow against
 * required, a room does not recur within a dwelling, a duty helps the room to tell the required rate.
 */
export function addRelations(
  sample: readonly Sample[],
  stats: ReadonlyMap<number, LineStats>,
  drafts: readonly ReadonlyMap<Role, number>[],
  ledger: Ledger,
): void {
  const texts = [...stats.values()].filter((s) => s.texts >= s.filled * 0.6 && s.texts >= 4);
  const keys = new Map(texts.map(({ line }) => [line, keysOf(sample, line)]));
  const verdicts = texts
    .filter(({ words }) => words.size >= 2 && words.size <= mostVerdicts)
    .map(({ line }) => ({ line, codes: codesOf(keys.get(line)!) }));
  const done = new Set<string>();
  for (const draft of drafts) {
    const key = [draft.get("flow"), draft.get("dwelling"), draft.get("required")].join();
    if (done.has(key)) continue;
    done.add(key);
    const flow = stats.get(draft.get("flow") ?? -1);
    if (flow) addVerdict(flow, verdicts, stats, ledger);
    const rooms = roomsByDwelling(draft, texts, keys, sample, ledger);
    const required = stats.get(draft.get("required") ?? -1);
    if (required) addDuty(required, draft.get("room") ?? rooms, texts, keys, draft, ledger);
  }
}

type Keys = ReadonlyMap<number, readonly string[]>;

function keysOf(sample: readonly Sample[], line: number): string[] {
  return sample.map(({ section: { cells, shift }, row }) =>
    cells.has(row, line + shift) ? plain(cells.text(row, line + shift)) : "",
  );
}

/** So many words may stand for pass, fail and the like. */
const mostVerdicts = 6;

/** A line of few words, each a number; -1 for none. */
interface VerdictLine {
  readonly line: number;
  readonly codes: Int8Array;
}

function codesOf(keys: readonly string[]): Int8Array {
  const known = [...new Set(keys)].filter((key) => key !== "");
  return Int8Array.from(keys, (key) => known.indexOf(key));
}

/** Two or three words that follow whether the flow reaches a line of few whole numbers. */
function addVerdict(
  flow: LineStats,
  texts: readonly VerdictLine[],
  stats: ReadonlyMap<number, LineStats>,
  ledger: Ledger,
): void {
  let best: { verdict: number; required: number; share: number } | undefined;
  for (const required of stats.values()) {
    if (
      required.line === flow.line ||
      required.numeric < 6 ||
      required.dates > 0 ||
      required.distinctNumbers > Math.max(3, required.numeric * 0.35)
    )
      continue;
    for (const { line, codes } of texts) {
      const counts = new Float64Array(2 * mostVerdicts);
      let [all, met] = [0, 0];
      for (let at = 0; at < codes.length; at++) {
        const [code, f, r] = [codes[at]!, flow.numbers[at]!, required.numbers[at]!];
        if (code < 0 || Number.isNaN(f) || Number.isNaN(r)) continue;
        const isMet = f >= r;
        counts[2 * code + (isMet ? 0 : 1)]!++;
        all++;
        if (isMet) met++;
      }
      let agree = 0;
      for (let code = 0; code < counts.length; code += 2)
        agree += Math.max(counts[code]!, counts[code + 1]!);
      const usual = Math.max(met, all - met);
      if (all < 6 || all - usual < 2 || agree < all * 0.92 || agree - usual < (all - usual) * 0.6)
        continue;
      if (agree / all > (best?.share ?? 0))
        best = { verdict: line, required: required.line, share: agree / all };
    }
  }
  if (!best) return;
  ledger.add(
    best.verdict,
    "verdict",
    "values",
    3,
    "its words follow whether the flow reaches what is required",
  );
  ledger.add(
    best.required,
    "required",
    "values",
    3,
    "the verdict follows whether the flow reaches it",
  );
  ledger.add(flow.line, "flow", "values", 1, "the verdict follows it");
}

/** A room stands once in a dwelling and again in others. */
function roomsByDwelling(
  draft: ReadonlyMap<Role, number>,
  texts: readonly LineStats[],
  keys: Keys,
  sample: readonly Sample[],
  ledger: Ledger,
): number | undefined {
  const dwellingLine = draft.get("dwelling");
  const dwellings =
    dwellingLine === undefined
      ? groupsOf(sample)
      : sample.map(
          ({ section: { cells, shift }, row }) =>
            `${cells.text(row, dwellingLine + shift)}${cells.number(row, dwellingLine + shift)}`,
        );
  if (new Set(dwellings).size < 3) return undefined;
  let best: { line: number; score: number } | undefined;
  for (const { line, words, filled } of texts) {
    if (line === dwellingLine || words.size < 2 || words.size > Math.max(6, filled * 0.5)) continue;
    const pairs = counted(
      keys.get(line)!.flatMap((word, at) => (word === "" ? [] : [`${dwellings[at]} ${word}`])),
    );
    const again = [...pairs.values()].reduce((sum, count) => sum + count - 1, 0) / filled;
    const perDwelling = filled / new Set(dwellings).size;
    if (perDwelling < 1.6 || again > 0.06) continue;
    if (1 - again > (best?.score ?? 0)) best = { line, score: 1 - again };
  }
  if (best)
    ledger.add(
      best.line,
      "room",
      "values",
      2.2,
      "its words stand once in a dwelling and again in others",
    );
  return best?.line;
}

/** Rows that follow each other without a gap belong to one dwelling, where lines above name it. */
function groupsOf(sample: readonly Sample[]): string[] {
  let group = 0;
  return sample.map(({ section, row }, at) => {
    const before = sample[at - 1];
    if (!before || before.section !== section || before.row !== row - 1) group++;
    return String(group);
  });
}

/** The line of few words that, with the room, tells the required rate best. */
function addDuty(
  required: LineStats,
  room: number | undefined,
  texts: readonly LineStats[],
  keys: Keys,
  draft: ReadonlyMap<Role, number>,
  ledger: Ledger,
): void {
  const rooms = room === undefined ? undefined : keys.get(room);
  const alone = told(required, [rooms]);
  let best: { line: number; gain: number } | undefined;
  for (const { line, words } of texts) {
    if (line === room || line === draft.get("dwelling") || words.size < 2 || words.size > 8)
      continue;
    const gain = told(required, [rooms, keys.get(line)]) - alone;
    if (gain > (best?.gain ?? Math.max(0.04, (1 - alone) * 0.4))) best = { line, gain };
  }
  if (best)
    ledger.add(best.line, "duty", "values", 2.2, "with the room it tells the required rate");
}

/** Share of the rows whose rate is the usual one of their words. */
function told(required: LineStats, by: readonly (readonly string[] | undefined)[]): number {
  const groups = new Map<string, Map<number, number>>();
  let all = 0;
  required.numbers.forEach((rate, at) => {
    if (Number.isNaN(rate)) return;
    const key = by.map((words) => words?.[at] ?? "").join("|");
    const counts = kept(groups, key, () => new Map());
    counts.set(rate, (counts.get(rate) ?? 0) + 1);
    all++;
  });
  const usual = [...groups.values()].reduce((sum, counts) => sum + Math.max(...counts.values()), 0);
  // Many small groups tell anything: each costs a row.
  return all ? (usual - groups.size * 0.5) / all : 0;
}
