import { InputError } from "../../cells";
import {
  compared,
  comparedText,
  type NameKindId,
  nameKinds,
  numberOfName,
  sumOver,
  type Table,
  type TableMaker,
} from "../../rules";
import type { Workbook } from "../../workbook";
import { TableSheet } from "./table-sheet";

/** The numbers of the editions, each with its clause and how far it has been traced. */
export class EditionTables {
  private readonly tables: TableSheet;

  constructor(
    readonly sheet: string,
    /** Texts of the workbook: spellings of names among them are listed. */
    private readonly texts: () => readonly string[],
  ) {
    this.tables = new TableSheet(sheet, [30, 24, 14, 14, 14, 14, 14, 14, 14, 22, 22, 18, 30, 14]);
  }

  get(make: TableMaker): Table {
    return make(this.tables);
  }

  write(workbook: Workbook, styles: { readonly title: number; readonly heading: number }): void {
    this.tables.write(workbook, styles);
  }

  /** Native text for the number that a name has; 0 for an unknown one. `name` must be no error. */
  numberOf(kind: NameKindId, name: string): string {
    const { what, hasPublisher } = nameKinds[kind];
    const rows = this.spellings(kind);
    const table = this.tables.table(
      `Names: ${what}`,
      ["As compared", "Means", "No."],
      () => rows.map(([key, means]) => [key, means, numberOfName(kind, means)]),
      rows.length,
    );
    const key = comparedText(name, hasPublisher);
    return sumOver(table.column("No."), [`${table.column("As compared")}=${key}`]);
  }

  private spellings(kind: NameKindId): readonly (readonly [string, string])[] {
    const { spellings, hasPublisher, find, isWhole } = nameKinds[kind];
    const found = new Map<string, string>();
    const add = (written: string, means: string) => {
      const key = `|${compared(written, hasPublisher)}`;
      if (!found.has(key)) found.set(key, means);
    };
    for (const [written, means] of spellings) add(written, means);
    for (const text of isWhole ? [] : this.texts()) {
      if (found.has(`|${compared(text, hasPublisher)}`)) continue;
      try {
        add(text, find(text));
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        // Most texts of a workbook name nothing.
      }
    }
    return [...found];
  }
}
