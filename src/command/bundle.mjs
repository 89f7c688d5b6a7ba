// The command as one file that needs no other. Node 20 reads no TypeScript, and a bundle starts in a
// fraction of the time that a loader needs. Run by itself it writes the file that `npm pack` takes.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { defined } from "../../functions/metadata/index.mjs";

const here = dirname(fileURLToPath(import.meta.url));

export async function bundleCommand(outfile, format = "esm") {
  const { build } = await import("esbuild");
  mkdirSync(dirname(outfile), { recursive: true });
  const { metafile } = await build({
    metafile: true,
    define: await defined(),
    entryPoints: [join(here, "main.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format,
    target: "node20",
    logLevel: "warning",
    // A few packages are CommonJS and ask for Node's own modules by require.
    banner:
      format === "esm"
        ? {
            js: '#!/usr/bin/env node\nimport { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);',
          }
        : {},
  });
  return metafile;
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const { inputs } = await bundleCommand(join(here, "../../dist/fanrow.mjs"));
  const { licenceNotices } = await import("../licences/index.mjs");
  writeFileSync(join(here, "../../dist/fanrow-licences.txt"), licenceNotices(Object.keys(inputs)));
}
