import type { Desk } from "../desk";

/** Selects cells with the mouse, whole rows and columns by their headers; two clicks edit a cell. */
export function attendPointer(element: HTMLElement, desk: Desk, focus: () => void): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  let isDragging = false;
  element.addEventListener(
    "pointerdown",
    (event) => {
      if (event.button !== 0 || isEditor(event.target)) return;
      const spot = spotOf(event.target, desk);
      if (!spot) return;
      if (desk.edit && !desk.commit()) return;
      desk.selectArea(...spot(event.shiftKey));
      focus();
      isDragging = event.pointerType === "mouse";
    },
    { signal },
  );
  element.addEventListener(
    "pointermove",
    (event) => {
      if (!isDragging || event.buttons !== 1) return;
      const cell = cellAt(event.target);
      if (cell && (cell.row !== desk.head.row || cell.col !== desk.head.col))
        desk.moveTo(cell.row, cell.col, true);
    },
    { signal },
  );
  window.addEventListener("pointerup", () => (isDragging = false), { signal });
  // The grid would put the keyboard on whatever was pressed; here it stays on the active cell.
  element.addEventListener(
    "mousedown",
    (event) => {
      if (!isEditor(event.target) && spotOf(event.target, desk)) event.preventDefault();
    },
    { signal },
  );
  element.addEventListener(
    "dblclick",
    (event) => {
      if (!isEditor(event.target) && cellAt(event.target)) desk.beginEdit("cell");
    },
    { signal },
  );
  return () => stop.abort();
}

type Corners = [top: number, left: number, bottom: number, right: number];

const isEditor = (target: EventTarget | null) => target instanceof HTMLInputElement;

function cellAt(target: EventTarget | null): { row: number; col: number } | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>("[data-row]") : null;
  return cell ? { row: Number(cell.dataset.row), col: Number(cell.dataset.col) } : null;
}

/** What a press selects: a cell, or a whole row or column as far as it is in use. */
function spotOf(target: EventTarget | null, desk: Desk): ((extends_: boolean) => Corners) | null {
  const cell = cellAt(target);
  const { cursor, extent } = desk;
  if (cell)
    return (isFar) =>
      isFar
        ? [cursor.row, cursor.col, cell.row, cell.col]
        : [cell.row, cell.col, cell.row, cell.col];
  if (!(target instanceof Element)) return null;
  const header = target.closest<HTMLElement>("[data-header]")?.dataset.header;
  if (header !== undefined) {
    const row = Number(header);
    return (isFar) => [isFar ? cursor.row : row, 0, row, extent.lastUsed.col];
  }
  const id = target.closest<HTMLElement>(".ag-header-cell")?.getAttribute("col-id");
  if (id == null || !/^\d+$/.test(id)) return null;
  const col = Number(id);
  return (isFar) => [0, isFar ? cursor.col : col, extent.lastUsed.row, col];
}
