import { join } from "node:path";
import type { UserConfig } from "vite";
import { chunksFile } from "./chunks";
import { deskFiles } from "./desk-files";
import { withoutHelpOfFormulas } from "./help-only";
import { sitePlugin } from "./plugin";

const site = join(import.meta.dirname, "..");

/** Pages with code of their own, under src/site/pages. A further page is a further line. */
const pages = ["pane.html", "desk.html"];

/** The configuration of the site's build into `outDir`. */
export function siteConfig(outDir: string = join(site, "../../dist")): UserConfig {
  return {
    root: join(site, "pages"),
    // Relative, so that the site can be served from any folder of any address.
    base: "./",
    publicDir: false,
    plugins: [withoutHelpOfFormulas(), sitePlugin(), deskFiles()],
    build: {
      outDir,
      emptyOutDir: true,
      manifest: chunksFile,
      target: "es2022",
      modulePreload: { polyfill: false },
      // The desk is one piece: whoever uses it has the whole site on the same machine.
      chunkSizeWarningLimit: 1500,
      rolldownOptions: {
        // Packages mark modules for servers in a way that means nothing in a bundle.
        checks: { moduleLevelDirective: false },
        input: pages.map((page) => join(site, "pages", page)),
      },
    },
  };
}
