import type { CellValue } from "../../cells";
import { evaluate, type Field, type SheetKind, type Values } from "../columns";
import type { Job, Table } from "../read";
import { storedIn } from "./expected";

/** A column of a sheet that a definition asks for. */
export interface Input {
  readonly kind: SheetKind;
  readonly key: string;
}

/** Numbers are tried as so many times what they are: past every limit that they may lie near. */
const times = [1 / 4, 4];

/**
 * The columns that a computed field follows: change one, and by its definition the field changes in
 * at least half of these rows. Found by trying, so that what a definition names without need (a
 * field that this edition does not ask for) is none.
 */
export function restsOn(job: Job, table: Table, field: Field, rows: readonly number[]): Input[] {
  const { kind } = table.layout;
  const { is } = field;
  if (!is) return [];
  const source = storedIn(job).source(kind);
  const asked = new Map<string, Input>();
  const note = (input: Input): void => {
    if (job.tables[input.kind]?.has(input.key)) asked.set(`${input.kind} ${input.key}`, input);
  };
  const valuesWith = (input?: Input, change?: (values: Values) => Values): Values => {
    const read = (of: Input, values: Values) => {
      if (!input || !change) note(of);
      return change && of.kind === input?.kind && of.key === input.key ? change(values) : values;
    };
    return evaluate(is, {
      ...source,
      field: (key) => read({ kind, key }, source.field(key)),
      column: (sheet, key) => read({ kind: sheet, key }, source.column(sheet, key)),
    });
  };
  const usual = valuesWith();
  const follows = (input: Input, change: (values: Values) => Values) => {
    const other = valuesWith(input, change);
    return rows.filter((i) => String(other[i]) !== String(usual[i])).length >= rows.length / 2;
  };
  return [...asked.values()].filter((input) =>
    [...times.map(multiplied), exchanged].some((change) => follows(input, change)),
  );
}

const multiplied = (by: number) => (values: Values) =>
  values.map((value) => (typeof value === "number" ? value * by : value));

/** Each text by another that the column holds as well. */
function exchanged(values: Values): Values {
  const texts = [...new Set(values)].filter((value) => typeof value === "string" && value !== "");
  const next = (value: CellValue) => texts[(texts.indexOf(value) + 1) % texts.length] ?? value;
  return values.map((value) => (texts.includes(value) ? next(value) : value));
}
