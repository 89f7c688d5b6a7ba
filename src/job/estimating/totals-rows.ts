/** The typed cells of a Totals sheet: a row a plan, a row a phase, and one for all. */
export function totalsRows(
  dwellings: readonly { readonly plan: string; readonly phase: string }[],
): { readonly by: string; readonly name: string }[] {
  const distinct = (by: "plan" | "phase") =>
    [...new Set(dwellings.map((dwelling) => dwelling[by]))]
      .filter((name) => name !== "")
      .sort((a, b) => a.localeCompare(b, "en", { numeric: true }))
      .map((name) => ({ by, name }));
  return [...distinct("plan"), ...distinct("phase"), { by: "all", name: "all dwellings" }];
}
