import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Plugin } from "vite";

const root = join(import.meta.dirname, "../../..");
const clientLibrary = "excel-web-16.00.js";
const workbooks = ["alder-terrace.xlsx"];

/**
 * Adds to a build what the desk loads beside its own code: the client library of Office.js, which
 * Excel brings itself, and the workbook it begins with.
 */
export function deskFiles(): Plugin {
  return {
    name: "fanrow-desk-files",
    apply: "build",
    generateBundle() {
      const add = (fileName: string, source: Uint8Array) =>
        this.emitFile({ type: "asset", fileName, source });
      const library = createRequire(import.meta.url).resolve(
        `@microsoft/office-js/dist/${clientLibrary}`,
      );
      add(`office/${clientLibrary}`, readFileSync(library));
      // Its licence is Microsoft's own and goes with it.
      add("office/LICENSE.md", readFileSync(join(library, "../../LICENSE.md")));
      for (const name of workbooks)
        add(`workbooks/${name}`, readFileSync(join(root, "workbooks", name)));
    },
  };
}
