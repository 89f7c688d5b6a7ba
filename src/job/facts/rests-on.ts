import type { CellValue } from "../../cells";
import { evaluate, type Field, type SheetKind, type Values } from "../columns";
import { type Job, partAround, type Table } from "../read";
import { storedIn } from "./expected";

/** A column of a sheet that a definition asks for. */
export interface Input {
  readonly kind: SheetKind;
  readonly key: string;
}

/** Numbers are tried as so many times what they are: past every limit that they may lie near. */
const times = [1 / 4, 4];

/** Rows that are tried, spread evenly: more would tell the same of a column. */
const mostTried = 50;

/**
 * The columns that a computed field follows: change one, and by its definition the field changes in
 * at least half of the rows that are tried of these. Found by trying, so that what a definition
 * names without need (a field that this edition does not ask for) is none. Only those are tried that
 * are wanted.
 */
export function restsOn(
  job: Job,
  table: Table,
  field: Field,
  rows: readonly number[],
  isWanted: (input: Input) => boolean = () => true,
): Input[] {
  const { kind } = table.layout;
  const { is } = field;
  if (!is) return [];
  const length = Math.min(rows.length, mostTried);
  const at = (i: number) => rows[Math.floor((i * rows.length) / length)] as number;
  const spread = Array.from({ length }, (_, i) => at(i));
  const { part, rows: tried } = partAround(job, kind, spread);
  const source = storedIn(part).source(kind);
  const asked = new Map<string, Input>();
  const note = (input: Input): void => {
    if (job.tables[input.kind]?.has(input.key)) asked.set(`${input.kind} ${input.key}`, input);
  };
  const valuesWith = (input?: Input, changed?: Values): Values => {
    const read = (kind: SheetKind, key: string): Values => {
      if (!input || !changed) note({ kind, key });
      return changed && kind === input?.kind && key === input.key
        ? changed
        : source.column(kind, key);
    };
    const field = (key: string) => {
      const values = read(kind, key);
      return tried.map((i) => values[i] ?? null);
    };
    return evaluate(is, { ...source, length, field, column: read });
  };
  const usual = valuesWith();
  const follows = (input: Input, changed: Values) => {
    if (changed === source.column(input.kind, input.key)) return false;
    const other = valuesWith(input, changed);
    return usual.filter((value, i) => String(other[i]) !== String(value)).length >= length / 2;
  };
  return [...asked.values()]
    .filter(isWanted)
    .filter((input) =>
      [...times.map(multiplied), exchanged].some((change) =>
        follows(input, change(source.column(input.kind, input.key))),
      ),
    );
}

/** Each of these gives the very same values where it has nothing to change. */
const multiplied = (by: number) => (values: Values) =>
  values.some((value) => typeof value === "number")
    ? values.map((value) => (typeof value === "number" ? value * by : value))
    : values;

/** Each text by another that the column holds as well. */
function exchanged(values: Values): Values {
  const texts = [...new Set(values)].filter((value) => typeof value === "string" && value !== "");
  if (texts.length < 2) return values;
  const next = new Map(texts.map((text, i) => [text, texts[(i + 1) % texts.length] as CellValue]));
  return values.map((value) => next.get(value) ?? value);
}
