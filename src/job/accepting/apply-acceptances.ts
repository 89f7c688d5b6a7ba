import { cellName, grouped } from "../../cells";
import { type Accepted, type Finding, findingKinds } from "../findings";
import type { JobFile } from "../grid";
import { manyAsOne } from "../many-as-one";
import { listed } from "../words";
import { fingerprintOf } from "./fingerprint";
import { type Acceptance, readAcceptances } from "./read-acceptances";

/** Findings with what was accepted of them. */
interface Accepting {
  readonly findings: readonly Finding[];
  /** Acceptances whose finding is gone. */
  readonly settled: readonly Acceptance[];
}

/**
 * Notes on each finding whether it was accepted, and whether that still holds. An acceptance
 * without reason, initials or fingerprint counts for nothing and is a finding of its own. Of many
 * findings that are told as one, those accepted each for itself stand apart.
 */
export function applyAcceptances(file: JobFile, findings: readonly Finding[]): Accepting {
  const acceptances = readAcceptances(file);
  if (acceptances.length === 0) return { findings: manyAsOne(findings), settled: [] };
  const byPlace = grouped(acceptances, keyOf);
  const met = new Set<Acceptance>();
  const incomplete = new Map<Acceptance, Finding>();
  const note = (finding: Finding): Finding => {
    const own = byPlace.get(keyOf(finding)) ?? [];
    if (own.length === 0) return finding;
    const fingerprint = fingerprintOf(file, finding);
    for (const acceptance of own) {
      met.add(acceptance);
      const gaps = gapsOf(acceptance);
      if (gaps.length > 0) incomplete.set(acceptance, incompleteAt(acceptance, gaps, fingerprint));
    }
    const whole = own.filter((acceptance) => gapsOf(acceptance).length === 0);
    const holding = whole.find((acceptance) => acceptance.fingerprint === fingerprint);
    if (holding) return { ...finding, accepted: acceptedBy(holding) };
    const before = whole.at(-1);
    return before ? { ...finding, lapsed: acceptedBy(before) } : finding;
  };
  const each = new Set(findings.map(note));
  const told = manyAsOne([...each]).map((finding) => (each.has(finding) ? finding : note(finding)));
  return {
    findings: [...told, ...incomplete.values()],
    settled: acceptances.filter((acceptance) => !met.has(acceptance)),
  };
}

function keyOf({ sheet, cell, kind }: Pick<Acceptance, "sheet" | "cell" | "kind">): string {
  return `${sheet.toLowerCase()}!${cell} ${kind}`;
}

function acceptedBy({ reason, initials, date }: Acceptance): Accepted {
  return { reason, initials, date };
}

function gapsOf({ reason, initials, fingerprint }: Acceptance): string[] {
  const columns = { reason, initials, fingerprint };
  return Object.entries(columns).flatMap(([name, text]) => (text === "" ? [name] : []));
}

function incompleteAt(
  acceptance: Acceptance,
  gaps: readonly string[],
  fingerprint: string,
): Finding {
  const { place, sheet, cell, about } = acceptance;
  const kind = "acceptance-incomplete";
  return {
    kind,
    severity: findingKinds[kind].severity,
    sheet: place.sheet,
    cell: cellName(place.row, 0),
    row: place.row,
    cells: [{ sheet: place.sheet, cell: cellName(place.row, 0) }],
    about,
    what: `the acceptance of ${sheet}!${cell} has no ${listed(gaps)}`,
    effect: "It counts for nothing: the finding stays open.",
    mend: gaps.includes("fingerprint")
      ? `Accept the finding from the pane, or type the fingerprint ${fingerprint} where you have looked at the row as it stands.`
      : "Say why the row is right as it is, and who says so.",
  };
}
