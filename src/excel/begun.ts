import { type Contents, contentsOf, loadContents } from "./contents";

/** One step of a piece of writing, and how it is taken back. */
interface Step {
  /** What is left where it cannot be: "the sheet Fit was added". */
  readonly left: string;
  /** The sheet that was added. */
  readonly added?: string;
  readonly back: (context: Excel.RequestContext) => Promise<void>;
}

/** What a piece of writing has done so far, to be taken back where Excel refuses the rest of it. */
export class Begun {
  private steps: Step[] = [];

  get isNothing(): boolean {
    return this.steps.length === 0;
  }

  /** What was done stands: nothing of it is taken back any more. */
  stands(): void {
    this.steps = [];
  }

  /** A sheet of a name that none had. */
  adds(name: string): void {
    this.steps.push({
      left: `the sheet ${name} was added`,
      added: name,
      async back(context) {
        const sheet = context.workbook.worksheets.getItemOrNullObject(name);
        sheet.load("name");
        await context.sync();
        if (!sheet.isNullObject) sheet.delete();
      },
    });
  }

  /** Cells that `loadContents` asked for before they are written. */
  overwrites(sheet: string, range: Excel.Range): void {
    const before = contentsOf(range);
    const address = cellsOf(range.address);
    this.steps.push({
      left: `${address} on ${sheet} was written`,
      async back(context) {
        const cells = loadContents(context.workbook.worksheets.getItem(sheet).getRange(address));
        await context.sync();
        if (JSON.stringify(contentsOf(cells)) !== JSON.stringify(before)) restore(cells, before);
      },
    });
  }

  /** A sheet written anew, whose cells an added sheet keeps and whose charts these were. */
  renews(sheet: string, copy: string, charts: readonly string[]): void {
    this.steps = this.steps.filter(({ added }) => added !== copy);
    this.steps.push({
      left: `what stood on the sheet ${sheet} stands on ${copy} now`,
      async back(context) {
        const { worksheets } = context.workbook;
        const own = worksheets.getItem(sheet);
        const kept = worksheets.getItem(copy).getUsedRange();
        kept.load("address");
        own.charts.load("items/name");
        await context.sync();
        for (const chart of own.charts.items) if (!charts.includes(chart.name)) chart.delete();
        empty(own);
        own.getRange(cellsOf(kept.address)).copyFrom(kept);
        await context.sync();
        worksheets.getItem(copy).delete();
      },
    });
  }

  /** What is needed no more: the sheet that kept former cells of another, and that one's former charts. */
  leaves(copy: string, sheet: string, charts: readonly string[]): void {
    this.adds(copy);
    this.steps.push({
      left: `a former chart on ${sheet}`,
      async back(context) {
        const own = context.workbook.worksheets.getItem(sheet).charts;
        own.load("items/name");
        await context.sync();
        for (const chart of own.items) if (charts.includes(chart.name)) chart.delete();
      },
    });
  }

  /** Takes the steps back, the last one first, and says what came of it. `code` is that of the refusal. */
  async takeBack(code?: string): Promise<string> {
    const left: string[] = [];
    // The sheet that was in the way is someone else's.
    const own = this.steps.filter(({ added }) => !added || code !== "ItemAlreadyExists");
    const added = own.flatMap((step) => step.added ?? []);
    // Sheets may refer to each other: none is in use any more once all are empty.
    if (added.length > 1) await done((context) => emptied(context, added));
    for (const step of own.reverse()) if (!(await done(step.back))) left.push(step.left);
    return left.length === 0
      ? "Nothing was changed."
      : `Not all could be taken back: ${left.join("; ")}.`;
  }
}

/** Whether Excel did it. */
async function done(work: (context: Excel.RequestContext) => Promise<void>): Promise<boolean> {
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      await work(context);
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}

async function emptied(context: Excel.RequestContext, names: readonly string[]): Promise<void> {
  const sheets = names.map((name) => context.workbook.worksheets.getItemOrNullObject(name));
  for (const sheet of sheets) sheet.load("name");
  await context.sync();
  for (const sheet of sheets) if (!sheet.isNullObject) sheet.getRange().clear("All");
}

/** "A1:B2" of an address that names its sheet. */
export function cellsOf(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1);
}

/** Takes contents, looks and merges off a sheet. */
export function empty(sheet: Excel.Worksheet): void {
  const all = sheet.getRange();
  all.unmerge();
  all.clear("All");
}

/** Writes cells as they were. First the format: a text such as "12" stays one only in a cell formatted as text. */
function restore(cells: Excel.Range, { formulas, numberFormats }: Contents): void {
  cells.numberFormat = numberFormats as string[][];
  cells.formulas = formulas as Contents["formulas"][number][number][][];
}
