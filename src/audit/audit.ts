import type { FindingKind, Mend } from "../job";
import type { Shapes } from "./formula-shape";
import type { Places } from "./places";
import type { SheetScan } from "./sheet-scan";

/** What every part of the audit needs: the sheets as scanned, and where to put what it finds. */
export interface Audit {
  readonly shapes: Shapes;
  readonly places: Places;
  /** By name in lower case. */
  readonly scans: ReadonlyMap<string, SheetScan>;
  /** Notes a departure, unless another finding already tells of the cell. */
  add(kind: FindingKind, sheet: string, row: number, col: number, words: AuditWords): void;
}

export interface AuditWords {
  readonly what: string;
  readonly effect: string;
  readonly mend: string;
  readonly apply?: Mend | undefined;
  /** Further cells of the same cause, on the same sheet. */
  readonly also?: readonly string[];
}
