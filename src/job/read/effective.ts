import { cellName } from "../../cells";
import { type FeatureKey, layoutOf, type SheetKind } from "../columns";
import type { JobFit } from "../fit";
import type { Settings } from "./settings";
import type { Table } from "./table";

type Tables = Readonly<Partial<Record<SheetKind, Table>>>;

/**
 * The settings that the job's sheets can follow. A way of judging for which they keep no column is
 * said to be without effect: the sheet's own verdicts do not follow it, and neither does anyone.
 */
export function effective(settings: Settings, tables: Tables, fit: JobFit): Settings {
  const { fans } = tables;
  if (!fans) return settings;
  const isOther = settings.judgeBy !== "measured" && !keeps(tables, "air");
  const isGuarded = settings.judging === "guarded" && !keeps(tables, "spread");
  const problem = (key: string, typed: string, what: string, instead: string) => {
    const at = fit.settings.get(key);
    return at
      ? [
          {
            sheet: at.sheet,
            cell: cellName(at.row, at.col),
            what: `"${typed}" has no effect: ${fans.name} has no column for ${what}`,
            isBlank: false,
            mend: `Type "${instead}", or add the columns as on a new job with ${what}.`,
          },
        ]
      : [];
  };
  if (!isOther && !isGuarded) return settings;
  return {
    ...settings,
    ...(isOther && { judgeBy: "measured" }),
    ...(isGuarded && { judging: "simple" }),
    problems: [
      ...settings.problems,
      ...(isOther
        ? problem("judgeBy", settings.judgeBy, "another flow than the measured one", "measured")
        : []),
      ...(isGuarded ? problem("judging", settings.judging, "the spread of a flow", "simple") : []),
    ],
  };
}

/** Whether any sheet has a field of a feature. */
function keeps(tables: Tables, feature: FeatureKey): boolean {
  return Object.values(tables).some((table) =>
    layoutOf(table.layout.kind).fields.some(
      (field) => [field.feature].flat().includes(feature) && table.has(field.key),
    ),
  );
}
