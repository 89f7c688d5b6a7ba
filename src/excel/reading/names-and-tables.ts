import { parseAddress } from "../../cells";
import type { JobFile } from "../../job";
import type { Book } from "../run";

/** The names and tables of a workbook, by which formulas may point at cells. */
export class NamesAndTables {
  private readonly names: Excel.NamedItemCollection;
  private readonly tables: Excel.TableCollection;
  private ranges: readonly Excel.Range[] = [];

  /** Asks for them along with the next round trip. */
  constructor({ workbook }: Book) {
    this.names = workbook.names;
    this.tables = workbook.tables;
    this.names.load("items/name,items/formula");
    this.tables.load("items/name");
  }

  /** Asks what the tables cover, once they are known: along with the next round trip. */
  ask(): void {
    this.ranges = this.tables.items.map((table) => {
      table.columns.load("items/name");
      const range = table.getRange();
      range.load("address");
      return range;
    });
  }

  /** Them all, once answered. */
  answer(): Pick<JobFile, "names" | "tables"> {
    return {
      names: this.names.items.map(({ name, formula }) => ({
        name,
        formula: String(formula).replace(/^=/, ""),
      })),
      tables: this.tables.items.flatMap(({ name, columns }, i) => {
        const at = parseAddress(this.ranges[i]?.address ?? "");
        if (at?.sheet == null) return [];
        const { sheet, range } = at;
        return [{ name, sheet, columns: columns.items.map((column) => column.name), ...range }];
      }),
    };
  }
}
