import { createRoot } from "react-dom/client";
import { worksheetFunctions } from "../../functions";
import { Desk } from "./desk";
import { Files, firstWorkbook } from "./files/files";
import { App } from "./frame/App";
import { type ClientLibrary, connect, WorkbookHost } from "./host";
import { beReady } from "./idle";
import { Keeper } from "./keep/keeper";

/** The client library of Office.js, copied into the site when it is built. */
const clientLibrary = "office/excel-web-16.00.js";

/**
 * Builds the desk inside an element: the first workbook, and a host that answers the task pane. `base` is the address of the site's folder.
 */
export async function startDesk(element: HTMLElement, base: string): Promise<void> {
  const [first] = await Promise.all([
    firstWorkbook(base, location.hash),
    loadScript(new URL(clientLibrary, base)),
  ]);
  const host = new WorkbookHost(first.workbook, {
    functions: worksheetFunctions,
    fileName: first.name,
  });
  connect((globalThis as unknown as { OfficeExtension: ClientLibrary }).OfficeExtension, host);
  beReady(host);
  const desk = new Desk(host);
  if (first.problem !== null) desk.messages.add("error", first.problem);
  const files = new Files(host, desk);
  const keeper = new Keeper(host, desk, files);
  createRoot(element).render(<App desk={desk} files={files} keeper={keeper} />);
}

/** Runs a script of the site in the page. */
function loadScript(address: URL): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address.href;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address.pathname} could not be loaded.`));
    document.head.append(script);
  });
}
