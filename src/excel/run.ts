import { Begun } from "./begun";
import { loadContents } from "./contents";
import { HostError, toHostError } from "./host-error";

/** The open workbook during one call, with a count of the round trips to Excel. */
export class Book {
  trips = 0;
  readonly begun = new Begun();

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

  /** Keeps what stands in cells of a sheet until all that is to be written stands there. */
  async keep(sheet: string, cells: readonly Excel.Range[]): Promise<void> {
    for (const range of cells) loadContents(range);
    await this.sync();
    for (const range of cells) this.begun.overwrites(sheet, range);
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

/**
 * `Excel.run`, with every failure as a HostError. What was begun of a piece of writing that Excel
 * then refuses is taken back.
 */
export async function run<T>(
  batch: (book: Book) => Promise<T>,
  { waitsForEdit = false }: RunOptions = {},
): Promise<T> {
  let begun: Begun | undefined;
  try {
    return await Excel.run({ delayForCellEdit: waitsForEdit }, (context) => {
      const book = new Book(context);
      begun = book.begun;
      return batch(book);
    });
  } catch (thrown) {
    const error = toHostError(thrown);
    // A refusal of our own comes before anything is written.
    if (thrown instanceof HostError || !begun || begun.isNothing) throw error;
    const { code, message } = error;
    throw new HostError(code, `${message} ${await begun.takeBack(code)}`, { cause: error.cause });
  }
}
