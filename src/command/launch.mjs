// Starts the command from one bundled file, made anew when a source is newer.
import { readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const bundle = join(root, "node_modules/.cache/fanrow/check.mjs");

function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return latest;
}

function isFresh() {
  const made = statSync(bundle, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const sources = ["src", "functions"].map((folder) => newest(join(root, folder)));
  return made > Math.max(...sources, statSync(join(root, "package-lock.json")).mtimeMs);
}

if (!isFresh()) {
  const { bundleCommand } = await import("./bundle.mjs");
  await bundleCommand(bundle);
}

await import(pathToFileURL(bundle).href);
