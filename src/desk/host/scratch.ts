import type { CellValue } from "../../cells";
import type { SheetModel, WorkbookView } from "../../sheet";
import type { Cell, ConditionalFormat, Sheet, Validation, Workbook } from "../../workbook";

/** No sheet can have this name, so no formula of the workbook reads the scratch sheet. */
const scratchName = ":scratch:";

/**
 * A sheet beside the workbook in which the rules of conditional formats and the formulas of names
 * are worked out. It is never saved.
 */
export class Scratch {
  private readonly sheet = new ScratchSheet();

  /** The workbook as the model sees it: with the scratch sheet. */
  view(workbook: Workbook): WorkbookView {
    const { sheet } = this;
    return {
      get sheets() {
        return workbook.sheets;
      },
      get names() {
        return workbook.names;
      },
      get tables() {
        return workbook.tables;
      },
      get date1904() {
        return workbook.date1904;
      },
      sheet: (name) => (name === scratchName ? sheet : workbook.sheet(name)),
    };
  }

  /** What a formula gives, with "="; its references must name their sheets. Nothing is kept. */
  evaluate(model: SheetModel, formula: string): CellValue {
    model.enter(scratchName, 0, 0, formula);
    const value = model.value(scratchName, 0, 0);
    model.set(scratchName, 0, 0, null);
    return value;
  }
}

class ScratchSheet implements Sheet {
  readonly name = scratchName;
  readonly state = "veryHidden";
  readonly isProtected = false;
  readonly hiddenRows = new Set<number>();
  readonly hiddenCols = new Set<number>();
  readonly merges: readonly string[] = [];
  readonly columnWidths = new Map<number, number>();
  readonly frozenRows = 0;
  readonly frozenCols = 0;
  readonly isFiltered = false;
  readonly rowCount = 0;
  readonly colCount = 0;

  cell(): Cell | undefined {
    return undefined;
  }
  *cells(): Iterable<Cell> {}
  visit(): void {}
  isHiddenRow(): boolean {
    return false;
  }
  isHiddenCol(): boolean {
    return false;
  }
  isText(): boolean {
    return false;
  }
  readonly conditionalFormats: readonly ConditionalFormat[] = [];
  readonly validations: readonly Validation[] = [];
  readonly charts: readonly string[] = [];
  arrange(): void {}
  addChart(): string {
    return "";
  }
  removeChart(): void {}
  setValue(_row: number, _col: number, _value: CellValue): void {}
  setFormula(): void {}
  setStyle(): void {}
  clear(): void {}
}
