import { type CellValue, isBlankCell, kept } from "../../cells";
import { evaluate, layoutOf, type SheetKind, type Source, type Values } from "../columns";
import type { Settings } from "./settings";
import type { Table } from "./table";

/** The fields of a table as expressions take them: numbers in the job's units, known words. */
function fieldOf(table: Table, key: string): Values {
  const { reads } = table.field(key);
  const raws = table.raws(key);
  const numbers = table.numbers(key);
  return raws.map((raw, i): CellValue => {
    if (typeof raw === "number") return numbers[i] as number;
    if (isBlankCell(raw) || typeof raw === "object") return raw;
    const text = String(raw).trim();
    return reads ? reads(text) || text : text;
  });
}

/** Values of a job's sheets, each column made once. */
export class Columns {
  private readonly known = new Map<string, Values>();

  /** `computed` gives a field that is worked out; undefined leaves it to what is stored. */
  constructor(
    private readonly job: {
      readonly tables: Readonly<Partial<Record<SheetKind, Table>>>;
      readonly settings: Settings;
    },
    private readonly computed: (kind: SheetKind, key: string) => Values | undefined,
  ) {}

  of(kind: SheetKind, key: string): Values {
    const name = `${kind} ${key}`;
    return kept(this.known, name, () => this.read(kind, key));
  }

  private read(kind: SheetKind, key: string): Values {
    const table = this.job.tables[kind];
    if (!table) return [];
    const field = layoutOf(kind).fields.find((entry) => entry.key === key);
    return (
      (field?.is && this.computed(kind, key)) ??
      (table.has(key) ? fieldOf(table, key) : new Array<CellValue>(table.length).fill(null))
    );
  }

  /** What the expressions of a sheet read. */
  source(kind: SheetKind): Source {
    return {
      length: this.job.tables[kind]?.length ?? 0,
      field: (key) => this.of(kind, key),
      setting: (key) => settingValue(this.job.settings, key),
      has: (sheet, key) => this.job.tables[sheet]?.has(key) === true,
      column: (sheet, key) => this.of(sheet, key),
    };
  }
}

/** A setting as the cells of the Job sheet would give it, the usual value where they are blank. */
function settingValue(settings: Settings, key: string): CellValue {
  if (key === "edition") return settings.edition?.id ?? null;
  const value = settings[(key === "units" ? "system" : key) as keyof Settings];
  return (value ?? null) as CellValue;
}

/** What a computed field is in every row, worked out from its definition. */
export function definedAs(kind: SheetKind, key: string, columns: Columns): Values | undefined {
  const { is } = layoutOf(kind).fields.find((field) => field.key === key) ?? {};
  return is && evaluate(is, columns.source(kind));
}
