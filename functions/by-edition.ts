import { fromError, missing } from "./problem";
import type { Rows } from "./rows";

interface Named {
  /** What the first argument names, for messages. */
  readonly what?: string;
  readonly example?: string;
  /** A kind without which the row is not filled in yet. */
  readonly kindOf?: (i: number) => string;
}

/** The result of each row by the edition that it names; texts may be read by `cell` itself. */
export function byEdition(
  rows: Rows,
  editionOf: (i: number) => string,
  cell: (named: string, i: number) => unknown,
  { what = "edition", example = "62.2-2016", kindOf }: Named = {},
): any[][] {
  const spoiled = () => missing("a name or an answer of the row holds an error");
  return rows.result((i) => {
    const named = editionOf(i);
    const kind = kindOf?.(i);
    if (rows.isSpoiled(i)) return spoiled();
    if (kind === "") return "";
    if (named === "") return missing(`the ${what} is blank: name one, such as ${example}`);
    let result: unknown;
    try {
      result = cell(named, i);
    } catch (error) {
      result = fromError(error);
    }
    return rows.isSpoiled(i) ? spoiled() : result;
  });
}

/** NaN stands for a blank that may be one. */
export function known(value: number): number | undefined {
  return Number.isNaN(value) ? undefined : value;
}
