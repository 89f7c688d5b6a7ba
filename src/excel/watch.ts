import { boundsOf, maxCols, maxRows, type Rectangle } from "../cells";
import { toHostError } from "./host-error";
import { run } from "./run";
import { settledSelection } from "./selection";
import type { CellPlace, Edit } from "./types";

/** Ends a watch. */
export type Stop = () => Promise<void>;

/**
 * Tells of every edit of cells on any sheet, by anyone, in the order of the edits. Where rows,
 * columns or cells were inserted or deleted, all that moved counts as edited.
 */
export async function watchEdits(onEdit: (edit: Edit) => void): Promise<Stop> {
  let told: Promise<void> = Promise.resolve();
  const handler = await run(async (book) => {
    const added = book.sheets.onChanged.add(async (args) => {
      const block = editedBlock(args.address, args.changeType);
      const next = told.then(async () => {
        const sheet = await sheetName(args.worksheetId);
        if (sheet !== undefined) onEdit({ sheet, ...block });
      });
      // One that fails must not hold back those after it.
      told = next.catch(() => {});
      await next;
    });
    await book.sync();
    return added;
  });
  return () => stop(handler);
}

/** Tells the active cell whenever another selection is made; of a quick series only the last. */
export async function watchSelection(onSelect: (at: CellPlace) => void): Promise<Stop> {
  let isAsking = false;
  let isStale = false;
  const handler = await run(async (book) => {
    const added = book.sheets.onSelectionChanged.add(async () => {
      isStale = true;
      if (isAsking) return;
      isAsking = true;
      try {
        while (isStale) {
          isStale = false;
          const at = await settledSelection();
          if (!isStale) onSelect(at);
        }
      } finally {
        isAsking = false;
      }
    });
    await book.sync();
    return added;
  });
  return () => stop(handler);
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

/** The name a sheet has now; undefined where it was deleted meanwhile. */
function sheetName(id: string): Promise<string | undefined> {
  return run(
    async (book) => {
      const sheet = book.sheets.getItemOrNullObject(id);
      sheet.load("name");
      await book.sync();
      return sheet.isNullObject ? undefined : sheet.name;
    },
    { waitsForEdit: true },
  );
}

function editedBlock(address: string, changeType: string): Omit<Edit, "sheet"> {
  const whole: Rectangle = { top: 0, left: 0, bottom: maxRows - 1, right: maxCols - 1 };
  const block = boundsOf(address) ?? whole;
  const isShift = /(Inserted|Deleted)$/.test(changeType);
  const isColumnShift = isShift && changeType.startsWith("Column");
  return {
    firstRow: isColumnShift ? 0 : block.top,
    lastRow: isShift ? maxRows - 1 : block.bottom,
    firstCol: isShift && !isColumnShift ? 0 : block.left,
    lastCol: isShift ? maxCols - 1 : block.right,
  };
}
