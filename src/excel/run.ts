import { toHostError } from "./host-error";

/** The open workbook during one call, with a count of the round trips to Excel. */
export class Book {
  trips = 0;

  constructor(readonly context: Excel.RequestContext) {}

  get workbook(): Excel.Workbook {
    return this.context.workbook;
  }

  get sheets(): Excel.WorksheetCollection {
    return this.context.workbook.worksheets;
  }

  /** Sends what is queued. */
  async sync(): Promise<void> {
    this.trips++;
    await this.context.sync();
  }

  /** Holds recalculation back until the next sync; called before writes are queued. */
  holdCalculation(): void {
    this.workbook.application.suspendApiCalculationUntilNextSync();
  }
}

export interface RunOptions {
  /** Wait until the user has left the cell being edited, instead of failing. */
  readonly waitsForEdit?: boolean;
}

/** `Excel.run`, with every failure as a HostError. */
export async function run<T>(
  batch: (book: Book) => Promise<T>,
  { waitsForEdit = false }: RunOptions = {},
): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: waitsForEdit }, (context) =>
      batch(new Book(context)),
    );
  } catch (thrown) {
    throw toHostError(thrown);
  }
}
