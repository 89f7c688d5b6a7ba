import type { Plugin, Rolldown } from "vite";
import { defined, descriptions, generateMetadata } from "../../../functions/metadata/index.mjs";
import { licenceNotices } from "../../licences/index.mjs";
import { helpPages } from "../help/page";
import { pageText } from "../html/page";
import { notServed } from "../manifest/served";
import { wordPages } from "../words";
import type { Chunks } from "./chunks";
import { iconFile, iconSizes, readIcon, readManifest, readOldView, readStyle } from "./files";
import { functionsBundle } from "./functions-bundle";
import { checkPackages } from "./packages";

/** Where the licences of others' code stand in the site. */
export const licencesFile = "licences.txt";

/**
 * Adds to a build what Excel needs beside the pages: functions.js, functions.json, icons, the
 * help and the manifest. Fails the build where metadata or manifest do not hold.
 */
export function sitePlugin(): Plugin {
  const manifest = readManifest();
  return {
    name: "fanrow-site",
    apply: "build",
    config: async () => ({ define: await defined() }),
    async generateBundle(_, bundle) {
      const add = (fileName: string, source: string | Uint8Array) =>
        this.emitFile({ type: "asset", fileName, source });
      add("functions.json", await generateMetadata());
      const functions = await functionsBundle();
      add("functions.js", functions.code);
      add("old-view.js", readOldView());
      add(licencesFile, licenceNotices([...functions.modules, ...modulesIn(bundle)]));
      for (const size of iconSizes) add(iconFile(size), readIcon(size));
      const style = this.getFileName(
        this.emitFile({ type: "asset", name: "site.css", source: readStyle() }),
      );
      const told = await descriptions();
      for (const page of [...wordPages(told), ...helpPages(told)])
        add(page.file, pageText(page, style));
      add("manifest.xml", manifest);
    },
    // Only now is the list of files whole.
    writeBundle(_, bundle) {
      const findings = notServed(manifest, Object.keys(bundle));
      if (findings.length > 0) throw new Error(`manifest.xml does not do:\n${findings.join("\n")}`);
      const modules = chunksIn(bundle).map(
        ({ fileName, moduleIds }) => [fileName, moduleIds] as const,
      );
      const troubles = checkPackages(chunksOf(bundle), new Map(modules));
      if (troubles.length > 0) throw new Error(troubles.join("\n"));
    },
  };
}

function chunksIn(bundle: Rolldown.OutputBundle): Rolldown.OutputChunk[] {
  return Object.values(bundle).filter((file) => file.type === "chunk");
}

function chunksOf(bundle: Rolldown.OutputBundle): Chunks {
  const chunks = chunksIn(bundle);
  const page = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith("/pane.html"));
  if (!page) throw new Error("pane.html was not built");
  return {
    byFile: new Map(
      chunks.map(({ fileName, imports, dynamicImports: lazy }) => [fileName, { imports, lazy }]),
    ),
    page: page.fileName,
  };
}

function modulesIn(bundle: Rolldown.OutputBundle): string[] {
  return chunksIn(bundle).flatMap(({ moduleIds }) => moduleIds);
}
