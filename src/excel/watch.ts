import { aroundBySheet, boundsOf, maxCols, maxRows, type Place, type Rectangle } from "../cells";
import { toHostError } from "./host-error";
import { run } from "./run";
import { selection } from "./selection";
import type { CellPlace } from "./types";

/** Ends a watch. */
type Stop = () => Promise<void>;

/** Between two tries to learn of edits that could not be read, in milliseconds. */
const pause = 1_000;

/**
 * Tells of every edit of cells on any sheet, by anyone, and of the cells that Excel worked out again.
 * What comes while the names of the sheets are asked for is told of together, one rectangle for each
 * sheet; none is lost where the asking fails. Where rows, columns or cells were inserted or deleted,
 * all that moved counts as edited.
 */
export async function watchEdits(onEdit: (edit: Place) => void): Promise<Stop> {
  let waiting: { id: string; block: Rectangle }[] = [];
  let asking: Promise<void> | undefined;
  let isStopped = false;
  const ask = async () => {
    // What is worked out again after an edit is told right behind it.
    await undefined;
    while (waiting.length > 0 && !isStopped) {
      const batch = waiting;
      waiting = [];
      try {
        const names = await sheetNames([...new Set(batch.map(({ id }) => id))]);
        for (const edit of together(batch, names)) onEdit(edit);
      } catch {
        waiting = [...batch, ...waiting];
        await new Promise((resolve) => setTimeout(resolve, pause));
      }
    }
    asking = undefined;
  };
  const heard = (id: string, block: Rectangle) => {
    waiting.push({ id, block });
    asking ??= ask();
    return asking;
  };
  const handlers = await run(
    async (book) => {
      const { sheets } = book;
      const added = [
        sheets.onChanged.add(({ worksheetId, address, changeType }) =>
          heard(worksheetId, editedBlock(address, changeType)),
        ),
        sheets.onCalculated.add(({ worksheetId, address }) =>
          heard(worksheetId, editedBlock(address)),
        ),
      ];
      await book.sync();
      return added;
    },
    { waitsForEdit: true },
  );
  return async () => {
    isStopped = true;
    for (const handler of handlers) await stop<unknown>(handler);
  };
}

/** One edit for each sheet, over all the cells of it that were edited. */
function together(
  batch: readonly { id: string; block: Rectangle }[],
  names: ReadonlyMap<string, string>,
): Place[] {
  return aroundBySheet(
    batch.flatMap(({ id, block }) => {
      const sheet = names.get(id);
      return sheet === undefined ? [] : [{ sheet, ...block }];
    }),
  );
}

/**
 * Tells the active cell whenever another selection is made or another sheet shown; of a quick series
 * only the last.
 */
export async function watchSelection(onSelect: (at: CellPlace) => void): Promise<Stop> {
  let isAsking = false;
  let isStale = false;
  const moved = async () => {
    isStale = true;
    if (isAsking) return;
    isAsking = true;
    try {
      while (isStale) {
        isStale = false;
        const at = await selection();
        if (!isStale) onSelect(at);
      }
    } finally {
      isAsking = false;
    }
  };
  const handlers = await run(
    async (book) => {
      // A change of sheet alone is no change of selection to Excel.
      const added = [book.sheets.onSelectionChanged.add(moved), book.sheets.onActivated.add(moved)];
      await book.sync();
      return added;
    },
    { waitsForEdit: true },
  );
  return async () => {
    for (const handler of handlers) await stop<unknown>(handler);
  };
}

async function stop<T>(handler: OfficeExtension.EventHandlerResult<T>): Promise<void> {
  try {
    await Excel.run(handler.context, async (context) => {
      handler.remove();
      await context.sync();
    });
  } catch (thrown) {
    throw toHostError(thrown);
  }
}

/** The names that sheets have now, by id; those deleted meanwhile are left out. */
function sheetNames(ids: readonly string[]): Promise<Map<string, string>> {
  return run(
    async (book) => {
      const sheets = ids.map((id) => book.sheets.getItemOrNullObject(id));
      for (const sheet of sheets) sheet.load("name");
      await book.sync();
      const found = new Map<string, string>();
      for (const [i, sheet] of sheets.entries())
        if (!sheet.isNullObject) found.set(ids[i] as string, sheet.name);
      return found;
    },
    { waitsForEdit: true },
  );
}

function editedBlock(address = "", changeType = ""): Rectangle {
  const whole: Rectangle = { top: 0, left: 0, bottom: maxRows - 1, right: maxCols - 1 };
  const block = boundsOf(address) ?? whole;
  if (!/(Inserted|Deleted)$/.test(changeType)) return block;
  return changeType.startsWith("Column")
    ? { ...whole, left: block.left }
    : { ...whole, top: block.top };
}
