import type { Plugin } from "vite";
// The generator has no place in src/algebra/index.ts, which browsers load: it needs mathjs.
import { requireFreshTrees } from "../../algebra/make";
import { helpPages } from "../help/page";
import { pageText } from "../html/page";
import { checkManifest } from "../manifest/check";
import { wordPages } from "../words";
import { bundleSizes, sizeLines } from "./bundle-sizes";
import { readChunks } from "./chunks";
import { iconFile, iconSizes, readIcon, readManifest, readStyle } from "./files";
import { functionsBundle } from "./functions-bundle";
import { freshMetadata } from "./metadata";
import { checkPackages } from "./packages";

/**
 * Adds to a build what Excel needs beside the pages: functions.js, functions.json, icons, the
 * help and the manifest. Fails the build where formula trees, metadata or manifest do not hold.
 */
export function sitePlugin(): Plugin {
  const manifest = readManifest();
  return {
    name: "fanrow-site",
    apply: "build",
    async generateBundle() {
      const add = (fileName: string, source: string | Uint8Array) =>
        this.emitFile({ type: "asset", fileName, source });
      requireFreshTrees();
      add("functions.json", await freshMetadata());
      add("functions.js", await functionsBundle());
      for (const size of iconSizes) add(iconFile(size), readIcon(size));
      const style = this.getFileName(
        this.emitFile({ type: "asset", name: "site.css", source: readStyle() }),
      );
      for (const page of [...wordPages(), ...helpPages()]) add(page.file, pageText(page, style));
      add("manifest.xml", manifest);
    },
    // Only now is the list of files whole.
    writeBundle({ dir }, bundle) {
      const findings = checkManifest(manifest, Object.keys(bundle));
      if (findings.length > 0) throw new Error(`manifest.xml does not do:\n${findings.join("\n")}`);
      const folder = dir as string;
      const modules = Object.values(bundle).flatMap((file) =>
        file.type === "chunk" ? [[file.fileName, file.moduleIds] as const] : [],
      );
      const troubles = checkPackages(readChunks(folder), new Map(modules));
      if (troubles.length > 0) throw new Error(troubles.join("\n"));
      for (const line of sizeLines(bundleSizes(folder))) this.info(line);
    },
  };
}
