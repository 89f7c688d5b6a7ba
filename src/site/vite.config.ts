import { join } from "node:path";
import { defineConfig, runnerImport } from "vite";

// Imported by Vite's own runner: the configuration draws on the functions and formulas, whose
// imports stand without file extensions.
const { module } = await runnerImport<typeof import("./build/config")>(
  join(import.meta.dirname, "build/config.ts"),
);

export default defineConfig(module.siteConfig());
