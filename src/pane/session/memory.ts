/** Office keeps the storage of each frame apart by a mark that stands before the name. */
function key(): string {
  const { Office: office } = globalThis as { Office?: Partial<typeof Office> };
  const { partitionKey = "" } = (office?.context ?? {}) as { partitionKey?: string };
  return `${partitionKey}fanrow.cautions.seen`;
}

/** The cautions that were put away on this machine. A browser may refuse to remember. */
export function seenCautions(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key()) ?? "[]");
    return Array.isArray(kept) ? kept.filter((entry) => typeof entry === "string") : [];
  } catch {
    return [];
  }
}

export function rememberSeen(keys: readonly string[]): void {
  try {
    localStorage.setItem(key(), JSON.stringify(keys));
  } catch {
    // The caution comes again next time, which does no harm.
  }
}
