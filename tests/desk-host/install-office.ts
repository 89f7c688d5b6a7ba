import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { runInThisContext } from "node:vm";
import type { ClientLibrary } from "../../src/desk/host";

/** The client library as it stands on the global object once it is loaded. */
interface Office {
  readonly Excel: typeof Excel;
  readonly OfficeExtension: typeof OfficeExtension & ClientLibrary;
}

/** What the library looks for in a browser while it loads. */
function standIn(): Record<string, unknown> {
  const nothing = () => {};
  const element = { setAttribute: nothing, appendChild: nothing };
  return {
    window: globalThis,
    document: {
      getElementById: () => null,
      getElementsByTagName: () => [],
      createElement: () => element,
      addEventListener: nothing,
      head: element,
    },
    location: { href: "https://desk.invalid/", search: "", hash: "", protocol: "https:" },
    navigator: { userAgent: "node", language: "en" },
    addEventListener: nothing,
  };
}

/** Loads the real Office.js client library into Node, once. */
export function installOffice(): Office {
  const known = globalThis as unknown as Partial<Office>;
  if (known.Excel === undefined) {
    for (const [name, value] of Object.entries(standIn()))
      if (!(name in globalThis))
        Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
    const library = "@microsoft/office-js/dist/excel-web-16.00.debug.js";
    const path = createRequire(import.meta.url).resolve(library);
    runInThisContext(readFileSync(path, "utf8"), { filename: path });
  }
  return globalThis as unknown as Office;
}
