import type { Opening } from "../../rules";
import { Columns, definedAs } from "./columns";
import type { Settings } from "./settings";
import type { Table } from "./table";

/** The boxes of a job with their openings. Box names are compared without case. */
export class BoxList {
  private readonly boxes = new Map<string, Opening[]>();
  private readonly rowsOf = new Map<string, number[]>();
  readonly names: readonly string[];

  constructor(
    readonly table: Table,
    settings: Settings,
  ) {
    const names: string[] = [];
    const columns: Columns = new Columns({ tables: { boxes: table }, settings }, (kind, key) =>
      table.has(key) ? undefined : definedAs(kind, key, columns),
    );
    const areas = columns.of("boxes", "area");
    table.texts("box").forEach((name, i) => {
      if (name === "") return;
      const key = name.toUpperCase();
      if (!this.boxes.has(key)) {
        this.boxes.set(key, []);
        this.rowsOf.set(key, []);
        names.push(name);
      }
      this.rowsOf.get(key)?.push(i);
      const label = table.text("opening", i);
      const area = areas[i];
      if (label !== "" && typeof area === "number" && area > 0)
        this.boxes.get(key)?.push({ label, area });
    });
    this.names = names;
  }

  /** The usable openings of a box; undefined for a box that is not listed. */
  openings(box: string): readonly Opening[] | undefined {
    return this.boxes.get(box.toUpperCase());
  }

  /** The table rows of a box's openings. */
  rows(box: string): readonly number[] {
    return this.rowsOf.get(box.toUpperCase()) ?? [];
  }

  /** The constant stated for a box, or NaN. */
  constant(box: string): number {
    if (!this.table.has("constant")) return Number.NaN;
    const values = this.rows(box).map((i) => this.table.number("constant", i));
    return values.find((value) => value > 0) ?? Number.NaN;
  }
}
