import { HostError } from "./host-error";

/** Bytes that Office hands over at a time; it gives no more at once. */
const sliceSize = 4 * 2 ** 20;
/** Characters made of bytes at a time: a call takes only so many arguments. */
const bytesAtOnce = 0x8000;

/** Whether the host hands over its workbook as a file. */
export function givesFile(): boolean {
  return officeDocument() !== undefined;
}

/** The open workbook as an .xlsx file, with what was changed since it was saved. */
export async function workbookBytes(): Promise<Uint8Array> {
  const document = officeDocument();
  if (!document)
    throw new HostError(
      "UnsupportedOperation",
      "This program does not hand over the workbook as a file: save it, then make the copy from the saved file.",
    );
  const file = await answerOf<Office.File>((done) =>
    document.getFileAsync(Office.FileType.Compressed, { sliceSize }, done),
  );
  try {
    const bytes = new Uint8Array(file.size);
    let at = 0;
    for (let index = 0; index < file.sliceCount; index++) {
      const { data } = await answerOf<Office.Slice>((done) => file.getSliceAsync(index, done));
      const part = data as ArrayLike<number>;
      if (at + part.length > bytes.length) throw broken();
      bytes.set(part, at);
      at += part.length;
    }
    if (at !== bytes.length) throw broken();
    return bytes;
  } finally {
    // Office keeps two files at most; one that is never closed would be in the way of the next.
    file.closeAsync();
  }
}

/** Opens an .xlsx file as a new workbook beside the open one. */
export async function openWorkbook(bytes: Uint8Array): Promise<void> {
  let text = "";
  for (let at = 0; at < bytes.length; at += bytesAtOnce)
    text += String.fromCharCode(...bytes.subarray(at, at + bytesAtOnce));
  try {
    await Excel.createWorkbook(btoa(text));
  } catch (thrown) {
    throw new HostError(
      "UnsupportedOperation",
      "Excel did not open the copy: download it and open the file.",
      { cause: thrown },
    );
  }
}

function officeDocument(): Office.Document | undefined {
  const { Office: office } = globalThis as { Office?: Partial<typeof Office> };
  // A host without documents leaves these out, whatever their types say.
  const document = office?.context?.document as Office.Document | undefined;
  return typeof document?.getFileAsync === "function" ? document : undefined;
}

function answerOf<T>(ask: (done: (result: Office.AsyncResult<T>) => void) => void): Promise<T> {
  return new Promise((resolve, reject) => {
    ask(({ status, value, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
      else reject(refused(error));
    });
  });
}

function refused(error: Office.Error | undefined): HostError {
  const told = error?.message ? ` (${error.message.trim().replace(/\.$/, "")})` : "";
  return new HostError(
    "FileRefused",
    `Excel did not hand over the workbook as a file${told}: leave the cell you are editing, save, then try again.`,
  );
}

function broken(): HostError {
  return new HostError(
    "FileRefused",
    "The workbook changed while it was handed over: try again when nobody is editing it.",
  );
}
