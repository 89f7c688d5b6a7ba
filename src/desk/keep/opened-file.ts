import { InputError } from "../../cells";

/** A file on the machine that the browser may write to, and its state when it was read. */
export interface Opened {
  readonly handle: WritableHandle;
  readonly lastModified: number;
}

/** TypeScript's own declaration does not know how permission is asked for. */
interface WritableHandle extends FileSystemFileHandle {
  requestPermission(how: { mode: "readwrite" }): Promise<PermissionState>;
}

interface PickingWindow {
  showOpenFilePicker?(how: { multiple: true }): Promise<WritableHandle[]>;
}

const handles = new WeakMap<File, WritableHandle>();

/** Files picked so that they can be written back; null where the browser has no such picker. */
export async function pickWritable(): Promise<File[] | null> {
  const { showOpenFilePicker } = window as PickingWindow;
  if (!showOpenFilePicker) return null;
  let picked: WritableHandle[];
  try {
    picked = await showOpenFilePicker.call(window, { multiple: true });
  } catch (thrown) {
    // Closing the picker without a choice is told as an error.
    if (thrown instanceof DOMException && thrown.name === "AbortError") return [];
    return null;
  }
  return Promise.all(
    picked.map(async (handle) => {
      const file = await handle.getFile();
      handles.set(file, handle);
      return file;
    }),
  );
}

/** How to write back to a file that was picked; null where it cannot be. */
export function openedOf(file: File): Opened | null {
  const handle = handles.get(file);
  return handle && /\.xlsx$/i.test(file.name) ? { handle, lastModified: file.lastModified } : null;
}

/** Replaces the file's content, whole or not at all; refuses where another program changed it. */
export async function writeBack({ handle, lastModified }: Opened, bytes: Uint8Array) {
  if ((await handle.requestPermission({ mode: "readwrite" })) !== "granted")
    throw new InputError("the browser was not allowed to write to it; save a copy.");
  if ((await handle.getFile()).lastModified !== lastModified)
    throw new InputError("it was changed elsewhere since it was opened here; save a copy.");
  // What is written takes the file's place only on closing.
  const target = await handle.createWritable();
  try {
    await target.write(bytes as Uint8Array<ArrayBuffer>);
  } catch (thrown) {
    await target.abort();
    throw thrown;
  }
  await target.close();
  return { handle, lastModified: (await handle.getFile()).lastModified };
}
