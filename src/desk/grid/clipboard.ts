import { copyBlock, pasteBlock } from "../blocks";
import type { Desk } from "../desk";

/** Copies, cuts and pastes blocks of cells while the keyboard is on a cell. */
export function attendClipboard(element: HTMLElement, desk: Desk): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const isOnCell = () => desk.edit === null && element.contains(document.activeElement);
  const copy = (event: ClipboardEvent) => {
    if (!isOnCell() || !event.clipboardData) return false;
    event.clipboardData.setData("text/plain", copyBlock(desk));
    event.preventDefault();
    return true;
  };
  document.addEventListener("copy", copy, { signal });
  document.addEventListener(
    "cut",
    (event) => {
      if (copy(event)) desk.clear();
    },
    { signal },
  );
  document.addEventListener(
    "paste",
    (event) => {
      const text = event.clipboardData?.getData("text/plain") ?? "";
      if (!isOnCell() || text === "") return;
      event.preventDefault();
      pasteBlock(desk, text);
    },
    { signal },
  );
  return () => stop.abort();
}
