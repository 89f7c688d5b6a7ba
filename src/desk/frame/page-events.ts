import type { Desk } from "../desk";
import type { Files } from "../files/files";
import { nextRegion, noteFocus } from "./regions";

interface PageParts {
  readonly desk: Desk;
  readonly files: Files;
  readonly onFiles: (files: readonly File[]) => void;
  readonly onFind: () => void;
}

/** Keys and events that belong to the whole page; returns how to stop listening. */
export function attendPage({ desk, files, onFiles, onFind }: PageParts): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  addEventListener("keydown", (event) => pageKey(event, desk, files, onFind), { signal });
  addEventListener("focusin", noteFocus, { signal });
  addEventListener(
    "beforeunload",
    (event) => {
      if (desk.book.isDirty || desk.edit) event.preventDefault();
    },
    { signal },
  );
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  addEventListener(
    "dragover",
    (event) => {
      if (hasFiles(event)) event.preventDefault();
    },
    { signal },
  );
  addEventListener(
    "drop",
    (event) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      onFiles([...(event.dataTransfer?.files ?? [])]);
    },
    { signal },
  );
  return () => stop.abort();
}

function pageKey(event: KeyboardEvent, desk: Desk, files: Files, onFind: () => void): void {
  if (event.defaultPrevented || event.altKey) return;
  if (event.key === "F6") nextRegion(event.shiftKey);
  else if (!(event.ctrlKey || event.metaKey)) return;
  else if (event.key.toLowerCase() === "s") files.save();
  else if (/^[fh]$/i.test(event.key)) onFind();
  else if (isTyping(event.target)) return;
  else if (event.key === "z") desk.undo();
  else if (event.key === "y" || event.key === "Z") desk.redo();
  else return;
  event.preventDefault();
}

/** In a field, undoing belongs to the field. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}
