// Starts the command from one bundled file, made anew when a source is newer, with the engine's own
// code of it kept beside it: reading two megabytes of script takes as long as checking a small job.
import { readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Script } from "node:vm";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const bundle = join(root, "node_modules/.cache/fanrow/check.cjs");
const kept = `${bundle}.${process.version}.code`;

function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return latest;
}

const timeOf = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
const isNewer = (file, than) => timeOf(file) > timeOf(than);

function isFresh() {
  const made = timeOf(bundle);
  const sources = ["src", "functions"].map((folder) => newest(join(root, folder)));
  return made > Math.max(...sources, statSync(join(root, "package-lock.json")).mtimeMs);
}

/** In one piece, beside others that may read it; where nothing can be written it is done without. */
function keep(code) {
  const made = `${kept}.${process.pid}`;
  try {
    writeFileSync(made, code);
    renameSync(made, kept);
  } catch {
    rmSync(made, { force: true });
  }
}

if (!isFresh()) {
  const { bundleCommand } = await import("./bundle.mjs");
  await bundleCommand(bundle, "cjs");
}

const cachedData = isNewer(kept, bundle) ? readFileSync(kept) : undefined;
const script = new Script(`(function (require) {${readFileSync(bundle, "utf8")}\n})`, {
  filename: bundle,
  cachedData,
});
if (!cachedData || script.cachedDataRejected) keep(script.createCachedData());
script.runInThisContext()(createRequire(import.meta.url));
