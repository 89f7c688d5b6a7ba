import { grouped } from "../cells";
import { type CellAt, type Finding, isFault, isOpen, nameOfCell } from "./findings";

/** More open faults with the same effect and the same mend than these come from one cause. */
const mostApart = 8;

/** Many faults that ask for the same are told once, at the first of them, with the cells of all. */
export function manyAsOne(findings: readonly Finding[]): readonly Finding[] {
  const alike = grouped(
    findings.filter((finding) => isFault(finding) && isOpen(finding) && finding.cell !== ""),
    ({ kind, effect, mend, question }) =>
      [kind, bare(effect), bare(mend), question?.word].join("\n"),
  );
  const told = new Map<Finding, Finding[]>();
  for (const own of alike.values())
    if (own.length > mostApart)
      for (const [at, finding] of own.entries()) told.set(finding, at === 0 ? [withRest(own)] : []);
  return told.size === 0 ? findings : findings.flatMap((finding) => told.get(finding) ?? finding);
}

/** Words without the numbers and cells in them. */
const bare = (words: string) => words.replace(/\b[A-Z]{0,3}\d[\d.,]*/g, "");

function withRest(own: readonly Finding[]): Finding {
  const { lapsed: _, ...all } = merged(own);
  const isSame = (key: "what" | "mend") => own.every((finding) => finding[key] === all[key]);
  const others = `${isSame("what") ? "so" : "alike"} in ${(own.length - 1).toLocaleString("en")} more`;
  const mend = isSame("mend") ? all.mend : `${all.mend} The others likewise.`;
  return { ...all, what: `${all.what}; ${others}`, mend };
}

/** One finding for all of a cause: told at the first, with the cells and the mends of all. */
export function merged(findings: readonly Finding[]): Finding {
  const [first] = findings as [Finding, ...Finding[]];
  if (findings.length === 1) return first;
  const { apply, ...rest } = first;
  const mends = findings.map((finding) => finding.apply);
  const all =
    mends.every((mend) => mend?.label === apply?.label) &&
    findings.every(({ sheet }) => sheet === first.sheet);
  const writes = mends.flatMap((mend) => mend?.writes ?? []);
  return {
    ...rest,
    cells: distinct(findings.flatMap(({ cells }) => cells)),
    ...(apply && all && { apply: { label: apply.label, writes } }),
  };
}

function distinct(cells: readonly CellAt[]): CellAt[] {
  return [...new Map(cells.map((at) => [nameOfCell(at), at])).values()];
}
