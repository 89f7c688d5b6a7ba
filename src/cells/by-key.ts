interface Keeper<K, V> {
  get(key: K): V | undefined;
  set(key: K, value: V): unknown;
}

/** What is kept under a key; made when it is first asked for. */
export function kept<K, V>(by: Keeper<K, V>, key: K, make: () => V): V {
  let value = by.get(key);
  if (value === undefined) {
    value = make();
    by.set(key, value);
  }
  return value;
}

/** The same work, done once for each object that it is asked of, for as long as that lives. */
export function once<K extends object, V>(make: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, V>();
  return (of) => kept(known, of, () => make(of));
}

/** The same for texts; after so many all are forgotten, for what many files hold is not kept for ever. */
export function onceForText<V>(most: number, make: (text: string) => V): (text: string) => V {
  const known = new Map<string, V>();
  return (text) => {
    const value = known.get(text);
    if (value !== undefined) return value;
    if (known.size >= most) known.clear();
    return kept(known, text, () => make(text));
  };
}

/** Items of one key together, in the order in which the keys are met. */
export function grouped<T, K>(items: Iterable<T>, keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) kept(groups, keyOf(item), () => []).push(item);
  return groups;
}

/** How often each is there, in the order in which they are met. */
export function counted<T>(items: Iterable<T>): Map<T, number> {
  const counts = new Map<T, number>();
  for (const item of items) counts.set(item, (counts.get(item) ?? 0) + 1);
  return counts;
}
