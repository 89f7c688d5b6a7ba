import { createRoot } from "react-dom/client";
import { Desk } from "./desk";
import { Files, firstWorkbook } from "./files/files";
import { loadFunctions, loadScript } from "./files/functions";
import { App } from "./frame/App";
import { type ClientLibrary, connect, WorkbookHost } from "./host";
import { HostBook } from "./host-book";
import { Keeper } from "./keep/keeper";

/** The client library of Office.js, copied into the site when it is built. */
const clientLibrary = "office/excel-web-16.00.js";

/**
 * Builds the desk inside an element: the functions as Excel loads them, the first workbook, and a
 * host that answers the task pane. `base` is the address of the site's folder.
 */
export async function startDesk(element: HTMLElement, base: string): Promise<void> {
  const [functions, first] = await Promise.all([
    loadFunctions(base),
    firstWorkbook(base, location.hash),
    loadScript(new URL(clientLibrary, base)),
  ]);
  const host = new WorkbookHost(first.workbook, { functions, fileName: first.name });
  connect((globalThis as unknown as { OfficeExtension: ClientLibrary }).OfficeExtension, host);
  const desk = new Desk(new HostBook(host));
  if (first.problem !== null) desk.messages.add("error", first.problem);
  const files = new Files(host, desk);
  const keeper = new Keeper(host, desk, files);
  createRoot(element).render(<App desk={desk} files={files} keeper={keeper} />);
}
