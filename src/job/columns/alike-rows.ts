import { once } from "../../cells";

/** Rows that hold the same. */
interface Alike {
  /** By row, the number of the group that it belongs to. */
  readonly groups: Int32Array;
  /** By group, its first row. */
  readonly first: readonly number[];
}

/** The rows of a column by what they hold; an error is another one each time that it is made. */
const alikeIn = once(
  (values: readonly unknown[]): Alike => groupedBy(values.length, (i) => values[i]),
);

/** Rows that hold the same in each of these columns, which are as long. */
export function alikeRows(columns: readonly (readonly unknown[])[], length: number): Alike {
  let all: Alike | undefined;
  for (const column of columns) {
    const own = alikeIn(column);
    const [before, size] = [all, own.first.length];
    all = before
      ? groupedBy(length, (i) => (before.groups[i] as number) * size + (own.groups[i] as number))
      : own;
    if (all.first.length === length) return all;
  }
  return all ?? groupedBy(length, () => 0);
}

function groupedBy(length: number, keyOf: (i: number) => unknown): Alike {
  const groups = new Int32Array(length);
  const first: number[] = [];
  const known = new Map<unknown, number>();
  for (let i = 0; i < length; i++) {
    const key = keyOf(i);
    let group = known.get(key);
    if (group === undefined) {
      group = first.length;
      known.set(key, group);
      first.push(i);
    }
    groups[i] = group;
  }
  return { groups, first };
}
