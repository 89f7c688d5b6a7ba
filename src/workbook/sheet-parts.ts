import { kindOf, readRels } from "./opc";
import type { Package } from "./package";

/** Relationships of a chart to parts of its own. */
const chartKinds = new Set(["chartStyle", "chartColorStyle"]);

/** The parts that belong to a sheet alone, charts with theirs; or why it carries more than those. */
export function sheetOwnParts(
  pkg: Package,
  sheetPart: string,
): { readonly parts: readonly string[] } | { readonly reason: string } {
  const parts: string[] = [];
  for (const rel of readRels(pkg, sheetPart)) {
    const kind = kindOf(rel.type);
    if (kind === "drawing" && !rel.external) {
      const charts = readRels(pkg, rel.target);
      const isChart = (type: string) => kindOf(type) === "chart";
      const below = charts.flatMap(({ target }) => readRels(pkg, target));
      const own =
        pkg.has(rel.target) &&
        charts.every(({ type, external }) => isChart(type) && !external) &&
        below.every(({ type, external }) => chartKinds.has(kindOf(type)) && !external);
      if (!own) return { reason: more(kind) };
      parts.push(rel.target, ...[...charts, ...below].map(({ target }) => target));
    } else if (kind === "printerSettings") {
      if (!rel.external) parts.push(rel.target);
    } else if (kind !== "hyperlink") return { reason: more(kind) };
  }
  return { parts };
}

function more(kind: string): string {
  return `it carries more than cells (${kind})`;
}
